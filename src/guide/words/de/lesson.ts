/** Vom Grundschnitt zum Sweatshirt, Schritt für Schritt, für eine Klasse. */
export const LESSON = {
  "lesson.block.title": "Der Grundschnitt",
  "lesson.block.say":
    "Mit dem Grundschnitt beginnen: halbes Vorder- und halbes Rückenteil im Bruch und ein Ärmel.",
  "lesson.block.why":
    "Jede Linie ist eine Nahtlinie. Zugaben gibt es noch nicht: Wer eine Linie ändert, ändert das Kleidungsstück.",
  "lesson.block.ease": "Der Brustumfang ist {chest}. Wie viel weiter ist der Grundschnitt?",
  "lesson.block.easeSum": "2 × ({front} + {back}) − {chest} = {answer}",
  "lesson.block.raglan":
    "Wie lang ist der Raglan des Vorderteils, wie lang der des Ärmels, der dazugehört?",
  "lesson.block.raglanSum": "Vorderteil {front}, Ärmel {answer}: gleich.",
  "lesson.block.raglanApart": "Vorderteil {front}, Ärmel {answer}.",
  "lesson.neckline.title": "Ausschnitt",
  "lesson.neckline.say":
    "Den vorderen Ausschnitt um {front}, den hinteren um {back} tiefer legen und den Hals um {widen} weiten.",
  "lesson.neckline.why":
    "Alle vier Raglankanten verlieren am Hals gleich viel; Vorderteil, Rückenteil und Ärmel passen weiterhin.",
  "lesson.neckline.raglan": "Wie lang ist der vordere Raglan jetzt?",
  "lesson.neckline.depth": "Wie tief liegt der vordere Ausschnitt jetzt unter Nackenhöhe?",
  "lesson.side.title": "Seitennähte",
  "lesson.side.say": "Die Seitennähte um {by} nach außen legen und begradigen.",
  "lesson.side.why":
    "Ein Sweatshirt fällt gerade in sein Bündchen. Die Raglankanten des Ärmels wachsen ebenso und passen weiterhin.",
  "lesson.side.width": "Wie breit ist das halbe Vorderteil am Unterarm jetzt?",
  "lesson.side.long": "Wie lang ist die Seitennaht jetzt, von der Unterarmhöhe bis zur Saumhöhe?",
  "lesson.hem.title": "Saum",
  "lesson.hem.say": "Den Saum um {by} höher legen.",
  "lesson.hem.why":
    "Das Saumbündchen gibt unten {depth} dazu; davon bleiben {blouse} für den Überfall.",
  "lesson.hem.whyShort":
    "Das Saumbündchen gibt unten {depth} dazu, {short} weniger, als weggenommen wurde.",
  "lesson.hem.side": "Wie lang ist die Seitennaht jetzt?",
  "lesson.hem.blouse": "Um wie viel ist das fertige Teil an der Seite länger als der Grundschnitt?",
  "lesson.sleeve.title": "Ärmelende",
  "lesson.sleeve.say": "Den Ärmel {above} über dem Handgelenk enden lassen.",
  "lesson.sleeve.why":
    "Das Bündchen füllt die Lücke. Es wird gefaltet und ist fertig {depth} hoch.",
  "lesson.sleeve.underarm":
    "Die Unterarmnaht ist schräg: {old} Naht auf {height} Höhe. Wie lang ist sie jetzt?",
  "lesson.sleeve.underarmSum": "{old} − {old} × {above} ÷ {height} = {answer}",
  "lesson.sleeve.bare": "Wie weit vom Handgelenk endet der fertige Ärmel?",
  "lesson.v.title": "V-Einsatz",
  "lesson.v.say":
    "Ein V in das Vorderteil schneiden, entlang des Ausschnitts {half} nach jeder Seite und {depth} tief.",
  "lesson.v.whyTrue":
    "Die Nahtlinien des Einsatzes sind die Linien des V selbst; beide Kanten sind gleich lang.",
  "lesson.v.whyCut":
    "Der Einsatz ist das Abgeschnittene mit einer Zugabe ringsum; genäht ist der Ausschnitt länger als der Einsatz.",
  "lesson.v.side":
    "Eine Seite des V läuft {across} nach der Seite und {down} nach unten. Wie lang ist sie?",
  "lesson.v.sideSum": "{across} × {across} + {down} × {down} = {answer} × {answer}",
  "lesson.v.neckline": "Wie viel vom halben vorderen Ausschnitt bleibt?",
  "lesson.v.short": "Um wie viel ist der Einsatz auf jeder Seite zu kurz?",
  "lesson.bands.title": "Bündchen",
  "lesson.bands.say":
    "Die Bündchen zuschneiden: Halsbündchen, zwei Ärmelbündchen, Saumbündchen, gefaltet, mit {allowance} Zugabe.",
  "lesson.bands.why":
    "Ein Bündchen ist kürzer als seine Öffnung. Es hält den Stoff zusammen und dehnt sich, wo der Körper hindurch muss.",
  "lesson.bands.cuff":
    "Das Handgelenk misst {wrist}. Wie lang wird ein Ärmelbündchen zugeschnitten?",
  "lesson.bands.cuffSum": "{wrist} + {ease} + 2 × {allowance} = {answer}",
  "lesson.bands.deep":
    "Ein Ärmelbündchen wird {height} hoch zugeschnitten. Wie hoch ist es gefaltet und genäht?",
  "lesson.bands.deepSum": "{height} ÷ 2 − {allowance} = {answer}",
  "lesson.bands.hem": "Die Hüfte misst {hip}. Wie lang wird das Saumbündchen zugeschnitten?",
  "lesson.bands.hemSum": "{hip} + {ease} + 2 × {allowance} = {answer}",
  "lesson.bands.neck":
    "Die Öffnung misst {opening}, das Halsbündchen {length}. Wie viel wird es gedehnt?",
  "lesson.bands.neckSum": "{opening} − {length} = {answer}",
  "lesson.turnings.title": "Nahtzugaben",
  "lesson.turnings.say":
    "Zugaben anfügen: Raglan {raglan}, Seite {side}, Unterarm {underarm}, und {bands}, wo Bündchen angenäht werden.",
  "lesson.turnings.why":
    "Die Zugabe liegt außerhalb der Nahtlinie. Zwei Kanten, die zusammenkommen, haben dieselbe, sonst träfen sie sich nicht.",
  "lesson.turnings.wide":
    "Wie breit ist das halbe Rückenteil zugeschnitten, am Passzeichen der Seite?",
  "lesson.sum.plus": "{a} + {b} = {answer}",
  "lesson.sum.minus": "{a} − {b} = {answer}",
  "lesson.sum.measured": "Entlang der Linie gemessen: {answer}",
};
