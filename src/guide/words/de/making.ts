/** Der Arbeitsgang, Schritt für Schritt. */
export const MAKING = {
  "prepare.title": "Vor dem Nähen",
  "prepare.washed":
    "Stoff und Bündchen vor dem Zuschneiden waschen, so wie das Kleidungsstück gewaschen wird.",
  "prepare.grown":
    "Die Teile sind um das vergrößert, was die erste Wäsche nimmt: Den Stoff vor dem Zuschneiden nicht waschen. Das Bündchen waschen.",
  "prepare.turnings":
    "Die Nahtzugaben sind enthalten: Raglan {raglan}, Seite {side}, Unterarm {underarm}; Bündchen und die Kanten, an die sie kommen, {bands}.",
  "prepare.turningV": "Am V beträgt die Zugabe {v}.",
  "prepare.notches":
    "Passzeichen mit Kreide oder Faden anzeichnen. In Maschenware kann ein Einschnitt laufen; wer einschneidet, dann höchstens halb so tief wie die Zugabe.",
  "prepare.needle":
    "Jerseynadel (Kugelspitze) NM {needle}, für dünneren Stoff NM {least}; Polyestergarn (üblich, ohne Quelle).",
  "prepare.try":
    "Jeden Stich auf zwei Lagen Rest proben, längs und quer, und die Naht dehnen: Sie muss etwas mehr nachgeben als der Stoff.",
  "stay.title": "Spitze des V sichern",
  "stay.sew":
    "Am Vorderteil auf der Nahtlinie mit kleinen Stichen nähen, {stayed} nach jeder Seite der V-Spitze.",
  "stay.snip":
    "Von der Schnittecke gerade auf die Spitze zu einschneiden, {snip} lang: bis {short} vor die Stiche.",
  "stay.noSnip": "Hier hat das V keine Zugabe zum Einschneiden.",
  "v.title": "V-Einsatz einnähen",
  "v.lay":
    "Den Einsatz rechts auf rechts auf das Vorderteil legen, Schnittkanten an einer Seite des V bündig. Die Zugabe beträgt {allowance}.",
  "v.sew": "Von oben zur Spitze nähen. Die Naht ist an beiden Teilen {length} lang.",
  "v.stretched":
    "Von oben zur Spitze nähen. Der Einsatz, {insert}, ist für den Ausschnitt, {opening}, zu kurz: auf jeder Seite um {by} dehnen, das sind {stretch}.",
  "v.stop":
    "Genau am genähten Punkt des V anhalten, Nadel unten. Er liegt {short} vor der Schnittspitze des Einsatzes.",
  "v.other":
    "Den Einschnitt öffnen, die andere Seite bündig legen und von oben zum selben Punkt nähen.",
  "v.across":
    "Ein, höchstens {across} Stiche quer über die Spitze lassen sie flach liegen (üblich, ohne Quelle).",
  "raglanFront.title": "Ärmel an das Vorderteil",
  "raglanFront.pin":
    "Jeden Ärmel rechts auf rechts an das Vorderteil stecken: Halsecken, ein Passzeichen auf eines, Unterarmpunkte.",
  "raglanBack.title": "Ärmel an das Rückenteil",
  "raglanBack.pin":
    "Jeden Ärmel rechts auf rechts an das Rückenteil stecken: Halsecken, zwei Passzeichen auf zwei, Unterarmpunkte.",
  "raglan.sew": "Jede Naht ist {length} lang, ihre Zugabe {allowance}.",
  "raglan.notch": "Das erste Passzeichen liegt {notch} von der Halsecke.",
  "seam.ease":
    "{longer} ist {ease} länger, weil der Stoff in einer Richtung mehr einläuft als in der anderen. Gleichmäßig einhalten; die erste Wäsche nimmt es.",
  "seam.apart": "Die beiden Kanten weichen um {difference} ab: zwischen den Nadeln verteilen.",
  "longer.front": "Das Vorderteil",
  "longer.back": "Das Rückenteil",
  "longer.sleeve": "Der Ärmel",
  "longer.sleeveFront": "Die vordere Ärmelkante",
  "longer.sleeveBack": "Die hintere Ärmelkante",
  "side.title": "Unterarm und Seite in einem",
  "side.fold":
    "Das Teil an den Schultern rechts auf rechts falten. Ärmelenden, Passzeichen, Unterarmpunkte und Säume stecken.",
  "side.sew":
    "Vom Ärmelende bis zum Saum in einem nähen: {underarm} Unterarm und {side} Seite, zusammen {whole}.",
  "side.turning": "Die Zugabe beträgt durchgehend {allowance}.",
  "side.turnings": "Die Zugabe beträgt am Unterarm {underarm} und an der Seite {side}.",
  "side.cross":
    "Wo vier Kanten zusammentreffen, die Raglanzugaben nach entgegengesetzten Seiten legen.",
  "band.ring": "Die Enden mit {allowance} Zugabe verbinden. Der Ring misst {length}.",
  "band.fold": "In der Mitte falten, rechte Seite außen: genäht {depth} hoch.",
  "band.sew":
    "Zeichen auf Zeichen stecken und mit dem Bündchen oben nähen, Zugabe {allowance}. Das Bündchen dehnen, nie den Stoff.",
  "band.flat": "Bündchen und Öffnung sind gleich lang: ohne Dehnen annähen.",
  "band.stretch":
    "Insgesamt wird das Bündchen um {by} gedehnt, {stretch}, gleichmäßig zwischen benachbarten Zeichen: Die Tabelle sagt, wie viel.",
  "band.ease":
    "Das Bündchen ist {by} länger als die Öffnung: zwischen benachbarten Zeichen gleichmäßig einhalten.",
  "band.wash": "Die Öffnung misst zugeschnitten {cut}; die erste Wäsche bringt sie auf {finished}.",
  "neckband.title": "Halsbündchen",
  "neckband.marks":
    "Das Bündchen hat acht Zeichen in ungleichen Abständen, ab seiner Naht in der hinteren Mitte: {a}, {b}, {c}, vordere Mitte bei {d}, und ebenso zurück.",
  "neckband.unequal":
    "Von einem Zeichenpaar zum nächsten ist die Dehnung verschieden, von {least} bis {most}: Wo der Ausschnitt stärker gebogen ist, braucht der Bruch weniger Bündchen.",
  "neckband.halfWayFront":
    "Das Zeichen auf halbem Weg liegt auf dem Vorderteil, {from} von seiner Raglanecke.",
  "neckband.halfWayBack":
    "Das Zeichen auf halbem Weg liegt auf dem Rückenteil, {from} von seiner Raglanecke.",
  "neckband.halfWaySleeve":
    "Das Zeichen auf halbem Weg liegt auf dem Ärmel, {from} von seiner hinteren Raglanecke.",
  "neckband.topstitch":
    "Die Zugaben zum Körper legen und {aside} neben der Naht absteppen, dabei etwas dehnen.",
  "cuffs.title": "Ärmelbündchen",
  "cuffs.quarters":
    "Jedes Bündchen vierteln, alle {quarter}; das Ärmelende ebenso, alle {opening}.",
  "cuffs.seam": "Die Naht des Bündchens trifft die Unterarmnaht.",
  "hemBand.title": "Saumbündchen",
  "hemBand.marks":
    "Das Bündchen ab seiner Naht anzeichnen: Seite bei 0, vordere Mitte bei {front}, andere Seite bei {side}, hintere Mitte bei {back}.",
  "hemBand.seam": "Seine Naht trifft eine Seitennaht.",
  "hemBand.hangs":
    "So lang, wie es ist, hängt das Bündchen unter der Hüfte; {holds} oder kürzer hielte dort einen Überfall.",
  "hemBand.holds":
    "Das Bündchen ist kurz genug, um an der Hüfte einen Überfall zu halten: Dazu reichen {holds} oder weniger.",
  "press.title": "Bügeln",
  "press.seams":
    "Raglannähte zum Ärmel bügeln, Seiten- und Unterarmnähte nach hinten (üblich, ohne Quelle).",
  "press.rib":
    "Das Bündchen leicht bügeln, mit der Hitze für seine Faser und einem Tuch dazwischen, und flach auskühlen lassen.",
};
