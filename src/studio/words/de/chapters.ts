import type { chapters as en } from "../en/chapters.ts";
import { making } from "./making.ts";

export const chapters: Readonly<Record<keyof typeof en, string>> = {
  "chapter.measures": "Maße",
  "chapter.cloth": "Stoff",
  "chapter.block": "Grundschnitt",
  "chapter.alterations": "Änderungen",
  "chapter.ribs": "Bündchen",
  "chapter.turnings": "Zugaben",
  "chapter.paper": "Papier",
  "chapter.making": "Nähen",
  "lead.measures":
    "Ein Körper, über einer dünnen Schicht gemessen. Brust und Größe sind nötig; der Rest kann geschätzt werden.",
  "lead.cloth": "Was Stoff und Bündchen tun werden, von Hand gemessen.",
  "lead.block": "Das Raglan-T-Shirt, von dem die Änderungen ausgehen.",
  "lead.alterations":
    "Fünf Änderungen machen aus dem Grundschnitt ein Sweatshirt. Knöpfen Sie ab, was wegbleiben soll.",
  "lead.ribs": "Bündchen werden kurz geschnitten und an die Kante gedehnt.",
  "lead.turnings": "Was außerhalb der Nahtlinie zugegeben wird, auch Nahtzugabe genannt.",
  "lead.paper": "In wahrer Größe, auf dem Papier, das Sie haben.",
  "lead.making": "In dieser Folge. Knöpfen Sie an, was genäht ist.",
  "head.measures": "Ein Körper und seine Maße",
  "head.cloth": "Stoff und Bündchen",
  "head.block": "Der Raglan-Grundschnitt",
  "head.alterations": "Vom T-Shirt zum Sweatshirt",
  "head.ribs": "Hals, Ärmel und Saum",
  "head.turnings": "Von der Naht zum Schnitt",
  "head.paper": "Blätter und Quadrate",
  "head.making": "Von Teilen zum Sweatshirt",
  "cloth.body": "Der Stoff ist {cloth.preset}; er dehnt sich um {body.stretch} in der Breite.",
  "cloth.rib":
    "Das Bündchen ist {rib.preset}; es dehnt sich um {rib.stretch} und gibt davon {rib.recovery} zurück.",
  "cloth.shrink":
    "Gewaschen geht der Stoff um {body.shrinkLength} in der Länge und {body.shrinkWidth} in der Breite ein.",
  "cloth.turned": "Die Körperteile zuschneiden {body.turned}.",
  "cloth.preset": "Stoff",
  "cloth.preset.own": "Stoff, den ich gemessen habe",
  "cloth.preset.fleece": "Sweatshirtstoff",
  "cloth.preset.jersey": "Single Jersey",
  "cloth.preset.interlock": "Interlock",
  "cloth.preset.ribknit": "Rippenstrick",
  "cloth.preset.practice": "gängige Praxis, ohne Quelle",
  "cloth.preset.note":
    "Der Wert für {name} ist gängige Praxis, ohne Quelle. Ihre eigene Ablesung geht vor.",
  "cloth.ownNote":
    "Ihre eigene Ablesung. Der Ausschnitt darf sich für den Kopf nicht weiter öffnen als so.",
  "rib.preset": "Bündchenstoff",
  "rib.preset.own": "Bündchen, das ich gemessen habe",
  "rib.preset.twobytwo": "2 zu 2 mit Elastan",
  "rib.preset.onebyone": "1 zu 1 aus Baumwolle",
  "rib.preset.firm": "festes Bündchen mit Elastan",
  "cloth.shrinkNote":
    "Jedes Teil aus Stoff wächst entsprechend; die alte Linie zeigt, wie viel. Bündchen vor dem Zuschneiden waschen.",
  "cloth.turned.label": "Fadenlauf",
  "cloth.turned.along": "mit dem Fadenlauf der Länge nach",
  "cloth.turned.across": "gedreht, mit dem Fadenlauf quer",
  "test.title": "Die zwei Zahlen des Bündchens auf einem Tisch finden",
  "test.lead":
    "Ein Rest des Bündchens, gefaltet wie das Band und etwa {length} lang; zwei Klammern, eine Flasche Wasser, Maßband und Nadeln.",
  "test.one":
    "{mark} auf dem Bruch anzeichnen. Beide Enden klemmen, eines mit {load} hängen lassen, 10 Sekunden warten. Die Marken sind jetzt {reading} auseinander.",
  "test.two":
    "Die Marken auf {stretched} dehnen, 5 Sekunden halten, loslassen; dreimal. Nach einer Minute sind sie {minute} auseinander, nach einer Stunde {hour}.",
  "test.three":
    "Die Schnittkante an einen Bogen mit dem Radius {radius} stecken, Bruch nach innen. Der kürzeste Bogen, auf dem {mark} davon noch flach liegen, ist {arc}.",
  "test.print": "Probe und Bogen drucken",
  "test.use": "{stretch} und {recovery} verwenden",
  "test.waits": "Geben Sie die Ablesungen ein, um die zwei Zahlen zu sehen.",
  "test.reading": "Ablesung unter Last",
  "test.minute": "Ablesung nach einer Minute",
  "test.hour": "Ablesung nach einer Stunde",
  "test.arc": "Kürzester flacher Bogen",
  "test.outside":
    "Diese Ablesungen ergeben {stretch} und {recovery}; ein Bündchen hat 2 bis 200 % und 50 bis 100 %. Messen Sie noch einmal.",
  "test.step.one": "1 Belasten",
  "test.step.two": "2 Zurückkommen lassen",
  "test.step.three": "3 Rund legen",
  "block.draft":
    "Zeichnen nach {block.source}, mit {fit.chestEase} Weite um die Brust und {fit.upperArmEase} um den Arm.",
  "block.own": "Ausgehen von {block.source}.",
  "block.length": "Den Körper {fit.lengthBelowHip} unter der Hüfte enden lassen.",
  "block.source": "Woraus der Grundschnitt entsteht",
  "block.source.measures": "den Maßen",
  "block.source.own": "dem gebrachten Grundschnitt",
  "block.draftNote":
    "Brust {chest}, also ist jede Hälfte des fertigen Körpers unter dem Arm {half} breit. Gängige Praxis, ohne Quelle: 100 bis 180.",
  "block.ownNote": "„{name}“ wird genommen, wie es ist. Was nicht passt, steht auf dem Band.",
  "block.other":
    "„{name}“ wurde für {body} gebracht. {who} wird nach den Maßen gezeichnet; der Grundschnitt wird nicht gradiert.",
  "block.lengthNote": "Der Grundschnitt ist vom Nacken den Rücken hinab {length} lang.",
  "block.neckNote": "Ausschnitt rundum {length}; Raglannähte vorn {front}, hinten {back}.",
  "block.bring": "Grundschnitt bringen",
  "block.bringAgain": "Einen anderen Grundschnitt bringen",
  "block.bringNote":
    "Aus einer Zeichnung, mit dem Maßband oder als Datei. Nichts wird weggeschickt.",
  "block.none":
    "Noch kein Grundschnitt. Geben Sie Brust und Größe an, oder bringen Sie einen Grundschnitt.",
  "block.needsBody":
    "Ein Grundschnitt braucht für seine Bündchen einen Körper: geben Sie Brust und Größe an.",
  "block.read": "Die Zeichnung als Tabelle lesen",
  "alter.neckline":
    "Den Ausschnitt vorn um {neckline.lowerFront} und hinten um {neckline.lowerBack} senken und nach jeder Seite um {neckline.widen} weiten.",
  "alter.moveSideSeams":
    "Jede Seitennaht um {moveSideSeams.by} hinausrücken und vom Arm zum Saum senkrecht richten.",
  "alter.raiseHem": "Den Saum um {raiseHem.by} heben, um Platz für das Saumbündchen zu lassen.",
  "alter.endSleeve":
    "Den Ärmel {endSleeve.aboveWrist} über dem Handgelenk enden lassen, um Platz für sein Bündchen zu lassen.",
  "alter.vInsert":
    "In die vordere Mitte einen V-Einsatz setzen, {vInsert.halfWidth} nach jeder Seite und {vInsert.depth} tief, {vInsert.method}.",
  "alter.name.neckline": "Ausschnitt",
  "alter.name.moveSideSeams": "Seitennähte",
  "alter.name.raiseHem": "Saum",
  "alter.name.endSleeve": "Ärmelende",
  "alter.name.vInsert": "V-Einsatz",
  "alter.note.neckline": "Ausschnitt rundum {value}.",
  "alter.note.moveSideSeams":
    "Erlaubt {least} bis {most}. Der Ärmel wird unter jedem Arm ebenso weiter; die Seitennaht ist {value} lang.",
  "alter.note.raiseHem": "Erlaubt {least} bis {most}. Nacken bis Saum ist jetzt {value}.",
  "alter.note.endSleeve": "Erlaubt {least} bis {most}. Die Unterarmnaht ist jetzt {value}.",
  "alter.note.vInsert": "Jede Seite des V ist {value} lang, ebenso die des Einsatzes.",
  "alter.note.vCutAway": "Jede Seite des V ist {value} lang, die des Einsatzes {short} kürzer.",
  "alter.off.neckline": "Abgeknöpft. Der Ausschnitt bleibt, wie der Grundschnitt ihn zeichnet.",
  "alter.off.moveSideSeams": "Abgeknöpft. Die Seiten bleiben, wie der Grundschnitt sie zeichnet.",
  "alter.off.raiseHem": "Abgeknöpft. Der Saum bleibt an der Hüfte.",
  "alter.off.endSleeve": "Abgeknöpft. Der Ärmel endet am Handgelenk.",
  "alter.off.vInsert": "Abgeknöpft. Der Ausschnitt ist rund.",
  "alter.method": "Wie der Einsatz entsteht",
  "alter.method.true": "passend gezeichnet",
  "alter.method.cut-away": "aus dem Ausgeschnittenen",
  "alter.order":
    "Sie werden immer in derselben Folge angewandt: Ausschnitt, Seitennähte, Saum, Ärmel, V.",
  "alter.both": "Vorher und nachher: alte Linien",
  "ribs.rib": "Das Bündchen dehnt sich um {rib.stretch} und gibt davon {rib.recovery} zurück.",
  "ribs.ribNote": "Messen: Kapitel Stoff, mit der Probe auf einem Tisch.",
  "ribs.cuff":
    "Jedes Ärmelbündchen so lang wie das Handgelenk plus {cuff.ease} und zwei Zugaben, {cuff.cutHeight} hoch, schneiden und falten.",
  "ribs.cuffNote":
    "Handgelenk {wrist}, also wird es {cut} mal {height} geschnitten und ist fertig {depth} hoch. Es drückt in Ruhe mit {pressure}.",
  "ribs.hem":
    "Das Saumbündchen so lang wie die Hüfte plus {hemBand.ease} und zwei Zugaben, {hemBand.cutHeight} hoch, schneiden und falten.",
  "ribs.hemNote":
    "Hüfte {hip}, also wird es {cut} mal {height} geschnitten und ist fertig {depth} hoch. Es drückt in Ruhe mit {pressure}.",
  "ribs.hangs":
    "Mit {length} hängt es unter der Hüfte. Mit {holds} oder weniger hält es dort einen Bausch.",
  "ribs.holds": "Mit {length} hält es an der Hüfte einen Bausch.",
  "ribs.blouse": "Halten lassen: Weite {ease}",
  "ribs.neck":
    "Das Halsbündchen fertig {neckband.finishedDepth} hoch, seine Länge {neckband.mode}.",
  "ribs.neckOwn":
    "Das Halsbündchen fertig {neckband.finishedDepth} hoch, seine Länge {neckband.mode}, {neckband.ratio} des Ausschnitts.",
  "ribs.mode": "Länge des Halsbündchens",
  "ribs.mode.found": "aus dem Bündchen gefunden",
  "ribs.mode.own": "nach eigenem Verhältnis",
  "ribs.neckNote":
    "Ausschnitt {opening}, Band {length}: {ratio} davon, geschnitten {cut} mal {height}. Abstand zum Hals {gap}. Es drückt in Ruhe mit {pressure}.",
  "ribs.noGap": "keiner",
  "ribs.why.aimed":
    "So lang, dass sein Bruch 2 % kürzer liegt als der Ring am Körper, {ring}, nachdem der Kopf hindurch ist.",
  "ribs.why.head":
    "So lang, weil der Kopf, {head}, mit einem Zehntel der Dehnung in Reserve hindurch muss.",
  "ribs.why.sews": "So lang, weil es mit höchstens der halben Dehnung angenäht wird.",
  "ribs.why.flat":
    "Gehalten bei der größten Länge, bei der sein Bruch noch flach auf dem Ring liegt, {ring}.",
  "ribs.why.opening": "Gehalten bei der Länge des Ausschnitts selbst.",
  "ribs.why.own": "Ihr eigenes Verhältnis. Gefunden läge es näher am Ring am Körper, {ring}.",
  "ribs.share": "Die acht Marken des Halsbündchens {neckband.share} setzen.",
  "ribs.share.label": "Marken am Halsbündchen",
  "ribs.share.ring": "nach dem Ring unter seinem Bruch",
  "ribs.share.even": "gleichmäßig",
  "ribs.marks": "Von der Naht des Bandes hinten: {list}. Von Marke zu Marke gleichmäßig nähen.",
  "ribs.ladder": "Wie weit es sich dehnen muss: {band}",
  "ribs.rest": "in Ruhe",
  "ribs.sewn": "an der Naht",
  "ribs.safe": "sichere Dehnung",
  "ribs.over.hand": "über die Hand",
  "ribs.over.head": "über den Kopf",
  "ribs.over.hip": "über Hüfte und Brust",
  "ribs.scrap": "Erst an einem Rest proben. Nadeln heraus, bevor die Maschine kommt.",
  "turn.seams":
    "An den Raglannähten {allowances.raglan}, an den Seitennähten {allowances.side} und an den Unterarmnähten {allowances.underarm} zugeben.",
  "turn.seamsNote":
    "Schnittlinien sind breit gezeichnet, Nahtlinien schmal darin. Ecken sind so gerichtet, dass Zugaben gebügelt flach liegen.",
  "turn.bands": "Wo ein Bündchen angenäht wird, und an den Bündchen, {allowances.bands} zugeben.",
  "turn.bandsNote":
    "Halskanten, Ärmelenden und Säume. Ein Ärmel- oder Saumbündchen muss mindestens {least} hoch sein.",
  "turn.v": "Um das V und seinen Einsatz {vInsert.allowance} zugeben.",
  "turn.vNote": "Die Zugabe des Vorderteils bis 1 mm vor die Spitze einschneiden.",
  "turn.notches":
    "Knipse stehen, wo Partner sich treffen: einer am vorderen Raglan, zwei am hinteren, je einer an Seite und Unterarm. Das Halsbündchen hat acht Marken, Ärmel- und Saumbündchen vier.",
  ...making,
};
