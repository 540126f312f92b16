import type { Rule } from "../germanReader.ts";

/** What the doctor finds. */
export const TRACE_FINDINGS: readonly Rule[] = [
  [
    "(.+?) is ([^ ]+) and (.+?) ([^ ]+), ([^ ]+) apart \\((.+?)\\); the limit is ([^ ]+)\\.",
    "$1 misst $2 und $3 $4: $5 auseinander ($6); die Grenze ist $7.",
  ],
  [
    "Choose what to correct, or ease it in\\.",
    "Wählen Sie, was berichtigt wird, oder halten Sie es ein.",
  ],
  [
    "(.+?) ([^ ]+) off straight; the limit is ([^ ]+)\\.",
    "$1 um $2 aus der Geraden; die Grenze ist $3.",
  ],
  [
    "Choose what to correct, or leave it as it is drawn\\.",
    "Wählen Sie, was berichtigt wird, oder lassen Sie es, wie es gezeichnet ist.",
  ],
  [
    "Choose what to correct, or leave it\\.",
    "Wählen Sie, was berichtigt wird, oder lassen Sie es.",
  ],
  [
    "The sleeve's two underarm points stand ([^ ]+) off one level; the limit is ([^ ]+)\\.",
    "Die beiden Unterarmpunkte des Ärmels stehen $1 aus einer Höhe; die Grenze ist $2.",
  ],
  [
    "The sleeve's centre line stands ([^ ]+) off the middle of its width; the limit is ([^ ]+)\\.",
    "Die Mittellinie des Ärmels steht $1 neben der Mitte seiner Breite; die Grenze ist $2.",
  ],
  [
    "The back raglan is ([^ ]+) longer than the front one; the range is ([^ ]+) to ([^ ]+)\\.",
    "Der hintere Raglan ist $1 länger als der vordere; die Spanne ist $2 bis $3.",
  ],
  [
    "See whether front and back were taken for each other\\.",
    "Sehen Sie nach, ob Vorder- und Rückenteil vertauscht sind.",
  ],
];

/** What can be done about it. */
export const TRACE_REMEDIES: readonly Rule[] = [
  ["Leave both and ease ([^ ]+) in while sewing\\.", "Beide lassen und $1 beim Nähen einhalten."],
  [
    "Make the sleeve's (front|back) cap (higher|lower), so that its raglan is as long as the body's; its underarm stays\\.",
    "Die Ärmelkugel ($1) $2 machen, damit ihr Raglan so lang ist wie der des Körpers; der Unterarm bleibt.",
  ],
  [
    "(Raise|Lower) the (front|back)'s underarm, so that its raglan is as long as the sleeve's; the side keeps its length and the hem goes with it\\.",
    "Den Unterarm ($2) $1, damit sein Raglan so lang ist wie der des Ärmels; die Seite behält ihre Länge, und der Saum geht mit.",
  ],
  [
    "Give both sides the mean of the two lengths at the hem; the hem goes with them and stays square at the fold\\.",
    "Beiden Seiten am Saum das Mittel der Längen geben; der Saum geht mit und bleibt am Bruch rechtwinklig.",
  ],
  [
    "Make the front's side as long as the back's at the hem; the back stays\\.",
    "Die vordere Seite am Saum so lang machen wie die hintere; das Rückenteil bleibt.",
  ],
  [
    "Make the back's side as long as the front's at the hem; the front stays\\.",
    "Die hintere Seite am Saum so lang machen wie die vordere; das Vorderteil bleibt.",
  ],
  [
    "Give both underarms the mean of the two lengths at the wrist; the wrist goes with them\\.",
    "Beiden Unterarmen am Handgelenk das Mittel der Längen geben; das Handgelenk geht mit.",
  ],
  [
    "Make the front underarm as long as the back one at the wrist; the back one stays\\.",
    "Den vorderen Unterarm am Handgelenk so lang machen wie den hinteren; der hintere bleibt.",
  ],
  [
    "Make the back underarm as long as the front one at the wrist; the front one stays\\.",
    "Den hinteren Unterarm am Handgelenk so lang machen wie den vorderen; der vordere bleibt.",
  ],
  [
    "Leave the neckline; the band bridges a small turn\\.",
    "Den Ausschnitt lassen; das Bündchen überbrückt eine kleine Abweichung.",
  ],
  [
    "Draw the sleeve's neck edge anew between its corners, so that the neckline runs straight on over both raglan seams\\.",
    "Die Halskante des Ärmels zwischen ihren Ecken neu zeichnen, damit der Ausschnitt über beide Raglannähte gerade läuft.",
  ],
  [
    "Leave it: the raglan line keeps its turn under the arm\\.",
    "So lassen: Die Raglanlinie behält ihre Abweichung unter dem Arm.",
  ],
  [
    "Turn the ends of both raglans at the underarm, so that the line runs straight over the (?:side|seam); lengths change a little\\.",
    "Die Enden beider Raglane am Unterarm drehen, damit die Linie gerade über die Naht läuft; Längen ändern sich ein wenig.",
  ],
  [
    "Leave it: unfolded, the edge has a small peak or dip there\\.",
    "So lassen: Aufgefaltet hat die Kante dort eine kleine Spitze oder Mulde.",
  ],
  [
    "Turn the (front|back)'s (neckline|hem) at the fold until it is square to it\\.",
    "$1, $2: am Bruch drehen, bis der rechte Winkel stimmt.",
  ],
  ["Leave the sleeve as it hangs\\.", "Den Ärmel lassen, wie er hängt."],
  [
    "Turn the whole sleeve until both underarm points are level; no line changes its length\\.",
    "Den ganzen Ärmel drehen, bis beide Unterarmpunkte auf einer Höhe sind; keine Linie ändert ihre Länge.",
  ],
  ["Leave the centre line where it is drawn\\.", "Die Mittellinie lassen, wo sie gezeichnet ist."],
  [
    "Move the centre line to the middle of the sleeve; no line changes its length\\.",
    "Die Mittellinie in die Mitte des Ärmels rücken; keine Linie ändert ihre Länge.",
  ],
];
