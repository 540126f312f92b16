import type { Rule } from "../germanReader.ts";

/** Outlines and edges. */
export const TRACE_OUTLINES: readonly Rule[] = [
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
export const TRACE_TAPE: readonly Rule[] = [
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
