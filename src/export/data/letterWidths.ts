/**
 * How wide each letter from space to tilde is, in thousandths of the letter size: the advance
 * widths of Noto Sans Regular as cut for print (assets/fonts, SIL Open Font License). A test holds
 * this table to the font file.
 */
export const LETTER_WIDTHS: readonly number[] = [
  260, 269, 408, 646, 572, 831, 732, 225, 300, 300, 551, 572, 268, 322, 268, 372, 572, 572, 572,
  572, 572, 572, 572, 572, 572, 572, 268, 268, 572, 572, 572, 434, 899, 639, 650, 632, 730, 556,
  519, 728, 741, 339, 273, 619, 524, 907, 760, 781, 605, 781, 622, 549, 556, 731, 600, 930, 586,
  566, 572, 329, 372, 329, 572, 444, 281, 561, 615, 480, 615, 564, 344, 615, 618, 258, 258, 534,
  258, 935, 618, 605, 615, 615, 413, 479, 361, 618, 508, 786, 529, 510, 470, 380, 551, 380, 572,
];
/** For a letter outside the table: as wide as a broad capital, so that words never come out short. */
export const OTHER_WIDTH = 790;
/** How far letters reach above and below the line they stand on, as shares of their size. */
export const ASCENT = 0.78;
export const DESCENT = 0.24;
