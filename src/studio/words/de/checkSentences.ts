import type { CheckSentences } from "../checkSentences.ts";

/** What each check measured, against its limit, and what to change. */
export const checkSentences: CheckSentences = {
  "said.other": "Gemessen {value}; die Grenze ist {limit}.",
  "said.raglan-front-match":
    "Der vordere Raglan misst {one}, der des Ärmels {other}: {value} auseinander; die Grenze ist {limit}.",
  "cure.raglan-front-match": "Den Ärmel richten, oder den Körper.",
  "said.raglan-back-match":
    "Der hintere Raglan misst {one}, der des Ärmels {other}: {value} auseinander; die Grenze ist {limit}.",
  "cure.raglan-back-match": "Den Ärmel richten, oder den Körper.",
  "said.side-match":
    "Die vordere Seitennaht misst {one}, die hintere {other}: {value} auseinander; die Grenze ist {limit}.",
  "cure.side-match": "Eine der beiden neu zeichnen.",
  "said.underarm-match":
    "Die vordere Unterarmnaht des Ärmels misst {one}, die hintere {other}: {value} auseinander; die Grenze ist {limit}.",
  "cure.underarm-match": "Eine der beiden neu zeichnen.",
  "said.v-insert-match":
    "Das V im Vorderteil wird auf jeder Seite über {one} genäht, die Kante des Einsatzes misst {other}: {value} auseinander; die Grenze ist {limit}.",
  "cure.v-insert-match":
    "Der Einsatz müsste sich um {stretch} dehnen. Ihn passend zeichnen lassen.",
  "said.neckline-turn":
    "Über einer Raglannaht weicht der Ausschnitt um {value} von der Geraden ab; die Grenze ist {limit}.",
  "cure.neckline-turn":
    "Die Halskante des Ärmels neu zeichnen, oder die Änderung am Ausschnitt anknöpfen, die das tut.",
  "said.underarm-turn":
    "Über Seiten- und Unterarmnaht weicht die Raglanlinie um {value} von der Geraden ab; die Grenze ist {limit}.",
  "cure.underarm-turn":
    "Die Seitennähte weniger weit hinausrücken, oder die geformten Seitennähte behalten.",
  "said.hem-turn":
    "Über der Seitennaht weicht der Saum um {value} von der Geraden ab; die Grenze ist {limit}.",
  "cure.hem-turn": "Den Saum im rechten Winkel zur Seitennaht zeichnen.",
  "said.wrist-turn":
    "Über der Unterarmnaht weicht das Ärmelende um {value} von der Geraden ab; die Grenze ist {limit}.",
  "cure.wrist-turn": "Das Handgelenk weiter machen, oder den Ärmel schmaler.",
  "said.side-seam-move":
    "Der Raglan trifft den Unterarm {value} aus der Waagerechten; die Grenze ist {limit}.",
  "cure.side-seam-move":
    "Den Raglan des Grundschnitts am Ende flacher zeichnen, oder die geformten Seitennähte behalten.",
  "said.chest-ease":
    "Um die Brust misst das Kleidungsstück {girth}, {value} {than} als der Körper mit {body}; die Spanne ist {limit} bis {most}.",
  "cure.chest-ease.more": "Der Brust mehr Weite geben, oder die Seitennähte weiter hinausrücken.",
  "cure.chest-ease.less":
    "Der Brust weniger Weite geben, oder die Seitennähte weniger weit hinausrücken.",
  "said.hip-ease":
    "Um den Saum misst das Kleidungsstück {girth}, {value} {than} als der Körper mit {body}; die Spanne ist {limit} bis {most}.",
  "cure.hip-ease.more": "Die geformten Seitennähte behalten, oder der Brust mehr Weite geben.",
  "cure.hip-ease.less":
    "Der Brust weniger Weite geben, oder die Seitennähte weniger weit hinausrücken.",
  "said.upper-arm-ease":
    "Um den Oberarm misst der Ärmel {girth}, {value} {than} als der Körper mit {body}; die Spanne ist {limit} bis {most}.",
  "cure.upper-arm-ease.more": "Dem Oberarm mehr Weite geben.",
  "cure.upper-arm-ease.less":
    "Dem Oberarm weniger Weite geben, oder die Seitennähte weniger weit hinausrücken.",
  "said.head-passes": "Das Halsbündchen muss sich für den Kopf {by} dehnen (Grenze {limit}).",
  "cure.head-passes": "Das Bündchen länger machen, oder den Ausschnitt weiter.",
  "said.neckline-passes":
    "Die Halsnaht, {opening} rund, muss sich für den Kopf {by} dehnen (Grenze {limit}).",
  "cure.neckline-passes": "Den Ausschnitt senken oder weiten.",
  "said.neckband-lies-flat":
    "Getragen misst das Halsbündchen {worn} und sein Ring am Körper {ring}, also {value} {longer}; flach liegt es bis {limit} länger.",
  "cure.neckband-lies-flat":
    "Das Bündchen weniger hoch machen, ein dehnbareres nehmen, oder den Ausschnitt weiten.",
  "said.neckband-stands":
    "Das Halsbündchen ist mit {value} höher als der Abstand zum Hals, {limit}; es wird am Hals anstehen.",
  "cure.neckband-stands": "Das Bündchen weniger hoch machen, oder den Ausschnitt weiten.",
  "said.neckband-sews":
    "Das Halsbündchen muss sich zum Annähen um {value} dehnen (Grenze {limit}).",
  "cure.neckband-sews": "Das Bündchen länger machen.",
  "said.hand-passes-cuff":
    "Das Ärmelbündchen, {length}, muss sich für die Hand, {girth}, {by} dehnen (Grenze {limit}).",
  "cure.hand-passes-cuff": "Dem Bündchen mehr Weite geben, oder ein dehnbareres nehmen.",
  "said.cuff-holds":
    "Das Ärmelende, {opening}, dehnt das Ärmelbündchen, {length}, beim Annähen um {value}; die Spanne ist {none} bis {limit}.",
  "said.cuff-holds.short":
    "Das Ärmelende, {opening}, ist {value} kürzer als das Ärmelbündchen, {length}, das angenäht wird; die Spanne ist {none} bis {limit}.",
  "cure.cuff-holds": "Die Weite am Handgelenk ändern, oder die des Ärmelbündchens.",
  "said.cuff-pressure": "In Ruhe drückt das Ärmelbündchen mit {value}; die Grenze ist {limit}.",
  "cure.cuff-pressure": "Dem Bündchen mehr Weite geben.",
  "said.hem-band-passes":
    "Das Saumbündchen, {length}, muss sich für {part}, {girth}, {by} dehnen (Grenze {limit}).",
  "cure.hem-band-passes": "Dem Bündchen mehr Weite geben, oder ein dehnbareres nehmen.",
  "said.hem-band-holds":
    "Der Saum, {opening}, dehnt das Saumbündchen, {length}, beim Annähen um {value}; die Spanne ist {none} bis {limit}.",
  "said.hem-band-holds.short":
    "Der Saum, {opening}, ist {value} kürzer als das Saumbündchen, {length}, das angenäht wird; die Spanne ist {none} bis {limit}.",
  "cure.hem-band-holds": "Die Weite am Saum ändern, oder die des Saumbündchens.",
  "said.hem-band-pressure": "In Ruhe drückt das Saumbündchen mit {value}; die Grenze ist {limit}.",
  "said.hem-band-pressure.blouse":
    "Es hängt unter der Hüfte; mit {blouse} oder kürzer hält es dort einen Bausch.",
  "cure.hem-band-pressure": "Dem Bündchen mehr Weite geben.",
  "said.neckline-crosses":
    "Im Bruch liegt der Halsausschnitt {value} unter dem Saum; die Grenze ist {limit}. Den Halsausschnitt weniger tief legen, oder den Saum weniger heben.",
  "said.allowance-folds":
    "Eine Kante ist mit einem Radius von {value} gehöhlt und ihre Zugabe ist {limit}; die Schnittlinie faltet sich auf sich selbst. Die Zugabe kleiner machen.",
  "said.rail-scye":
    "Der Unterarm läge {value} unter dem Nacken; für diese Brust und diesen Hals wird er bei {limit} gehalten. Die Achselhöhe noch einmal messen, oder die Weite der Brust ändern.",
  "said.rail-length":
    "Der Grundschnitt endete {value} unter dem Nacken; eine Seite von {side} braucht {limit}. Vom Nacken zur Hüfte noch einmal messen, oder die Länge unter der Hüfte größer machen.",
  "said.rail-hem-width":
    "Ein Viertel des Saums wäre {value}; die Seitennaht darf sich bis {limit} hinausneigen. Der Brust mehr Weite geben, oder den Grundschnitt länger machen.",
  "said.rail-neck-width":
    "Der Ausschnitt reichte {value} nach jeder Seite; die Brust lässt Platz für {limit}. Halsansatz und Brust noch einmal messen, oder der Brust mehr Weite geben.",
  "said.rail-sleeve-width":
    "Der halbe Ärmel wäre {value} weit; die Raglannähte lassen Platz für {limit}. Dem Oberarm weniger Weite geben, oder der Brust mehr.",
  "said.rail-wrist":
    "Das halbe Ärmelende wäre {value} weit; der Ärmel darüber lässt Platz für {limit}. Handgelenk und Hand noch einmal messen, oder dem Oberarm mehr Weite geben.",
  "said.rail-sleeve-length":
    "Unter dem Unterarmpunkt wäre der Ärmel {value} lang; das Wenigste ist {limit}. Schulter und Arm noch einmal messen.",
  "said.rail-sleeve-neck":
    "Die Halskante des Ärmels sollte {value} messen und lässt sich nur mit {limit} zeichnen; sie wird nicht zum Ausschnitt passen. Halsansatz, Schulter und Oberarm noch einmal messen.",
  "said.rail-raise-hem":
    "Der Saum lässt sich nicht um {value} heben; die Seite lässt Platz für {limit}. Ihn weniger heben, oder den Grundschnitt länger zeichnen.",
  "said.rail-end-sleeve":
    "Der Ärmel kann nicht {value} über dem Handgelenk enden; sein Unterarm lässt Platz für {limit}. Ihn tiefer enden lassen.",
  "said.rail-widen":
    "Der Ausschnitt lässt sich nicht um {value} weiten; die kürzeste Raglannaht lässt Platz für {limit}. Ihn weniger weiten.",
  "said.rail-v-width":
    "Das V kann nicht {value} nach jeder Seite reichen; dieser Ausschnitt lässt Platz für {limit}. Es schmaler machen.",
  "said.rail-v-depth":
    "Das V kann auf diesem Vorderteil nicht {value} tief sein; es ist {limit} tief gezeichnet.",
  "cure.rail-v-depth.shallower": "Es weniger tief machen.",
  "cure.rail-v-depth.deeper": "Es tiefer oder schmaler machen, sonst kreuzte es den Ausschnitt.",
  "said.rail-v-allowance":
    "Das V hat keinen Platz für eine Zugabe von {value}; es nimmt {limit}. Die Zugabe kleiner machen, oder das V breiter.",
  "said.rail-v-cut":
    "Das V braucht eine Tiefe von {value}, und dieses Vorderteil hat Platz für {limit}; so gezeichnet lässt es sich nicht nähen. Das V kleiner machen, oder das Vorderteil länger.",
  "said.rail-v-cut.away":
    "Das ausgeschnittene V, {value} innerhalb seiner Kante genäht, trifft den Ausschnitt nicht mehr; die Grenze ist {limit}. Das V kleiner machen, oder den Einsatz passend zeichnen lassen.",
  "said.rail-share":
    "Zwischen zwei Marken des Halsbündchens wäre der Bruch {value} lang; er muss länger sein als {limit}, darum stehen die Marken gleichmäßig. Das Halsbündchen weniger hoch machen, oder den Ausschnitt weiter.",
  "said.rail-cuff":
    "Das Ärmelbündchen wäre rundum {value} lang; an diesem Körper ist es {limit} lang gezeichnet. Ihm mehr Weite geben.",
  "said.rail-hem-band":
    "Das Saumbündchen wäre rundum {value} lang; an diesem Körper ist es {limit} lang gezeichnet. Ihm mehr Weite geben.",
  "said.measure.less": "{name}: {value}. Das muss weniger sein als {other}, {limit}.",
  "said.measure.more": "{name}: {value}. Das muss mehr sein als {other}, {limit}.",
  "cure.measure.both": "Noch einmal messen, auch was dagegen steht.",
  "said.measure.unlikely": "{name}: {value}. {other} lassen {limit} erwarten.",
  "said.measure.unlikelyOne": "{name}: {value}. {other} allein lässt {limit} erwarten.",
  "said.measure.unlikelyAll": "{name}: {value}. Die anderen Maße lassen {limit} erwarten.",
  "cure.measure.again": "Noch einmal messen.",
  "cure.measure.swapped": "Sind Taille und Hüfte vertauscht? Wenn nicht, noch einmal messen.",
  "word.more": "mehr",
  "word.less": "weniger",
  "word.longer": "länger",
  "word.shorter": "kürzer",
  "word.by": "um {value}",
  "word.not": "nicht",
  "word.and": "und",
  "word.hip": "die Hüfte",
  "word.chest": "die Brust",
};
