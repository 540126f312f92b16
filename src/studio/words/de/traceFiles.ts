import type { Rule } from "../germanReader.ts";

/** Files that cannot be opened. */
export const TRACE_FILES: readonly Rule[] = [
  [
    "The file is no sound XML: .+? at character (\\d+)\\.",
    "Die Datei ist kein heiles XML: Sie bricht bei Zeichen $1.",
  ],
  [
    "Save it again from your drawing program as plain SVG\\.",
    "Speichern Sie sie aus dem Zeichenprogramm noch einmal als einfaches SVG.",
  ],
  [
    "The file asks for a style sheet from elsewhere; nothing outside the file is read\\.",
    "Die Datei verlangt eine Formatvorlage von anderswo; außerhalb der Datei wird nichts gelesen.",
  ],
  [
    "Save it as plain SVG, with its styles inside\\.",
    "Speichern Sie sie als einfaches SVG, mit den Formaten darin.",
  ],
  [
    "The file declares entities of its own; they are never read, since they can blow up a file without end\\.",
    "Die Datei erklärt eigene Entitäten; sie werden nie gelesen, weil sie eine Datei endlos aufblähen können.",
  ],
  ["Save it as plain SVG\\.", "Speichern Sie sie als einfaches SVG."],
  [
    "The file has more than (\\d+) elements, or they stand more than (\\d+) deep: it is no pattern\\.",
    "Die Datei hat mehr als $1 Elemente, oder sie stehen mehr als $2 tief: Das ist kein Schnitt.",
  ],
  ["Save only the pieces of the block\\.", "Speichern Sie nur die Teile des Grundschnitts."],
  [
    "The file has an event handler \\((.+?)\\), which could run a program; it is not opened\\.",
    "Die Datei enthält einen Auslöser ($1), der ein Programm starten könnte; sie wird nicht geöffnet.",
  ],
  [
    "The file refers to something outside it \\((.+?)\\); nothing outside is read\\.",
    "Die Datei verweist auf etwas außerhalb ($1); außerhalb wird nichts gelesen.",
  ],
  [
    "The file's style sheet refers to something outside it; nothing outside is read\\.",
    "Die Formatvorlage der Datei verweist auf etwas außerhalb; außerhalb wird nichts gelesen.",
  ],
  [
    "The file holds a <(.+?)>; a drawing needs none, and it is not opened\\.",
    "Die Datei enthält ein <$1>; eine Zeichnung braucht keines, und sie wird nicht geöffnet.",
  ],
  [
    "Save it as plain SVG: paths only, nothing that runs or is fetched\\.",
    "Speichern Sie sie als einfaches SVG: nur Pfade, nichts, das läuft oder geholt wird.",
  ],
  [
    "The (?:line|transform) of the <(.+?)>( “.+?”)? cannot be read at “(.*?)”\\.",
    "Ein <$1>$2 kann bei „$3“ nicht gelesen werden.",
  ],
  [
    "The drawing has more than (\\d+) parts: it is no pattern\\.",
    "Die Zeichnung hat mehr als $1 Teilstücke: Das ist kein Schnitt.",
  ],
  [
    "Save only the pieces of the block; a picture turned into lines is read as a photo instead\\.",
    "Speichern Sie nur die Teile des Grundschnitts; ein Bild aus Linien wird stattdessen als Foto gelesen.",
  ],
  ["The file draws no line that is shown\\.", "Die Datei zeichnet keine sichtbare Linie."],
  [
    "Show the layers with the block's pieces, and save them as paths\\.",
    "Zeigen Sie die Ebenen mit den Teilen, und speichern Sie sie als Pfade.",
  ],
  [
    "The file begins with <(.+?)>, not with <svg>\\.",
    "Die Datei beginnt mit <$1>, nicht mit <svg>.",
  ],
  ["Choose an SVG file\\.", "Wählen Sie eine SVG-Datei."],
  [
    "The PDF is locked with a password, so its lines cannot be read\\.",
    "Das PDF ist mit einem Kennwort verschlossen, seine Linien sind nicht lesbar.",
  ],
  [
    "Open it where you know the password, and save or print it anew without one\\.",
    "Öffnen Sie es, wo Sie das Kennwort kennen, und speichern oder drucken Sie es neu ohne eines.",
  ],
  [
    "The file is no PDF that can be read, or a part of it is missing\\.",
    "Die Datei ist kein lesbares PDF, oder ein Teil fehlt.",
  ],
  ["Copy or download it again\\.", "Kopieren oder laden Sie sie noch einmal."],
  [
    "The PDF has (\\d+) pages; (\\d+) is the most that is read\\.",
    "Das PDF hat $1 Seiten; höchstens $2 werden gelesen.",
  ],
  [
    "The PDF has (\\d+) steps; (\\d+) is the most that is read\\.",
    "Das PDF zeichnet in $1 Schritten; höchstens $2 werden gelesen.",
  ],
  [
    "The PDF draws (\\d+) parts of lines; (\\d+) is the most, and a pattern has some thousand\\.",
    "Das PDF zeichnet $1 Teilstücke; höchstens $2 werden gelesen, und ein Schnitt hat einige Tausend.",
  ],
  ["Save only the pages of the block\\.", "Speichern Sie nur die Seiten mit dem Grundschnitt."],
  [
    "The PDF draws no lines: it holds pictures or words only, as a scan does\\.",
    "Das PDF zeichnet keine Linien: Es enthält nur Bilder oder Wörter, wie ein Scan.",
  ],
  [
    "Save the page as a picture and bring it in as a scan\\.",
    "Speichern Sie die Seite als Bild, und bringen Sie sie als Scan herein.",
  ],
  [
    "The file has (\\d+) MB; (\\d+) MB is the most that is opened\\.",
    "Die Datei hat $1 MB; höchstens $2 MB werden geöffnet.",
  ],
  ["The file could not be read to its end\\.", "Die Datei konnte nicht zu Ende gelesen werden."],
  [
    "Open it again; a PDF needs the network once, to load its reader\\.",
    "Öffnen Sie sie noch einmal; ein PDF braucht einmal das Netz, um seinen Leser zu laden.",
  ],
];
