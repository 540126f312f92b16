type Run = { readonly first: number; readonly widths: readonly number[] };

/**
 * How wide letters are, in thousandths of the letter size, run by run from a first character: the
 * advance widths of Noto Sans Regular as cut for print (assets/fonts, SIL Open Font License). A
 * test holds these tables to the font file. Letters with accents are as wide as without.
 */
export const LETTER_WIDTHS: readonly Run[] = [
  // Space to tilde.
  {
    first: 0x20,
    widths: [
      260, 269, 408, 646, 572, 831, 732, 225, 300, 300, 551, 572, 268, 322, 268, 372, 572, 572, 572,
      572, 572, 572, 572, 572, 572, 572, 268, 268, 572, 572, 572, 434, 899, 639, 650, 632, 730, 556,
      519, 728, 741, 339, 273, 619, 524, 907, 760, 781, 605, 781, 622, 549, 556, 731, 600, 930, 586,
      566, 572, 329, 372, 329, 572, 444, 281, 561, 615, 480, 615, 564, 344, 615, 618, 258, 258, 534,
      258, 935, 618, 605, 615, 615, 413, 479, 361, 618, 508, 786, 529, 510, 470, 380, 551, 380, 572,
    ],
  },
  // The space that holds words together, the times sign, and dashes.
  { first: 0xa0, widths: [260] },
  { first: 0xd7, widths: [572] },
  { first: 0x2013, widths: [500, 1000] },
  // Greek capitals and small letters.
  {
    first: 0x391,
    widths: [
      639, 650, 499, 639, 556, 572, 741, 781, 339, 619, 609, 907, 760, 624, 781, 731, 605, 0, 572,
      556, 566, 843, 586, 821, 717, 339, 566, 623, 470, 608, 332, 598, 623, 613, 516, 588, 470, 460,
      608, 594, 332, 534, 519, 626, 516, 490, 605, 653, 600, 487, 614, 490, 598, 725, 594, 749, 799,
    ],
  },
  // Cyrillic capitals and small letters.
  {
    first: 0x410,
    widths: [
      638, 614, 650, 509, 729, 556, 905, 577, 756, 756, 625, 698, 907, 743, 761, 733, 605, 640, 556,
      616, 817, 588, 740, 673, 1035, 1026, 685, 849, 607, 647, 999, 638, 556, 597, 564, 438, 607,
      551, 759, 488, 621, 621, 531, 587, 768, 614, 594, 606, 608, 493, 465, 509, 737, 511, 612, 589,
      894, 897, 623, 759, 545, 494, 799, 577,
    ],
  },
];
/** For a letter outside the tables: as wide as a broad capital, so that words never come out short. */
export const OTHER_WIDTH = 900;
/** How far letters reach above and below the line they stand on, as shares of their size. */
export const ASCENT = 0.78;
export const DESCENT = 0.24;
