import type { Rule } from "../germanReader.ts";

/** Things and numbers in what the core says of a picture. Whole texts. */
export const PHOTO_PHRASES: readonly Rule[] = [
  ["(-?\\d+)\\.(\\d+)(.*)", "$1,$2$3"],
  ["black", "schwarz"],
  ["white", "weiß"],
  ["one grey", "grau in grau"],
  ["empty", "leer"],
  ["a HEIC picture", "ein HEIC-Bild"],
  ["no picture that can be read", "kein Bild, das sich lesen lässt"],
  ["line", "Linie"],
  ["edge", "Kante"],
  ["marks?", "Marken"],
  ["front", "Vorderteil"],
  ["back", "Rückenteil"],
  ["sleeve", "Ärmel"],
];

/** What the core says of pictures, marks and traced lines. */
export const PHOTO_SENTENCES: readonly Rule[] = [
  // the file
  [
    "The picture file ends early, after (\\d+) bytes: its last part is missing\\.",
    "Die Bilddatei endet zu früh, nach $1 Byte: Ihr letzter Teil fehlt.",
  ],
  [
    "Copy the picture again from the camera, or save it anew\\.",
    "Das Bild noch einmal von der Kamera kopieren oder neu speichern.",
  ],
  [
    "The file is (.+?); a JPEG, PNG or WebP picture is needed\\.",
    "Die Datei ist $1; gebraucht wird ein Bild als JPEG, PNG oder WebP.",
  ],
  [
    "Save the picture as a JPEG, or set the camera to JPEG\\.",
    "Das Bild als JPEG speichern oder die Kamera auf JPEG stellen.",
  ],
  [
    "The picture has (.+?) megapixels; the limit is (.+?)\\.",
    "Das Bild hat $1 Megapixel; die Grenze ist $2.",
  ],
  [
    "Save it at half its width and height; 12 megapixels are enough\\.",
    "Mit halber Breite und Höhe speichern; 12 Megapixel genügen.",
  ],
  [
    "The picture is (\\d+ × \\d+) pixels; its shorter side must have (\\d+) or more\\.",
    "Das Bild hat $1 Pixel; seine kürzere Seite muss $2 oder mehr haben.",
  ],
  [
    "Take the original picture, not its preview\\.",
    "Das ursprüngliche Bild nehmen, nicht seine Vorschau.",
  ],
  [
    "The browser cannot decode this picture; its file is damaged or of a kind it does not know\\.",
    "Der Browser kann dieses Bild nicht öffnen; die Datei ist beschädigt oder von einer Art, die er nicht kennt.",
  ],
  [
    "Open it in another program and save it as a JPEG\\.",
    "In einem anderen Programm öffnen und als JPEG speichern.",
  ],
  [
    "The picture’s file is no longer on this device\\.",
    "Die Datei des Bildes ist nicht mehr auf diesem Gerät.",
  ],
  [
    "Choose the picture again; what was marked in it is kept\\.",
    "Das Bild noch einmal wählen; was darin gezeigt wurde, bleibt.",
  ],
  [
    "The picture could not be worked on: there is too little memory for it\\.",
    "Das Bild ließ sich nicht bearbeiten: Dafür ist zu wenig Speicher da.",
  ],
  [
    "Close other pages, or save the picture at half its width and height, and try again\\.",
    "Andere Seiten schließen oder das Bild mit halber Breite und Höhe speichern und noch einmal versuchen.",
  ],
  ["The file is not a JPEG picture\\.", "Die Datei ist kein JPEG-Bild."],
  ["Choose a JPEG or PNG picture\\.", "Ein JPEG- oder PNG-Bild wählen."],
  [
    "The work on the picture was stopped; nothing was changed\\.",
    "Die Arbeit am Bild wurde angehalten; nichts wurde geändert.",
  ],
  ["Begin it again when you like\\.", "Jederzeit noch einmal beginnen."],
  // what it shows
  [
    "The picture is all (.+?): its greys span (\\d+) of 255\\.",
    "Das Bild ist ganz $1: Seine Grautöne umfassen $2 von 255.",
  ],
  [
    "Take it again in more light, with the lens free\\.",
    "Noch einmal aufnehmen, mit mehr Licht und freiem Objektiv.",
  ],
  [
    "The picture is mirrored: the dots of mark (.+?) run the wrong way round\\.",
    "Das Bild ist gespiegelt: Die Punkte der Marke $1 laufen verkehrt herum.",
  ],
  [
    "Turn mirroring off in the camera, or flip the picture from left to right\\.",
    "Das Spiegeln in der Kamera ausschalten oder das Bild von links nach rechts wenden.",
  ],
  ["No printed mark was found in the picture\\.", "Im Bild wurde keine gedruckte Marke gefunden."],
  [
    "Print the marker sheets, lay one at each corner flat and in the light, or click four points of known distance\\.",
    "Die Marken drucken, je eine flach und im Licht an jede Ecke legen, oder vier Stellen mit bekanntem Abstand antippen.",
  ],
  [
    "The picture has (\\d+) marks?; four or more are needed round the piece\\.",
    "Das Bild hat $1 Marken; vier oder mehr werden um das Teil gebraucht.",
  ],
  [
    "Lay a marker sheet at each corner, wholly in the picture, and take it again; or click four points of known distance\\.",
    "Je eine Marke an jede Ecke legen, ganz im Bild, und es noch einmal aufnehmen; oder vier Stellen mit bekanntem Abstand antippen.",
  ],
  [
    "Mark (.+?) stands in the picture twice; each mark must be there once\\.",
    "Marke $1 steht zweimal im Bild; jede Marke darf nur einmal da sein.",
  ],
  [
    "Cover or take away one of the two, or name them apart\\.",
    "Eine der beiden zudecken oder wegnehmen, oder sie verschieden nennen.",
  ],
  [
    "Mark (.+?) lies at the edge of the picture or outside it \\((\\d+ × \\d+) pixels\\)\\.",
    "Marke $1 liegt am Rand des Bildes oder außerhalb ($2 Pixel).",
  ],
  [
    "Take the picture again with every mark wholly inside it\\.",
    "Das Bild noch einmal aufnehmen, mit jeder Marke ganz darin.",
  ],
  [
    "The marks stand too close together: they enclose (.+?) of the piece's area in the picture; (.+?) is the least\\.",
    "Die Marken stehen zu nah beieinander: Sie umschließen $1 der Fläche des Teils im Bild; $2 ist das Mindeste.",
  ],
  [
    "Lay the marks round the piece, one beyond each of its corners\\.",
    "Die Marken um das Teil legen, je eine außen an jede Ecke.",
  ],
  [
    "The marks (.+?) run anticlockwise in the picture; on the table they are named clockwise\\.",
    "Die Marken $1 laufen im Bild gegen den Uhrzeigersinn; auf dem Tisch heißen sie im Uhrzeigersinn.",
  ],
  [
    "The marks (.+?) do not lie in the picture as their distances say: no camera sees them so\\.",
    "Die Marken $1 liegen im Bild nicht so, wie ihre Abstände sagen: So sieht sie keine Kamera.",
  ],
  [
    "Check which mark is which, and that the picture is not mirrored \\(a screenshot of a selfie camera is\\)\\.",
    "Prüfen, welche Marke welche ist, und ob das Bild gespiegelt ist (ein Bildschirmfoto der Frontkamera ist es).",
  ],
  // distances and scale
  [
    "The distance (.+?) \\((.+?)\\) is not one between two marks of the picture\\.",
    "Der Abstand $1 ($2) ist keiner zwischen zwei Marken des Bildes.",
  ],
  [
    "Give a length above 0 between two marks that the picture shows\\.",
    "Eine Länge über 0 zwischen zwei Marken angeben, die das Bild zeigt.",
  ],
  [
    "The (\\d+) distances do not fix the places of (\\d+) marks\\.",
    "Die $1 Abstände legen die Orte von $2 Marken nicht fest.",
  ],
  [
    "Measure every distance between the marks: (\\d+) for (\\d+) marks\\.",
    "Jeden Abstand zwischen den Marken messen: $1 bei $2 Marken.",
  ],
  [
    "The distances contradict each other, (.+?) most likely: it is given as (.+?) and the others make it (.+?); what is left over is (.+?), and the limit is (.+?)\\.",
    "Die Abstände widersprechen einander, am ehesten $1: Gegeben ist $2, die anderen machen daraus $3; übrig bleiben $4, und die Grenze ist $5.",
  ],
  [
    "Measure (.+?) again, from the middle of one mark to the middle of the other\\.",
    "$1 noch einmal messen, von der Mitte der einen Marke zur Mitte der anderen.",
  ],
  [
    "No known length stands in the picture, so it has no scale\\.",
    "Im Bild steht keine bekannte Länge, also hat es keinen Maßstab.",
  ],
  [
    "Mark both ends of a ruler or of a card's side, and give its length\\.",
    "Beide Enden eines Lineals oder einer Kartenseite zeigen und die Länge angeben.",
  ],
  [
    "The known lengths give scales (.+?) apart; over (.+?) the picture is slanted, (.+?) on 600 mm\\.",
    "Die bekannten Längen geben Maßstäbe, die um $1 auseinander liegen; über $2 ist das Bild geneigt, $3 auf 600 mm.",
  ],
  [
    "Lay four marker sheets round the piece instead: they take the slant away\\.",
    "Stattdessen vier Marken um das Teil legen: Sie nehmen die Neigung weg.",
  ],
  // the lens
  [
    "The lens's bending cannot be told from (\\d+) marks and no straight edge\\.",
    "Die Verzeichnung des Objektivs lässt sich aus $1 Marken ohne gerade Kante nicht bestimmen.",
  ],
  [
    "Mark an edge that is straight on the table, lay out six marks, or leave the lens as it is\\.",
    "Eine Kante zeigen, die auf dem Tisch gerade ist, sechs Marken legen, oder das Objektiv lassen, wie es ist.",
  ],
  [
    "The edges taken as straight still bend by (.+?) pixels; the limit is (\\d+)\\.",
    "Die als gerade gezeigten Kanten biegen sich noch um $1 Pixel; die Grenze ist $2.",
  ],
  [
    "Choose edges that are straight on the table: a ruler, the edge of a sheet, a fold\\.",
    "Kanten wählen, die auf dem Tisch gerade sind: ein Lineal, der Rand eines Bogens, ein Falz.",
  ],
  [
    "Between the two clicks an edge is seen at (\\d+) of (\\d+) places; half of them are needed, (\\d+) at least\\.",
    "Zwischen den beiden Stellen zeigt sich an $1 von $2 Orten eine Kante; die Hälfte wird gebraucht, mindestens $3.",
  ],
  [
    "Click both ends of a clear straight edge, such as a ruler's or a sheet's, within 14 pixels of it\\.",
    "Beide Enden einer klaren geraden Kante antippen, eines Lineals oder Bogens, höchstens 14 Pixel daneben.",
  ],
  // the error, and several pictures
  [
    "A line traced in this picture may be out by (.+?); the limit is (.+?)\\.",
    "Eine Linie aus diesem Bild kann um $1 daneben liegen; die Grenze ist $2.",
  ],
  [
    "Lay the marks further apart, round the piece, and measure their distances again\\.",
    "Die Marken weiter auseinander legen, um das Teil, und ihre Abstände noch einmal messen.",
  ],
  [
    "The two pictures share (\\d+) marks?; two or more are needed to join them\\.",
    "Die beiden Bilder haben $1 Marken gemeinsam; zwei oder mehr werden gebraucht, um sie zu verbinden.",
  ],
  [
    "Take a picture that shows two marks of the first, left where they lay\\.",
    "Ein Bild aufnehmen, das zwei Marken des ersten zeigt, liegen gelassen, wo sie lagen.",
  ],
  [
    "The shared marks (.+?) lie (.+?) apart when the pictures are joined; the limit is (.+?)\\.",
    "Die gemeinsamen Marken $1 liegen $2 auseinander, wenn die Bilder verbunden werden; die Grenze ist $3.",
  ],
  [
    "Leave the shared marks where they lie between the pictures, or measure their distances again\\.",
    "Die gemeinsamen Marken zwischen den Bildern liegen lassen oder ihre Abstände noch einmal messen.",
  ],
  // the line
  [
    "No closed outline was found round the place that you clicked: the line has gaps wider than 6 mm, or runs off the picture\\.",
    "Um die gewählte Stelle wurde kein geschlossener Umriss gefunden: Die Linie hat Lücken über 6 mm oder läuft aus dem Bild.",
  ],
  [
    "Click inside the piece, take the picture with all of it inside the marks, or trace it from corner to corner\\.",
    "In das Teil tippen, das Bild mit dem ganzen Teil zwischen den Marken aufnehmen, oder von Ecke zu Ecke nachzeichnen.",
  ],
  [
    "The line was seen along (.+?) of the outline; (.+?) is the least\\.",
    "Die Linie war an $1 des Umrisses zu sehen; $2 ist das Mindeste.",
  ],
  [
    "Draw over the line with a darker pen, or trace it from corner to corner\\.",
    "Die Linie mit einem dunkleren Stift nachziehen oder von Ecke zu Ecke nachzeichnen.",
  ],
  [
    "The two clicks lie outside the picture, so there is no line to follow\\.",
    "Die beiden Stellen liegen außerhalb des Bildes, also ist da keine Linie.",
  ],
  ["Click on the line within the picture\\.", "Auf die Linie im Bild tippen."],
  [
    "Between the two clicks an? (.+?) is seen at (\\d+) places only, (.+?) apart\\.",
    "Zwischen den beiden Stellen zeigt sich nur an $2 Orten eine $1, auf $3.",
  ],
  [
    "Click closer together, or draw this part by hand\\.",
    "Näher beieinander tippen oder dieses Stück von Hand zeichnen.",
  ],
  [
    "The outline of the (.+?) is open: run (\\d+) ends (.+?) from where the next begins; the limit is (.+?)\\.",
    "Der Umriss ist offen ($1): Stück $2 endet $3 vor dem Beginn des nächsten; die Grenze ist $4.",
  ],
  ["Drag the two ends together\\.", "Die beiden Enden zusammenziehen."],
  [
    "The outline of the (.+?) crosses itself near (.+?)\\.",
    "Der Umriss kreuzt sich selbst ($1) bei $2.",
  ],
  ["Drag its points so that it does not\\.", "Die Punkte so ziehen, dass er es nicht tut."],
];
