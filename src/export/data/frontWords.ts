/** The scale test, whoever the pattern is for. */
export const TEST_WORDS = {
  print: "Print every page at actual size, with no fitting to the page.",
  measure:
    "Measure the squares with a steel rule, from the middle of a line to the middle of the next, across and up. If one is wrong, do not cut.",
  fitted:
    "Wrong alike both ways, such as 48.5 mm for 50: the page was fitted, here to 97 %. Print again at actual size.",
  printer:
    "Wrong by less, or not alike: it is the printer. Type in what the 50 mm square measures, up this page as “along” and across it as “across”, in the studio under Paper (--square-along and --square-across by command). Then print the new sheets.",
  still:
    "Still wrong on that printer: print once with 50 and 50 typed in, measure that square up and across, and type in those two.",
  each: "Sheets can leave a printer in different sizes. So each one has a 50 mm square of its own, and a scale along its foot and its right side. Lay the rule on both.",
} as const;

/** In every test square, for whoever has only that sheet before them. */
export const SQUARE_WORDS: readonly string[] = [
  "48.5 both ways: fitted to 97 %.",
  "Print again at actual size.",
  "Wrong otherwise: see the first page.",
];

/** What a copy shop is asked for, and what is measured before anything is cut. */
export const COPY_SHOP_WORDS: readonly string[] = [
  "Print at 100 %, actual size, black on white, with no fitting to the roll.",
  "Measure the squares on the counter, across and along. If one is wrong, ask for it again.",
  "Nothing has to be joined. Where there are several sheets they overlap by 10 mm.",
];

export const TURNING_WORDS =
  "The turning (seam allowance) is the cloth between the seam line and the cut line. It is drawn already: add none.";

/** Short forms of the cautions in docs/safety.md. */
export const CAUTIONS: readonly string[] = [
  "Keep a rotary cutter closed unless you cut, cut away from yourself, and keep fingers off the edge of the rule.",
  "Take each pin out before the needle or the knife of an overlock reaches it. Unplug the machine to change a needle.",
  "An iron stays hot after it is switched off: stand it on its stand, out of children's reach, until it is cold.",
  "Put no cord or tie at the neck of a child's garment. Local rules may say more.",
];

/** The same where sheets are cut off all round and laid edge to edge. */
export const BUTT_WORDS: readonly string[] = [
  "Only the white sheets are printed. The grey ones hold no line of the pattern and are left out.",
  "Cut each sheet off along its unbroken lines: on every side where it meets another. What lies outside is repeated on the next sheet.",
  "Lay the sheets of a row edge to edge, from left to right. The diamonds with the same letter must close. Nothing overlaps: tape the joints from behind.",
  "Then join the rows, from the top down.",
  "Sheets that meet no other, or none that you need, stay on their own.",
  "Check a length over a joint: the lines of a piece run on without a step.",
];

export const JOINING_WORDS: readonly string[] = [
  "Only the white sheets are printed. The grey ones hold no line of the pattern and are left out.",
  "Join the sheets of a row first, from left to right. Cut a sheet off along the line on its left and lay it on the sheet before it, up to the broken line. The diamonds with the same letter must close.",
  "Then join the rows, from the top down, by the lines along the top of the sheets.",
  "Tape or paste each joint flat. Sheets that meet no other, or none that you need, stay on their own.",
  "Check a length over a joint: from 0 on one scale, the lines of a piece run on without a step.",
];
