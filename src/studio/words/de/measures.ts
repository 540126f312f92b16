import type { measures as en } from "../en/measures.ts";

export const measures: Readonly<Record<keyof typeof en, string>> = {
  "measure.height": "Körpergröße, ohne Schuhe: {measures.height}.",
  "measure.chest": "Um die Brust, an der stärksten Stelle: {measures.chest}.",
  "measure.waist": "Um die Taille, am Nabel: {measures.waist}.",
  "measure.hip": "Um die Hüfte, an der stärksten Stelle: {measures.hip}.",
  "measure.neckBase": "Um den Halsansatz: {measures.neckBase}.",
  "measure.shoulder": "Halsseite bis Schulterende: {measures.shoulder}.",
  "measure.acrossBack": "Quer über den Rücken, Arm zu Arm: {measures.acrossBack}.",
  "measure.napeToWaist": "Vom Nackenwirbel zur Taille: {measures.napeToWaist}.",
  "measure.napeToHip": "Vom Nackenwirbel zur Hüfte: {measures.napeToHip}.",
  "measure.scyeDepth": "Vom Nackenwirbel zur Achselhöhe: {measures.scyeDepth}.",
  "measure.upperArm": "Um den Oberarm, angespannt: {measures.upperArm}.",
  "measure.wrist": "Um das Handgelenk, über den Knochen: {measures.wrist}.",
  "measure.hand": "Um die Hand, über die Knöchel: {measures.hand}.",
  "measure.head": "Um den Kopf, über den Brauen: {measures.head}.",
  "measure.armLength": "Schulterende, über den Ellbogen, zum Handgelenk: {measures.armLength}.",
  "measure.spineToWrist": "Nacken, über die Schulter, zum Handgelenk: {measures.spineToWrist}.",
  "measure.elbow": "Um den gebeugten Ellbogen: {measures.elbow}.",
  "measure.waistToHip": "Taille bis Hüfte, an der Seite: {measures.waistToHip}.",
  "measure.torsoGirth": "Um den Rumpf, Schulter, Schritt und zurück: {measures.torsoGirth}.",
  "name.height": "Körpergröße",
  "name.chest": "Brust",
  "name.waist": "Taille",
  "name.hip": "Hüfte",
  "name.neckBase": "Halsansatz",
  "name.shoulder": "Schulter",
  "name.acrossBack": "Rückenbreite",
  "name.napeToWaist": "Nacken bis Taille",
  "name.napeToHip": "Nacken bis Hüfte",
  "name.scyeDepth": "Nacken bis Achselhöhe",
  "name.upperArm": "Oberarm",
  "name.wrist": "Handgelenk",
  "name.hand": "Hand",
  "name.head": "Kopf",
  "name.armLength": "Arm",
  "name.spineToWrist": "Nacken bis Handgelenk",
  "name.elbow": "Ellbogen",
  "name.waistToHip": "Taille bis Hüfte",
  "name.torsoGirth": "Rumpf",
  "how.height":
    "Fersen und Rücken an der Wand, Blick geradeaus. Ein Buch flach auf den Kopf legen, anzeichnen, vom Boden messen. Es zeichnet keine Naht; es dient den Schätzungen.",
  "how.chest":
    "Band waagerecht und anliegend, Arme hängend, nach dem Ausatmen. Es zeichnet jede Weite des Körpers.",
  "how.waist": "In Nabelhöhe, Bauch entspannt. Keine Hosengröße. Es dient den Schätzungen.",
  "how.hip":
    "Um die stärkste Stelle des Gesäßes, Füße zusammen, Taschen leer. Es zeichnet Saum und Saumbündchen.",
  "how.neckBase":
    "Über den Nackenwirbel, die Punkte, wo Hals und Schulter sich treffen, und die Grube der Schlüsselbeine; eine feine Kette liegt dort von selbst. Es zeichnet Ausschnitt und Halsbündchen.",
  "how.shoulder":
    "Vom seitlichen Halspunkt zum knöchernen Schulterende, auf dem Grat, eine Seite. Es zeichnet die Länge des Ärmels.",
  "how.acrossBack":
    "Arme hängend, von Falte zu Falte, wo der Arm an den Rücken stößt. Es dient den Schätzungen.",
  "how.napeToWaist":
    "Vom Nackenwirbel die Rückenmitte hinab zum Taillenband. Es dient den Schätzungen.",
  "how.napeToHip":
    "Vom Nackenwirbel die Rückenmitte hinab zum Hüftband; das Band hängen lassen. Es zeichnet die Länge des Körpers.",
  "how.scyeDepth":
    "Einen Kartonstreifen waagerecht dicht unter beide Arme halten. Vom Nackenwirbel zu seiner Oberkante. Es zeichnet die Tiefe der Raglannähte.",
  "how.upperArm":
    "Ellbogen gebeugt, Muskel angespannt, an der stärksten Stelle. Es zeichnet die Weite des Ärmels.",
  "how.wrist": "Über den Knochen, anliegend, ohne Uhr. Es zeichnet das Ärmelbündchen.",
  "how.hand":
    "Offene Hand, Finger zusammen, ohne Daumen. Das Ärmelbündchen muss sich darüber dehnen.",
  "how.head":
    "Knapp über den Brauen und um die weiteste Stelle hinten, Haar flach. Das Halsbündchen muss sich darüber dehnen.",
  "how.armLength":
    "Hand auf der Hüfte. Vom Schulterende über den Ellbogen zum Handgelenkknochen. Es zeichnet die Länge des Ärmels.",
  "how.spineToWrist":
    "Hand auf der Hüfte. Vom Nacken über Schulterende und Ellbogen zum Handgelenkknochen. Es dient als Probe.",
  "how.elbow": "Um den gebeugten Ellbogen. Wird beim Körper aufbewahrt; noch folgt nichts daraus.",
  "how.waistToHip":
    "Senkrecht an der Seite, von Band zu Band. Wird beim Körper aufbewahrt; noch folgt nichts daraus.",
  "how.torsoGirth":
    "Von der Schultermitte vorn hinab und hinten hinauf zum selben Punkt. Wird aufbewahrt; noch folgt nichts daraus.",
  "measures.who": "Dies ist {body.name}, {body.part}; was fehlt, wird geschätzt nach {body.sex}.",
  "measures.name": "Name",
  "measures.part": "Woran man den Körper erkennt",
  "measures.sex": "Wonach geschätzt wird",
  "measures.sex.female": "Frauen",
  "measures.sex.male": "Männern",
  "measures.sex.all": "allen Erwachsenen",
  "measures.noName": "ohne Namen",
  "measures.noPart": "keine Stimme",
  "measures.size": "Von {body.size} ausgehen, dann messen, was zählt.",
  "measures.size.none": "einer Größe",
  "measures.size.label": "Größe zum Beginnen",
  "measures.size.women": "{id}, Frau, {height}, Brust {chest}",
  "measures.size.men": "{id}, Mann, {height}, Brust {chest}",
  "measures.size.short": "klein",
  "measures.size.regular": "mittel",
  "measures.size.tall": "groß",
  "measures.add": "Einen Körper hinzufügen",
  "measures.estimate": "Nicht gegeben. Geschätzt {value}, mehr oder weniger {plus}.",
  "measures.estimateWide":
    "Nicht gegeben. Geschätzt {value}, mehr oder weniger {plus}. Jenseits der Körper, aus denen geschätzt wird; messen Sie es.",
  "measures.estimateShort": "≈ {value} ± {plus}",
  "measures.needed": "Nötig, bevor etwas gezeichnet werden kann.",
  "measures.takes": "Erlaubt {least} bis {most}.",
  "measures.adults":
    "Die Schätzungen stammen aus einer Erhebung an Erwachsenen. Für jüngere Körper jedes Maß angeben.",
  "measures.more": "Drei weitere, beim Körper aufbewahrt",
  "measures.toFigure": "Sehen, wo jedes genommen wird",
  "measures.toTapes": "Zurück zu den Bändern",
  "measures.figure": "Wo jedes Maß genommen wird, an einer Figur von vorn und von hinten",
  "measures.side.front": "von vorn",
  "measures.side.back": "von hinten",
  "measures.tapes": "Maße als Bandstücke, in einem Maßstab",
  "measures.others": "die anderen Körper",
  "measures.source":
    "Schätzungen: Erhebung an Erwachsenen, ANSUR II, 2012. Größen: unsere eigenen, aus derselben.",
};
