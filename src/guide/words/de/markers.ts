/** Was auf den gedruckten Marken steht. */
export const MARKERS = {
  "markers.title": "Marke",
  "markers.of": "Eine von {of} Marken für das Bild eines Papierschnitts",
  "markers.print":
    "In tatsächlicher Größe drucken, nicht an die Seite anpassen. Das Quadrat unten muss in beiden Richtungen {side} messen.",
  "markers.lay":
    "Je eine Marke außen an jede Ecke des Teils legen, flach, die ganze weiße Seite frei. Keine Marke liegt auf dem Teil.",
  "markers.hold":
    "Jede Seite mit zwei Streifen Klebeband halten, damit keine verrutscht, bis alles gemessen ist.",
  "markers.measure":
    "Von weißem Punkt zu weißem Punkt messen, jede Marke zu jeder anderen: sechs Abstände bei vier Marken, auf den Millimeter.",
  "markers.take":
    "Das Bild gerade von oben aufnehmen, so weit entfernt, dass alle Marken ganz zu sehen sind, in gleichmäßigem Licht ohne Blitz.",
  "markers.caution":
    "Zum Aufnehmen auf dem Boden oder auf einem festen Tritt stehen, nie auf einem Stuhl. Die Seiten danach vom Boden nehmen: Auf Papier rutscht man aus.",
  "markers.square": "{side}, bis zur Mitte der Linie",
};
