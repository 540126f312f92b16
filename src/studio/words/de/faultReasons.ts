import type { Rule } from "../germanReader.ts";

/** What is wrong, with its value and its limit: how a sentence begins; what follows is read on. */
export const REASONS: readonly Rule[] = [
  // paper and printer
  [
    "The paper is (.+?); it must be one of (.+?), or a size in mm such as (.+?)\\.",
    "Das Papier ist $1; es muss eines von $2 sein, oder ein Maß in mm wie $3.",
  ],
  [
    "The paper is (.+?); a sheet must be (.+?) to (.+?) mm wide and (.+?) to (.+?) mm high, or the test square of 50 mm, the scale of 150 mm and the title page do not go on it\\.",
    "Das Papier ist $1; ein Blatt muss $2 bis $3 mm breit und $4 bis $5 mm hoch sein, sonst passen Prüfquadrat von 50 mm, Lineal von 150 mm und Titelseite nicht darauf.",
  ],
  [
    "The paper is (.+?); a sheet must be (.+?) to (.+?) mm wide and (.+?) to (.+?) mm high\\.",
    "Das Papier ist $1; ein Blatt muss $2 bis $3 mm breit und $4 bis $5 mm hoch sein.",
  ],
  ["The (.+?) margin is (.+?); it may be (.+?)\\.", "Der Rand $1 ist $2; er darf $3 sein."],
  [
    "The margins (.+?) and (.+?) are (.+?) together on a sheet (.+?) wide; (.+?) mm must be left between them for the scale of 150 mm\\.",
    "Die Ränder $1 und $2 sind zusammen $3 auf einem Blatt von $4; dazwischen müssen $5 mm für das Lineal von 150 mm bleiben.",
  ],
  [
    "The margins (.+?) and (.+?) are (.+?) together on a sheet (.+?) high; (.+?) mm must be left between them for the title page\\.",
    "Die Ränder $1 und $2 sind zusammen $3 auf einem Blatt von $4; dazwischen müssen $5 mm für die Titelseite bleiben.",
  ],
  [
    "The overlap is (.+?); on this paper it may be (.+?), half of what a sheet prints\\.",
    "Die Überlappung ist $1; auf diesem Papier darf sie $2 sein, die Hälfte dessen, was ein Blatt druckt.",
  ],
  [
    "The overlap is (.+?); on this paper it may be (.+?)\\.",
    "Die Überlappung ist $1; auf diesem Papier darf sie $2 sein.",
  ],
  [
    "The test square measures (.+?) (along|across) the feed; it may be (.+?); more is no printer's error but scaling that is switched on\\.",
    "Das Prüfquadrat misst $1 $2 der Laufrichtung; es darf $3 messen; mehr ist kein Fehler des Druckers, sondern eine eingeschaltete Skalierung.",
  ],
  [
    "Take larger paper, width before height, such as (.+?)\\.",
    "Größeres Papier nehmen, Breite vor Höhe, wie $1.",
  ],
  [
    "Take smaller paper, width before height, such as (.+?)\\.",
    "Kleineres Papier nehmen, Breite vor Höhe, wie $1.",
  ],
  ["Take one of them\\.", "Eines davon nehmen."],
  [
    "Measure what your printer leaves bare, and write that\\.",
    "Messen, was der Drucker frei lässt, und das schreiben.",
  ],
  [
    "Make the margins smaller, or take larger paper\\.",
    "Die Ränder kleiner machen, oder größeres Papier nehmen.",
  ],
  ["Make it smaller\\.", "Kleiner machen."],
  ["Make it larger\\.", "Größer machen."],
  [
    "Measure it again from line to line; if it is right, print at actual size, with no fitting to the page\\.",
    "Noch einmal von Linie zu Linie messen; stimmt es, in wahrer Größe drucken, ohne Einpassen.",
  ],
  // any value of a file
  ["(.+?) is missing; a draft needs it\\.", "$1 fehlt; ein Schnitt braucht es."],
  ["(.+?) is missing; it must be (.+?)\\.", "$1 fehlt; da muss stehen: $2."],
  [
    "(.+?) is missing; every body needs one of its own\\.",
    "$1 fehlt; jeder Körper braucht eine eigene.",
  ],
  ["(.+?) is (.+?); it must be (.+?)\\.", "$1 ist $2; da muss stehen: $3."],
  [
    "(.+?) is (.+?), which is not a number; (.+?) may stand there\\.",
    "$1 ist $2, das ist keine Zahl; $3 darf da stehen.",
  ],
  ["(.+?) is (.+?); the limits are (.+?)\\.", "$1 ist $2; die Grenzen sind $3."],
  [
    "(.+?) is (.+?), a name that the program needs itself\\.",
    "$1 ist $2, das braucht das Programm selbst.",
  ],
  [
    "id is (.+?); 1 to 64 of the letters A to Z, digits, dot, underline and hyphen may be in it\\.",
    "id ist $1; 1 bis 64 der Buchstaben A bis Z, Ziffern, Punkt, Unterstrich und Bindestrich dürfen darin stehen.",
  ],
  [
    "id is (.+?), but so it is in row (\\d+); every body needs one of its own\\.",
    "id ist $1, aber so heißt schon Zeile $2; jeder Körper braucht eine eigene.",
  ],
  [
    "name has (\\d+) letters; at most (\\d+) are taken\\.",
    "name hat $1 Buchstaben; höchstens $2 werden genommen.",
  ],
  [
    "(\\S+) is (.+?); (.+?), (.+?) or nothing may stand there\\.",
    "$1 ist $2; $3, $4 oder nichts darf da stehen.",
  ],
  [
    "age is (.+?); a number from 0 to (\\d+) may stand there\\.",
    "age ist $1; eine Zahl von 0 bis $2 darf da stehen.",
  ],
  ["At fault too: (.+?)\\.", "Ebenfalls: $1."],
  [
    '(".+?") is not known in (.+?); known are (.+?)\\.',
    "$1 ist in $2 nicht bekannt; bekannt sind $3.",
  ],
  ['(".+?") is not known; known are (.+?)\\.', "$1 ist nicht bekannt; bekannt sind $2."],
  [
    "(.+?) is (.+?) mm; with allowances\\.bands (.+?) mm it must be at least (.+?) mm, (\\d) of them\\.",
    "$1 ist $2 mm; bei allowances.bands $3 mm muss es mindestens $4 mm sein, das $5-fache.",
  ],
  ["There is none\\.", "Es gibt keinen."],
  ["Two of them have the same id\\.", "Zwei davon haben dieselbe id."],
  // a file or a table as a whole
  [
    "(.+?) has (\\d+) pupils; a class has (\\d+) at most\\.",
    "$1 hat $2 Schüler; eine Klasse hat höchstens $3.",
  ],
  [
    "(.+?) is written in UTF-16; only UTF-8 is read\\.",
    "$1 ist in UTF-16 geschrieben; nur UTF-8 wird gelesen.",
  ],
  ["(.+?) is not text: it has bytes of 0 in it\\.", "$1 ist kein Text: es sind Nullbytes darin."],
  ["(.+?) has letters that are not UTF-8\\.", "$1 hat Buchstaben, die nicht UTF-8 sind."],
  ["(.+?) is empty\\.", "$1 ist leer."],
  ["(.+?) has its cells parted by tabs\\.", "In $1 trennen Tabulatoren die Felder."],
  [
    "(.+?) has headings, but no body below them\\.",
    "$1 hat Überschriften, aber keinen Körper darunter.",
  ],
  [
    "(.+?) has a quotation mark without its partner in line of data (\\d+) or after it\\.",
    "$1 hat in Datenzeile $2 oder danach ein Anführungszeichen ohne Gegenstück.",
  ],
  [
    "(.+?) has no column (.+?); id, height and chest are needed in every table\\.",
    "$1 hat keine Spalte $2; id, height und chest braucht jede Tabelle.",
  ],
  [
    "The column (.+?) of (.+?) is nearly (.+?), but not quite\\.",
    "Die Spalte $1 von $2 heißt beinahe $3, aber nicht ganz.",
  ],
  ["The column (.+?) of (.+?) stands there twice\\.", "Die Spalte $1 von $2 steht zweimal da."],
  [
    "The row has (\\d+) cells, but there are (\\d+) headings\\.",
    "Die Zeile hat $1 Felder, aber es gibt $2 Überschriften.",
  ],
  [
    "Cells are parted by semicolons; commas in numbers are read as decimal points\\.",
    "Die Felder trennen Semikolons; Kommas in Zahlen gelten als Dezimalzeichen.",
  ],
  ["Not known and left alone: (.+?)\\.", "Nicht bekannt und übergangen: $1."],
  [
    "Under (\\d+): (.+?)\\. What is estimated rests on a survey of adults; measure them in full\\.",
    "Unter $1: $2. Was geschätzt wird, beruht auf Erwachsenen; nehmen Sie alle Maße.",
  ],
  // a block of the maker's own
  ["The line of (.+?) cannot be read: (.+?)\\.", "Die Linie $1 ist nicht lesbar: $2."],
  [
    "(\\S+) starts at (.+?) and (\\S+) ends at (.+?), (.+?) apart; the limit is (.+?)\\.",
    "$1 beginnt bei $2 und $3 endet bei $4, $5 auseinander; die Grenze ist $6.",
  ],
  [
    "(\\S+) reaches (.+?) from the frame’s origin; the limit is (.+?)\\.",
    "$1 reicht $2 weit vom Nullpunkt; die Grenze ist $3.",
  ],
  [
    "(\\S+) reaches (.+?) from the frame's origin; the limit is (.+?)\\.",
    "$1 reicht $2 weit vom Nullpunkt; die Grenze ist $3.",
  ],
  ["(\\S+) is (.+?) long; the least is (.+?)\\.", "$1 ist $2 lang; das Mindeste ist $3."],
  [
    "The (.+?) runs anticlockwise \\(or holds nothing\\); its edges must run clockwise on the page, y down\\.",
    "$1: läuft gegen den Uhrzeigersinn (oder ist leer); die Kanten müssen im Uhrzeigersinn laufen, y nach unten.",
  ],
  ["The line of (.+?) crosses itself near (.+?)\\.", "Die Linie $1 kreuzt sich selbst nahe $2."],
  [
    "(\\S+) reaches (.+?) over the fold at x = 0; the limit is (.+?)\\.",
    "$1 reicht $2 über den Bruch bei x = 0; die Grenze ist $3.",
  ],
  [
    "With the allowances taken away (\\S+) and (\\S+) do not meet; they end (.+?) apart\\.",
    "Ohne die Zugaben treffen $1 und $2 nicht aufeinander; sie enden $3 voneinander entfernt.",
  ],
  [
    "(\\S+) is (.+?) long, and with the allowances taken away nothing is left of it; the least is (.+?)\\.",
    "$1 ist $2 lang, und ohne die Zugaben bleibt nichts davon; das Mindeste ist $3.",
  ],
  [
    "(\\S+) meets the fold at x = (.+?); the fold is x = 0, and the limit is (.+?)\\.",
    "$1 trifft den Bruch bei x = $2; der Bruch ist x = 0, die Grenze ist $3.",
  ],
];
