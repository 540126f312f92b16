/** The measures: as sentences, as labels, how each is taken and what it draws. */
export const measures = {
  "measure.height": "Height, without shoes: {measures.height}.",
  "measure.chest": "Round the chest, at its fullest: {measures.chest}.",
  "measure.waist": "Round the waist, at the navel: {measures.waist}.",
  "measure.hip": "Round the hip, at its fullest: {measures.hip}.",
  "measure.neckBase": "Round the neck, at its base: {measures.neckBase}.",
  "measure.shoulder": "Neck side to the shoulder’s end: {measures.shoulder}.",
  "measure.acrossBack": "Across the back, arm to arm: {measures.acrossBack}.",
  "measure.napeToWaist": "Nape down to the waist: {measures.napeToWaist}.",
  "measure.napeToHip": "Nape down to the hip: {measures.napeToHip}.",
  "measure.scyeDepth": "Nape down to armpit level: {measures.scyeDepth}.",
  "measure.upperArm": "Round the upper arm, tensed: {measures.upperArm}.",
  "measure.wrist": "Round the wrist, over the bone: {measures.wrist}.",
  "measure.hand": "Round the hand, over the knuckles: {measures.hand}.",
  "measure.head": "Round the head, above the brows: {measures.head}.",
  "measure.armLength": "Shoulder’s end, over the elbow, to the wrist: {measures.armLength}.",
  "measure.spineToWrist": "Nape, over the shoulder, to the wrist: {measures.spineToWrist}.",
  "measure.elbow": "Round the bent elbow: {measures.elbow}.",
  "measure.waistToHip": "Waist down to the hip, at the side: {measures.waistToHip}.",
  "measure.torsoGirth": "Round the trunk, shoulder to crotch and back: {measures.torsoGirth}.",
  "name.height": "Height",
  "name.chest": "Chest",
  "name.waist": "Waist",
  "name.hip": "Hip",
  "name.neckBase": "Neck at its base",
  "name.shoulder": "Shoulder",
  "name.acrossBack": "Across the back",
  "name.napeToWaist": "Nape to waist",
  "name.napeToHip": "Nape to hip",
  "name.scyeDepth": "Nape to armpit level",
  "name.upperArm": "Upper arm",
  "name.wrist": "Wrist",
  "name.hand": "Hand",
  "name.head": "Head",
  "name.armLength": "Arm",
  "name.spineToWrist": "Nape to wrist",
  "name.elbow": "Elbow",
  "name.waistToHip": "Waist to hip",
  "name.torsoGirth": "Trunk",
  "how.height":
    "Heels and back to a wall, eyes level. Lay a book flat on the head, mark, measure from the floor. It draws no seam; it serves the estimates.",
  "how.chest":
    "Tape level and snug, arms down, after breathing out. It draws every width of the body.",
  "how.waist": "At navel level, belly at rest. Not a trouser size. It serves the estimates.",
  "how.hip":
    "Round the fullest part of the seat, feet together, pockets empty. It draws the hem and the hem band.",
  "how.neckBase":
    "Over the nape bone, the side points where neck meets shoulder, and the pit of the collar bones; a fine chain lies there by itself. It draws the neckline and the neckband.",
  "how.shoulder":
    "From the side neck point to the bony end of the shoulder, along the ridge, one side. It draws the length of the sleeve.",
  "how.acrossBack":
    "Arms hanging, from fold to fold where the arm meets the back. It serves the estimates.",
  "how.napeToWaist":
    "From the nape bone down the middle of the back to the waist tape. It serves the estimates.",
  "how.napeToHip":
    "From the nape bone down the middle of the back to the hip tape; let the tape hang. It draws the length of the body.",
  "how.scyeDepth":
    "Hold a strip of card level, close up under both arms. From the nape bone to its upper edge. It draws the depth of the raglans.",
  "how.upperArm": "Elbow bent, muscle tensed, at the fullest. It draws the width of the sleeve.",
  "how.wrist": "Over the knob of bone, snug, without a watch. It draws the cuff.",
  "how.hand": "Open hand, fingers together, thumb left out. The cuff must stretch over it.",
  "how.head":
    "Just above the brows and round the widest part of the back, hair flat. The neckband must stretch over it.",
  "how.armLength":
    "Hand on hip. From the shoulder’s end over the elbow to the wrist bone. It draws the length of the sleeve.",
  "how.spineToWrist":
    "Hand on hip. From the nape over the shoulder’s end and the elbow to the wrist bone. It serves as a check.",
  "how.elbow": "Round the bent elbow. Kept with the body; nothing is worked from it yet.",
  "how.waistToHip":
    "Straight down at the side, from tape to tape. Kept with the body; nothing is worked from it yet.",
  "how.torsoGirth":
    "From mid-shoulder down the front and up the back to the same point. Kept with the body; nothing is worked from it yet.",
  "measures.who":
    "This is {body.name}, {body.part}; what is left out is estimated from {body.sex}.",
  "measures.name": "Name",
  "measures.part": "What to know the body by",
  "measures.sex": "What estimates are made from",
  "measures.sex.female": "women",
  "measures.sex.male": "men",
  "measures.sex.all": "all adults",
  "measures.noName": "not named",
  "measures.noPart": "no part",
  "measures.size": "Start from {body.size}, then measure what matters.",
  "measures.size.none": "a size",
  "measures.size.label": "Size to start from",
  "measures.size.women": "{id}, woman, {height}, chest {chest}",
  "measures.size.men": "{id}, man, {height}, chest {chest}",
  "measures.size.short": "short",
  "measures.size.regular": "middling",
  "measures.size.tall": "tall",
  "measures.add": "Add a body",
  "measures.estimate": "Not given. Estimated {value}, give or take {plus}.",
  "measures.estimateWide":
    "Not given. Estimated {value}, give or take {plus}. Beyond the bodies the estimates were made from; measure it.",
  "measures.estimateShort": "≈ {value} ± {plus}",
  "measures.needed": "Needed before anything can be drafted.",
  "measures.takes": "Takes {least} to {most}.",
  "measures.adults":
    "The estimates come from a survey of adults. For a younger body give each measure.",
  "measures.more": "Three more, kept with the body",
  "measures.tapes": "Measures as lengths of tape, at one scale",
  "measures.others": "the other bodies",
  "measures.source":
    "Estimates: survey of adults, ANSUR II, 2012. Sizes: our own, from the same survey.",
} as const;
