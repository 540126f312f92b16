/** Stiche und Vorsicht. */
export const CAUTIONS = {
  "stitch.overedge":
    "Overlock: Überwendlichstich mit vier Fäden, ISO 4915 Typ {type}, {length} von Stich zu Stich (üblich, ohne Quelle).",
  "stitch.zigzag":
    "Haushaltsmaschine: Zickzack, ISO 4915 Typ {type}, {width} breit und {length} lang (üblich, ohne Quelle).",
  "stitch.lockstitch":
    "Steppstich, ISO 4915 Typ {type}, {length} lang. Er reißt, wo Maschenware gedehnt wird, darum nur hier.",
  "stitch.covering": "Absteppen: Überdeckstich, ISO 4915 Typ {type}, oder der Zickzack wie oben.",
  "caution.cutter":
    "Den Rollschneider geschlossen halten, außer beim Schneiden. Vom Körper weg schneiden, Finger weg von der Linealkante.",
  "caution.blade":
    "Eine stumpfe Klinge wechseln: Wer drücken muss, rutscht ab. Alte Klingen und Nadeln in eine feste, geschlossene Dose.",
  "caution.machine":
    "Die Maschine ausschalten und den Stecker ziehen, bevor Nadel oder Fuß gewechselt werden.",
  "caution.needle": "Die Finger von der Nadel fernhalten.",
  "caution.shears": "Die Schere zum Ablegen schließen; nur mit den Spitzen einschneiden.",
  "caution.pins":
    "Jede Stecknadel herausziehen, bevor Nadel oder Overlockmesser sie erreichen, und nachzählen.",
  "caution.iron":
    "Ein Bügeleisen bleibt nach dem Ausschalten heiß. Eisen und Kabel außer Reichweite von Kindern, Finger aus dem Dampf.",
  "caution.ironDown":
    "Ein Bügeleisen nie auf der Sohle stehen lassen: Es kann einen Brand auslösen.",
  "caution.cord":
    "Keine Kordel, kein Zugband und keine Schnur an Kopf oder Hals von Kinderkleidung; bis sieben Jahre oder 134 cm Körpergröße überhaupt keine.",
  "caution.smallParts":
    "Für Kinder unter drei: kein Knopf, keine Perle, kein Besatz, der sich lösen kann. An kleinen Teilen kann man ersticken.",
  "caution.sleepwear": "Nicht für Kinderschlafanzüge, für die eigene Regeln gelten.",
  "caution.local": "Wo örtliche Regeln mehr verlangen, gelten sie.",
};
