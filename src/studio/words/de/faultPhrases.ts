import type { Rule } from "../germanReader.ts";

/**
 * What the core says of a file that it cannot take, sentence by sentence. The core speaks English
 * alone; in these lists and nowhere else it is read again.
 */

/** What a value may be, and the names of things. Whole texts. */
export const PHRASES: readonly Rule[] = [
  ["a number from (.+) to (.+) mm", "eine Zahl von $1 bis $2 mm"],
  ["a number from (.+) to (.+) \\(0\\.8 means 80 %\\)", "eine Zahl von $1 bis $2 (0.8 heißt 80 %)"],
  ["a number", "eine Zahl"],
  ["a whole number", "eine ganze Zahl"],
  ["(-?\\d+) or more", "$1 oder mehr"],
  ["true or false", "true oder false"],
  ['"female", "male" or null', '"female", "male" oder null'],
  ['"mm", "cm" or "in"', '"mm", "cm" oder "in"'],
  ["1, the only version there is", "1, die einzige Fassung, die es gibt"],
  ["text in quotation marks", "Text in Anführungszeichen"],
  ["a text of (\\d+) letters at most", "ein Text von höchstens $1 Buchstaben"],
  ["a date such as (.+)", "ein Datum wie $1"],
  ["a list of 1 to 10000 bodies", "eine Liste von 1 bis 10000 Körpern"],
  ["a list", "eine Liste"],
  ["a body in braces", "ein Körper in geschweiften Klammern"],
  ["a group in braces", "eine Gruppe in geschweiften Klammern"],
  ["a group of choices in braces", "eine Gruppe von Entscheidungen in geschweiften Klammern"],
  ["a group of measures in braces", "eine Gruppe von Maßen in geschweiften Klammern"],
  [
    "a block in braces: format, version, unit and pieces",
    "ein Grundschnitt in geschweiften Klammern: format, version, unit und pieces",
  ],
  ["path data in quotation marks, such as (.+)", "Pfaddaten in Anführungszeichen, zum Beispiel $1"],
  ["1 to 64 letters, digits, dots, hyphens", "1 bis 64 Buchstaben, Ziffern, Punkte, Bindestriche"],
  ['(".+") or (".+")', "$1 oder $2"],
  ["(.+) to (.+) (mm|cm|in)", "$1 bis $2 $3"],
  ["millimetres", "Millimetern"],
  ["centimetres", "Zentimetern"],
  ["inches", "Zoll"],
  ["The file", "Die Datei"],
  ["top", "oben"],
  ["right", "rechts"],
  ["bottom", "unten"],
  ["left", "links"],
  ["along", "in"],
  ["across", "quer zu"],
  ["a number of millimetres", "eine Zahl von Millimetern"],
  ["(-?\\d+) or less", "$1 oder weniger"],
  ["a list of sheets, 500 at most", "eine Liste von höchstens 500 Blättern"],
  ["the name of a sheet, such as (.+)", "der Name eines Blatts wie $1"],
  ["a list of places of pieces", "eine Liste von Plätzen der Teile"],
  ["a place in braces", "ein Platz in geschweiften Klammern"],
  ["the name of a piece", "der Name eines Teils"],
  ["0, 90, 180 or 270", "0, 90, 180 oder 270"],
  ['(".+"), (".+") or (".+")', "$1, $2 oder $3"],
  ["front", "Vorderteil"],
  ["back", "Rückenteil"],
  ["sleeve", "Ärmel"],
];
