/** From block to sweatshirt, step by step, for a class. */
export const LESSON = {
  "lesson.block.title": "The block",
  "lesson.block.say":
    "Begin with the block: half a front and half a back on the fold, and one sleeve.",
  "lesson.block.why":
    "Every line is a seam line. There are no turnings yet, so a change of line is a change of the garment.",
  "lesson.block.ease": "The chest measures {chest}. How much wider is the block?",
  "lesson.block.easeSum": "2 × ({front} + {back}) − {chest} = {answer}",
  "lesson.block.raglan": "How long is the front’s raglan, and how long the sleeve’s that it meets?",
  "lesson.block.raglanSum": "Front {front}, sleeve {answer}: the same.",
  "lesson.block.raglanApart": "Front {front}, sleeve {answer}.",
  "lesson.neckline.title": "Neckline",
  "lesson.neckline.say":
    "Lower the front neckline by {front} and the back by {back}, and widen the neck by {widen}.",
  "lesson.neckline.why":
    "All four raglan edges lose the same at the neck, so front, back and sleeve still meet.",
  "lesson.neckline.raglan": "How long is the front raglan now?",
  "lesson.neckline.depth": "How deep is the front neckline below the nape’s level now?",
  "lesson.side.title": "Side seams",
  "lesson.side.say": "Move the side seams out by {by} and make them straight.",
  "lesson.side.why":
    "A sweatshirt hangs straight into its band. The sleeve’s raglans grow by as much, so they still meet.",
  "lesson.side.width": "How wide is half the front at the underarm now?",
  "lesson.side.long": "How long is the side seam now, from the underarm’s level to the hem’s?",
  "lesson.hem.title": "Hem",
  "lesson.hem.say": "Raise the hem by {by}.",
  "lesson.hem.why": "The hem band adds {depth} below it; {blouse} of that is left to blouse over.",
  "lesson.hem.whyShort": "The hem band adds {depth} below it, {short} less than was taken off.",
  "lesson.hem.side": "How long is the side seam now?",
  "lesson.hem.blouse": "How much longer than the block is the finished garment at the side?",
  "lesson.sleeve.title": "Sleeve end",
  "lesson.sleeve.say": "End the sleeve {above} above the wrist.",
  "lesson.sleeve.why": "The cuff fills the gap. It is folded, and finishes {depth} deep.",
  "lesson.sleeve.underarm":
    "The underarm seam slants: {old} of it lie over a height of {height}. How long is it now?",
  "lesson.sleeve.underarmSum": "{old} − {old} × {above} ÷ {height} = {answer}",
  "lesson.sleeve.bare": "How far from the wrist does the finished sleeve end?",
  "lesson.v.title": "V-insert",
  "lesson.v.say":
    "Cut a V into the front, {half} to each side along the neckline and {depth} deep.",
  "lesson.v.whyTrue":
    "The insert is drawn with the V’s own lines as its seam lines, so both edges are of one length.",
  "lesson.v.whyCut":
    "The insert is what was cut away and a turning all round; sewn, the opening is longer than the insert.",
  "lesson.v.side": "A side of the V runs {across} across and {down} down. How long is it?",
  "lesson.v.sideSum": "{across} × {across} + {down} × {down} = {answer} × {answer}",
  "lesson.v.neckline": "How much of half the front neckline is left?",
  "lesson.v.short": "By how much is the insert short on each side?",
  "lesson.bands.title": "Rib bands",
  "lesson.bands.say":
    "Cut the bands: a neckband, two cuffs and a hem band, folded, with turnings of {allowance}.",
  "lesson.bands.why":
    "Rib is cut shorter than its opening. It draws the cloth in, and stretches where a body passes.",
  "lesson.bands.cuff": "The wrist measures {wrist}. How long is a cuff cut?",
  "lesson.bands.cuffSum": "{wrist} + {ease} + 2 × {allowance} = {answer}",
  "lesson.bands.deep": "A cuff is cut {height} high. How deep is it when it is folded and sewn?",
  "lesson.bands.deepSum": "{height} ÷ 2 − {allowance} = {answer}",
  "lesson.bands.hem": "The hip measures {hip}. How long is the hem band cut?",
  "lesson.bands.hemSum": "{hip} + {ease} + 2 × {allowance} = {answer}",
  "lesson.bands.neck":
    "The opening is {opening} round and the neckband {length}. How much is it stretched?",
  "lesson.bands.neckSum": "{opening} − {length} = {answer}",
  "lesson.turnings.title": "Turnings",
  "lesson.turnings.say":
    "Add the turnings: raglan {raglan}, side {side}, underarm {underarm}, and {bands} where bands are sewn.",
  "lesson.turnings.why":
    "The turning lies outside the seam line. Two edges that are sewn together have the same, or they would not meet.",
  "lesson.turnings.wide": "How wide is half the back as it is cut, at its side notch?",
  "lesson.sum.plus": "{a} + {b} = {answer}",
  "lesson.sum.minus": "{a} − {b} = {answer}",
  "lesson.sum.measured": "Measured along the line: {answer}",
} as const;
