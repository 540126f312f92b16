/** Das Bündchen auf dem Tisch: drei Ablesungen. */
export const TABLE_TEST = {
  "test.title": "Das Bündchen auf dem Tisch prüfen",
  "test.need":
    "Nötig sind ein Rest des Bündchenstoffs, quer {long} lang, auf Bündchenhöhe {height} geschnitten und gefaltet; zwei Klemmen so breit wie der Rest, eine Literflasche, Klebeband, Nadeln, ein weiches Brett und der gedruckte Bogen.",
  "test.stretch.title": "1 Dehnung",
  "test.stretch.mark":
    "In der Mitte des gefalteten Rests {marked} anzeichnen, beide Enden über die ganze Breite klemmen.",
  "test.stretch.load":
    "An ein Ende {grams} g hängen: {perMm} g je Millimeter der gefalteten Breite, {width}.",
  "test.stretch.bottle":
    "Eine Flasche hält das mit {millilitres} ml Wasser, weniger ihr eigenes Gewicht und das der Klemme.",
  "test.stretch.read": "Nach 10 Sekunden ablesen, wie weit die Zeichen auseinander liegen.",
  "test.recovery.title": "2 Rücksprung",
  "test.recovery.pull":
    "Die Zeichen auf {stretched} dehnen, wie es der Kopf tut. 5 Sekunden halten, loslassen; dreimal.",
  "test.recovery.read":
    "Nach 1 Minute und nach 1 Stunde ablesen. Für die Bündchen zählt die Stunde.",
  "test.slack.title": "3 Weite, die der Bruch verträgt",
  "test.slack.pin":
    "Die offenen Kanten am gedruckten Bogen feststecken, die Zeichen bei 0 und an einem Strich, dazwischen gleichmäßig, und nach innen falten.",
  "test.slack.down":
    "Bei {most} beginnen und um {by} zurückgehen. Den kürzesten Strich ablesen, bei dem der Bruch nach leichtem Klopfen noch flach liegt.",
  "test.slack.steam": "Wird das Bündchen gedämpft, nach dem Dämpfen noch einmal ablesen.",
  "test.arc": "Radius {radius}: die Öffnung, {opening}, flach ausgelegt",
  "test.arcStraight": "Diese Öffnung biegt sich nicht nach innen: an einer Geraden feststecken",
  "test.arc.fold": "Bruch, {depth} weiter innen",
  "test.caution.bottle": "Die Füße von der hängenden Flasche fernhalten.",
  "test.caution.pins": "Nadeln beim Ablegen sichern.",
  "test.found.stretch": "Dehnung {stretch}.",
  "test.found.recovery": "Rücksprung {recovery} nach einer Stunde.",
  "test.found.minute":
    "Nach einer Minute sind erst {recovery} zurück: Das Bündchen wirkt kurz nach dem Anziehen lose.",
  "test.found.slack":
    "Der Bruch verträgt {slack} Weite, bevor er sich hebt; der Schnitt rechnet mit {limit}.",
  "test.found.slackLess":
    "Das ist weniger, als der Schnitt annimmt: das Halsbündchen mit {target} nähen und nicht länger.",
  "test.found.target": "Das Halsbündchen hat diese Länge bereits.",
  "test.found.noTarget":
    "So kurz kann das Halsbündchen für diesen Kopf und diese Öffnung nicht sein; dehnbareres Bündchen oder weiterer Ausschnitt.",
  "test.change.neckband": "Halsbündchen: aus {before} wird {after}, Zuschnitt {cut}.",
  "test.change.same": "Halsbündchen: bleibt {after}.",
  "test.change.fixed":
    "Halsbündchen: bleibt {after}, weil sein Verhältnis von Hand festgelegt ist.",
  "test.change.hem":
    "Saumbündchen: {before} oder kürzer hielt einen Überfall; jetzt {after} oder kürzer.",
  "test.change.pass":
    "Zum Durchlassen muss sich das Halsbündchen um {neckband} von {stretch} dehnen, das Ärmelbündchen um {cuff}, das Saumbündchen um {hemBand}.",
  "test.change.tight": "Das ist mehr als neun Zehntel dessen, was es kann: siehe Prüfungen.",
};
