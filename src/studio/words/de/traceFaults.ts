import type { Rule } from "../germanReader.ts";

/** Pieces, edges and lengths inside a sentence about a block of one's own. Whole texts. */
export const TRACE_PHRASES: readonly Rule[] = [
  ["(.+?) of a (<.+?>)", "$1 von $2"],
  ["front", "Vorderteil"],
  ["back", "Rückenteil"],
  ["sleeve", "Ärmel"],
  ["higher", "höher"],
  ["lower", "niedriger"],
  ["Raise", "heben"],
  ["Lower", "senken"],
  ["more", "mehr"],
  ["less", "weniger"],
  ["neckline", "Ausschnitt"],
  ["hem", "Saum"],
  ["half width at the underarm", "halbe Breite am Unterarm"],
  ["half width of the neck", "halbe Breite des Halses"],
  ["front neck depth", "vordere Halstiefe"],
  ["back neck depth", "hintere Halstiefe"],
  ["depth from the nape to the underarm", "Tiefe vom Nacken zum Unterarm"],
  ["side length", "Seitenlänge"],
  ["half width of the hem", "halbe Breite des Saums"],
  ["sleeve's width at the underarm", "Ärmelbreite am Unterarm"],
  ["sleeve's width at the wrist", "Ärmelbreite am Handgelenk"],
  ["sleeve's underarm length", "Unterarmlänge des Ärmels"],
  ["The front's raglan", "Der vordere Raglan"],
  ["The back's raglan", "Der hintere Raglan"],
  ["The front's side", "Die vordere Seite"],
  ["The sleeve's front underarm", "Der vordere Unterarm des Ärmels"],
  ["the sleeve's", "der des Ärmels"],
  ["the back's", "die hintere"],
  ["its back one", "der hintere"],
  ["Over a raglan seam the neckline runs on", "Über einer Raglannaht läuft der Ausschnitt"],
  [
    "Over the side seam the body's raglan line runs on",
    "Über der Seitennaht läuft die Raglanlinie des Körpers",
  ],
  [
    "Over the underarm seam the sleeve's raglan line runs on",
    "Über der Unterarmnaht läuft die Raglanlinie des Ärmels",
  ],
  ["At the fold the front's neckline is", "Am Bruch ist der vordere Ausschnitt"],
  ["At the fold the back's neckline is", "Am Bruch ist der hintere Ausschnitt"],
  ["At the fold the front's hem is", "Am Bruch ist der vordere Saum"],
  ["At the fold the back's hem is", "Am Bruch ist der hintere Saum"],
  [
    "its neckline or hem does not cross the middle once",
    "Ausschnitt oder Saum quert die Mitte nicht genau einmal",
  ],
  [
    "its two halves lie up to (.+?) apart, and (.+?) is the most",
    "die beiden Hälften liegen bis zu $1 auseinander, und $2 ist das meiste",
  ],
];

/** Files that cannot be opened. */
const FILES: readonly Rule[] = [
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

/** Outlines and edges. */
const OUTLINES: readonly Rule[] = [
  ["The (front|back|sleeve) lacks (.+?)\\.", "Beim Teil $1 fehlt: $2."],
  ["Assign a line to each of its edges\\.", "Ordnen Sie jeder Kante eine Linie zu."],
  [
    "The outline of the (.+?) is open: run (\\d+) ends (.+?) from where the next begins; the limit is (.+?)\\.",
    "Der Umriss ($1) ist offen: Zug $2 endet $3 vom Anfang des nächsten; die Grenze ist $4.",
  ],
  ["Drag the two ends together\\.", "Ziehen Sie die beiden Enden zusammen."],
  [
    "The outline of the (.+?) is open: its ends stand (.+?) apart\\.",
    "Der Umriss ($1) ist offen: Seine Enden stehen $2 auseinander.",
  ],
  [
    "Join them with a straight line, as a fold is, or choose another line\\.",
    "Verbinden Sie sie mit einer Geraden, wie ein Bruch es ist, oder wählen Sie eine andere Linie.",
  ],
  [
    "The outline of the (.+?) crosses itself near (.+?)\\.",
    "Der Umriss ($1) kreuzt sich selbst bei $2.",
  ],
  ["Drag its points so that it does not\\.", "Ziehen Sie seine Punkte so, dass er es nicht tut."],
  [
    "The corners of the (.+?) do not follow one another round it\\.",
    "Die Ecken ($1) folgen nicht rundum aufeinander.",
  ],
  [
    "Choose for each edge the corner at which it begins, going round the piece\\.",
    "Wählen Sie für jede Kante die Ecke, an der sie beginnt, rund um das Teil.",
  ],
  ["The piece cannot be folded: (.+?)\\.", "Das Teil lässt sich nicht falten: $1."],
  [
    "Name its corners by hand, or trace one half only\\.",
    "Benennen Sie seine Ecken von Hand, oder zeichnen Sie nur eine Hälfte nach.",
  ],
  [
    "The (.+?) has (\\d+) edges; a half has 5: neckline, raglan, side, hem and centre\\.",
    "$1: $2 Kanten; eine Hälfte hat 5: Ausschnitt, Raglan, Seite, Saum und Mitte.",
  ],
  ["Mark its five corners\\.", "Bezeichnen Sie seine fünf Ecken."],
  [
    "The sleeve has (\\d+) edges; it must have 6: neckline, two raglans, two underarms and wrist\\.",
    "Der Ärmel hat $1 Kanten; es müssen 6 sein: Ausschnitt, zwei Raglane, zwei Unterarme und Handgelenk.",
  ],
  ["Mark its six corners\\.", "Bezeichnen Sie seine sechs Ecken."],
  [
    "The front's neckline is (.+?) deep and the back's (.+?): front and back seem to be taken for each other\\.",
    "Der vordere Ausschnitt ist $1 tief und der hintere $2: Vorder- und Rückenteil scheinen vertauscht.",
  ],
  [
    "Name the piece with the deeper neckline the front\\.",
    "Nennen Sie das Teil mit dem tieferen Ausschnitt Vorderteil.",
  ],
  [
    "The whole (.+?) was folded on its middle; its halves lay up to (.+?) apart, and their mean was taken\\.",
    "Das ganze Teil ($1) wurde an seiner Mitte gefaltet; die Hälften lagen bis zu $2 auseinander, und ihr Mittel wurde genommen.",
  ],
  [
    "The two halves were laid so that their underarms are level: a block by itself does not say how front and back stand to each other\\.",
    "Die beiden Hälften wurden so gelegt, dass ihre Unterarme auf einer Höhe sind: Ein Grundschnitt allein sagt nicht, wie Vorder- und Rückenteil zueinander stehen.",
  ],
  [
    "The nape was taken to lie (.+?) above the back's neckline at the centre, as the drafted block has it\\.",
    "Der Nacken wurde $1 über dem hinteren Ausschnitt in der Mitte angenommen, wie im gezeichneten Grundschnitt.",
  ],
];

/** A block by tape. */
const TAPE: readonly Rule[] = [
  [
    "The (.+?) is ([^ ]+); it must be from (.+?) to (.+?)\\.",
    "$1: $2; es muss von $3 bis $4 sein.",
  ],
  [
    "Measure it again, and check its unit\\.",
    "Messen Sie noch einmal, und prüfen Sie die Einheit.",
  ],
  [
    "The hem is (.+?) off the width at the underarm over a side of (.+?): the side would lie nearly flat\\.",
    "Der Saum weicht um $1 von der Breite am Unterarm ab, bei einer Seite von $2: Die Seite läge fast flach.",
  ],
  [
    "Measure the half width of the hem and the side again\\.",
    "Messen Sie die halbe Breite des Saums und die Seite noch einmal.",
  ],
  [
    "The half width of the neck is (.+?); for a half width of (.+?) it must be below (.+?)\\.",
    "Die halbe Breite des Halses ist $1; bei einer halben Breite von $2 muss sie unter $3 sein.",
  ],
  [
    "Measure half of the neck, not the whole\\.",
    "Messen Sie die Hälfte des Halses, nicht das Ganze.",
  ],
  [
    "The three offsets of the (.+?) raglan lie on no smooth line: the nearest one misses them by (.+?), and (.+?) is the most\\.",
    "Die drei Abstände des Raglans ($1) liegen auf keiner glatten Linie: Die nächste verfehlt sie um $2, und $3 ist das meiste.",
  ],
  [
    "Measure them again at a quarter, half and three quarters of the straight way from neck to underarm\\.",
    "Messen Sie sie noch einmal bei einem Viertel, der Hälfte und drei Vierteln des geraden Wegs vom Hals zum Unterarm.",
  ],
  [
    "The underarm lies (.+?) below the nape and the front raglan begins at (.+?): the raglan would run nearly level\\.",
    "Der Unterarm liegt $1 unter dem Nacken, und der vordere Raglan beginnt bei $2: Der Raglan liefe fast waagerecht.",
  ],
  [
    "Measure the depth from the nape to the underarm, and the front neck depth, again\\.",
    "Messen Sie die Tiefe vom Nacken zum Unterarm und die vordere Halstiefe noch einmal.",
  ],
  [
    "Measure the sleeve's widths and length again\\.",
    "Messen Sie die Breiten und die Länge des Ärmels noch einmal.",
  ],
  [
    "Where the raglans meet the neckline was not measured: they stand (.+?) \\(front\\) and (.+?) \\(back\\) along it from the neck point, as a drafted block has them for this neck\\.",
    "Wo die Raglane auf den Ausschnitt treffen, wurde nicht gemessen: Sie stehen $1 (vorn) und $2 (hinten) vom Halspunkt, wie ein gezeichneter Grundschnitt sie für diesen Hals hat.",
  ],
  [
    "The nape was taken to lie (.+?) above the back's neckline at the centre\\.",
    "Der Nacken wurde $1 über dem hinteren Ausschnitt in der Mitte angenommen.",
  ],
  [
    "Front and back have the same width, side and hem, and the hem is straight\\.",
    "Vorder- und Rückenteil haben gleiche Breite, Seite und gleichen Saum, und der Saum ist gerade.",
  ],
  [
    "The sleeve's cap was solved so that its raglans are as long as the body's and its top as long as the neckline it replaces\\.",
    "Die Ärmelkugel wurde so gelöst, dass ihre Raglane so lang sind wie die des Körpers und ihr oberes Ende so lang wie der Ausschnitt, den es ersetzt.",
  ],
  [
    "A raglan without offsets was drawn as a drafted one\\.",
    "Ein Raglan ohne Abstände wurde wie ein gezeichneter genommen.",
  ],
  [
    "The (.+?) raglan misses one of its offsets by (.+?): a smooth line was drawn nearest to all three\\.",
    "Der Raglan ($1) verfehlt einen seiner Abstände um $2: Eine glatte Linie wurde allen dreien am nächsten gezeichnet.",
  ],
];

/** What the doctor finds. */
const FINDINGS: readonly Rule[] = [
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
const REMEDIES: readonly Rule[] = [
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

export const TRACE_SENTENCES: readonly Rule[] = [
  ...FILES,
  ...OUTLINES,
  ...FINDINGS,
  ...REMEDIES,
  ...TAPE,
];
