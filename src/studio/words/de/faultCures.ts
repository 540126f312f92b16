import type { Rule } from "../germanReader.ts";

const OR_ESTIMATED = ", oder es weglassen, dann wird es geschätzt.";

/** What is to be done about it. */
export const CURES: readonly Rule[] = [
  [
    "Write it with digits and a decimal point, without a unit; a draft needs it\\.",
    "Mit Ziffern und Dezimalpunkt schreiben, ohne Einheit; ein Schnitt braucht es.",
  ],
  [
    "Write it with digits and a decimal point, without a unit, or leave it out to have it estimated\\.",
    `Mit Ziffern und Dezimalpunkt schreiben, ohne Einheit${OR_ESTIMATED}`,
  ],
  ["Measure it and write it down: (.+?)\\.", "Messen und aufschreiben: $1."],
  [
    "Were they measured in (.+?)\\? Then write (.+?) as the unit of this body\\.",
    "Wurde in $1 gemessen? Dann $2 als Einheit dieses Körpers schreiben.",
  ],
  [
    "Was it measured in (.+?)\\? Then write (.+?)\\. If not, measure again; a draft needs it\\.",
    "Wurde in $1 gemessen? Dann $2 schreiben. Wenn nicht, noch einmal messen; ein Schnitt braucht es.",
  ],
  [
    "Was it measured in (.+?)\\? Then write (.+?)\\. If not, measure again, or leave it out to have it estimated\\.",
    `Wurde in $1 gemessen? Dann $2 schreiben. Wenn nicht, noch einmal messen${OR_ESTIMATED}`,
  ],
  ["Measure again; a draft needs it\\.", "Noch einmal messen; ein Schnitt braucht es."],
  ["Measure again, or leave it out to have it estimated\\.", `Noch einmal messen${OR_ESTIMATED}`],
  ["Change it, or leave it out to take (.+?)\\.", "Ändern, oder weglassen, dann gilt $1."],
  [
    "Change it; where the lines are seam lines already, leave allowances out\\.",
    "Ändern; wo die Linien schon Nahtlinien sind, allowances weglassen.",
  ],
  ["Change it\\.", "Ändern."],
  [
    "Write it as one run of path data with absolute M, L and C\\.",
    "Als einen Zug Pfaddaten mit absolutem M, L und C schreiben.",
  ],
  ["Write it\\.", "Hinschreiben."],
  ["Did you mean (.+?)\\? Else take it out\\.", "War $1 gemeint? Sonst herausnehmen."],
  ["Take it out\\.", "Herausnehmen."],
  ["Shorten it\\.", "Kürzen."],
  ["Give the body an id such as (.+?)\\.", "Dem Körper eine id wie $1 geben."],
  ["Give this body another id\\.", "Diesem Körper eine andere id geben."],
  [
    "Give it a cell for every heading; part cells by semicolons where numbers have decimal commas\\.",
    "Jeder Überschrift ein Feld geben; bei Dezimalkommas die Felder mit Semikolons trennen.",
  ],
  ["Give a table with a row for each body\\.", "Eine Tabelle mit einer Zeile je Körper geben."],
  ["Part the table into two\\.", "Die Tabelle in zwei teilen."],
  ["Save it again as UTF-8 text\\.", "Noch einmal als UTF-8-Text speichern."],
  ["Save it as CSV, parted by commas\\.", "Als CSV speichern, mit Kommas getrennt."],
  ["Write a row for each body\\.", "Für jeden Körper eine Zeile schreiben."],
  [
    'Write a quotation mark inside a cell as ""\\.',
    'Ein Anführungszeichen im Feld als "" schreiben.',
  ],
  [
    "Write the name of each column in the first line\\.",
    "Die Namen der Spalten in die erste Zeile schreiben.",
  ],
  ["Write (.+?), or take the column out\\.", "$1 schreiben, oder die Spalte herausnehmen."],
  ["Take one of the two out\\.", "Eine der beiden herausnehmen."],
  [
    "Cut the band higher, or make allowances\\.bands smaller\\.",
    "Das Band höher zuschneiden, oder allowances.bands kleiner machen.",
  ],
  [
    "Draw the edges so that each starts where the one before ends, clockwise round the piece\\.",
    "Die Kanten so zeichnen, dass jede beginnt, wo die vorige endet, im Uhrzeigersinn.",
  ],
  [
    "Draw the edge, and check the unit of the block\\.",
    "Die Kante zeichnen, und die Einheit prüfen.",
  ],
  ["Check the unit of the block\\.", "Die Einheit des Grundschnitts prüfen."],
  ["Draw it on its own side of the fold\\.", "Sie auf ihrer Seite des Bruchs zeichnen."],
  [
    "Give the two edges allowances that are more alike, or draw the corner between them less sharp\\.",
    "Beiden Kanten ähnlichere Zugaben geben, oder die Ecke dazwischen weniger spitz zeichnen.",
  ],
  [
    "Make the allowances smaller, and check the unit of the block\\.",
    "Die Zugaben kleiner machen und die Einheit des Grundschnitts prüfen.",
  ],
  [
    "Turn the order and the direction of its edges round, or mirror the piece\\.",
    "Folge und Richtung der Kanten umdrehen, oder das Teil spiegeln.",
  ],
  [
    "Redraw the edge so that the outline does not cross itself\\.",
    "Die Kante so zeichnen, dass sich der Umriss nicht kreuzt.",
  ],
  [
    "Move the piece so that its centre line lies on x = 0\\.",
    "Das Teil so rücken, dass die Mitte auf x = 0 liegt.",
  ],
];
