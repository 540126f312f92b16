import { making } from "./making.ts";

/** The chapters after Measures: names, leads, sentences and the notes under them. */
export const chapters = {
  "chapter.measures": "Measures",
  "chapter.cloth": "Cloth",
  "chapter.block": "Block",
  "chapter.alterations": "Alterations",
  "chapter.ribs": "Ribs",
  "chapter.turnings": "Turnings",
  "chapter.paper": "Paper",
  "chapter.making": "Making up",
  "lead.measures":
    "One body, taken over a close layer. Chest and height are needed; the rest can be estimated.",
  "lead.cloth": "What the cloth and the rib will do, measured by hand.",
  "lead.block": "The raglan T-shirt that alterations start from.",
  "lead.alterations":
    "Five changes turn the block into a sweatshirt. Unbutton one to leave it out.",
  "lead.ribs": "Bands are cut short and stretched to the edge.",
  "lead.turnings": "What is added outside the seam line, also called seam allowance.",
  "lead.paper": "True to scale, on the paper you have.",
  "lead.making": "In this order. Button each step when it is sewn.",
  "head.measures": "One body and its measures",
  "head.cloth": "Cloth and rib",
  "head.block": "The raglan T-shirt block",
  "head.alterations": "From T-shirt to sweatshirt",
  "head.ribs": "Neckband, cuffs and hem band",
  "head.turnings": "From seam line to cut line",
  "head.paper": "Sheets and squares",
  "head.making": "From pieces to sweatshirt",
  "cloth.body": "The body cloth is {cloth.preset}; it stretches {body.stretch} across.",
  "cloth.rib":
    "The rib is {rib.preset}; it stretches {rib.stretch} and gives back {rib.recovery} of that.",
  "cloth.shrink":
    "Washed, the body cloth shrinks {body.shrinkLength} in length and {body.shrinkWidth} across.",
  "cloth.turned": "Cut the body pieces {body.turned}.",
  "cloth.preset": "Body cloth",
  "cloth.preset.own": "cloth I measured",
  "cloth.preset.fleece": "sweatshirt fleece",
  "cloth.preset.jersey": "single jersey",
  "cloth.preset.interlock": "interlock",
  "cloth.preset.ribknit": "rib knit",
  "cloth.preset.practice": "common practice, no source",
  "cloth.preset.note":
    "The share of {name} is common practice, no source. Your own reading goes before it.",
  "cloth.ownNote": "Your own reading. The neckline may open to the head by no more than this.",
  "rib.preset": "Rib",
  "rib.preset.own": "rib I measured",
  "rib.preset.twobytwo": "2 by 2 rib with elastane",
  "rib.preset.onebyone": "1 by 1 rib, cotton",
  "rib.preset.firm": "firm rib with elastane",
  "cloth.shrinkNote":
    "Every piece of body cloth grows to match; the old line shows by how much. Wash rib before cutting.",
  "cloth.turned.label": "Grain",
  "cloth.turned.along": "with the grain along their length",
  "cloth.turned.across": "turned, with the grain across",
  "test.title": "Find the rib’s two numbers on a table",
  "test.lead":
    "A scrap of the rib, folded as the band will be and about {length} long; two clips, a bottle of water, tape and pins.",
  "test.one":
    "Mark {mark} on the fold. Clip both ends, let one hang with {load}, wait 10 seconds. The marks are now {reading} apart.",
  "test.two":
    "Stretch the marks to {stretched}, hold 5 seconds, let go; three times. After one minute they are {minute} apart, after one hour {hour}.",
  "test.three":
    "Pin the raw edge along an arc of radius {radius}, fold inwards. The shortest arc on which {mark} of it still lies flat is {arc}.",
  "test.print": "Print the test and its arc",
  "test.use": "Use {stretch} and {recovery}",
  "test.waits": "Give the readings to see the two numbers.",
  "test.reading": "Reading under load",
  "test.minute": "Reading after one minute",
  "test.hour": "Reading after one hour",
  "test.arc": "Shortest flat arc",
  "test.outside":
    "These readings give {stretch} and {recovery}; a rib has 2 to 200 % and 50 to 100 %. Measure again.",
  "test.step.one": "1 Load it",
  "test.step.two": "2 Let it come back",
  "test.step.three": "3 Lay it round",
  "block.draft":
    "Draft from {block.source}, with {fit.chestEase} of ease round the chest and {fit.upperArmEase} round the arm.",
  "block.own": "Start from {block.source}.",
  "block.length": "End the body {fit.lengthBelowHip} below the hip.",
  "block.source": "What the block is made from",
  "block.source.measures": "the measures",
  "block.source.own": "the block you brought",
  "block.draftNote":
    "Chest {chest}, so each half of the finished body is {half} wide at the underarm. Common practice, no source: 100 to 180.",
  "block.ownNote": "“{name}” is taken as it is. What does not match stands on the tape.",
  "block.other":
    "“{name}” was brought for {body}. {who} is drafted from the measures; the block is not graded.",
  "block.lengthNote": "The block is {length} long from the nape, down the back.",
  "block.neckNote": "Neckline all round {length}; raglans {front} in front and {back} behind.",
  "block.bring": "Bring a block",
  "block.bringAgain": "Bring another block",
  "block.bringNote": "From a drawing, by tape, or as a block file. Nothing is sent away.",
  "block.none": "No block yet. Give a chest and a height, or bring a block.",
  "block.needsBody": "A block needs a body for its bands: give a chest and a height.",
  "block.read": "Read the drawing as a table",
  "alter.neckline":
    "Lower the neckline {neckline.lowerFront} in front and {neckline.lowerBack} behind, and widen it {neckline.widen} to each side.",
  "alter.moveSideSeams":
    "Move each body side seam out {moveSideSeams.by} and true it vertical from underarm to hem.",
  "alter.raiseHem": "Raise the hem {raiseHem.by} to leave room for the hem band.",
  "alter.endSleeve":
    "End the sleeve {endSleeve.aboveWrist} above the wrist to leave room for the cuff.",
  "alter.vInsert":
    "Set a V-insert at the centre front, {vInsert.halfWidth} to each side and {vInsert.depth} deep, {vInsert.method}.",
  "alter.name.neckline": "Neckline",
  "alter.name.moveSideSeams": "Side seams",
  "alter.name.raiseHem": "Hem",
  "alter.name.endSleeve": "Sleeve end",
  "alter.name.vInsert": "V-insert",
  "alter.note.neckline": "Neckline all round {value}.",
  "alter.note.moveSideSeams":
    "Takes {least} to {most}. The sleeve widens by the same at each underarm; the side seam is {value}.",
  "alter.note.raiseHem": "Takes {least} to {most}. Nape to hem is now {value}.",
  "alter.note.endSleeve": "Takes {least} to {most}. The underarm seam is now {value}.",
  "alter.note.vInsert": "Each side of the V is {value} long, and so is the insert’s.",
  "alter.note.vCutAway": "Each side of the V is {value} long, the insert’s {short} shorter.",
  "alter.off.neckline": "Unbuttoned. The neckline stays as the block drew it.",
  "alter.off.moveSideSeams": "Unbuttoned. The sides stay as the block drew them.",
  "alter.off.raiseHem": "Unbuttoned. The hem stays at the hip.",
  "alter.off.endSleeve": "Unbuttoned. The sleeve ends at the wrist.",
  "alter.off.vInsert": "Unbuttoned. The neckline is round.",
  "alter.method": "How the insert is drafted",
  "alter.method.true": "drafted to fit",
  "alter.method.cut-away": "from the piece cut away",
  "alter.order":
    "They are applied in the same order whatever you button first: neckline, side seams, hem, sleeve, V.",
  "alter.both": "Before and after: old lines",
  "ribs.rib": "The rib stretches {rib.stretch} and gives back {rib.recovery} of that.",
  "ribs.ribNote": "Measure it: Cloth, with the test on a table.",
  "ribs.cuff":
    "Cut each cuff the wrist plus {cuff.ease} and two turnings, by {cuff.cutHeight} tall, and fold it.",
  "ribs.cuffNote":
    "Wrist {wrist}, so the cuff is cut {cut} by {height} and finishes {depth} deep. It presses with {pressure} at rest.",
  "ribs.hem":
    "Cut the hem band the hip plus {hemBand.ease} and two turnings, by {hemBand.cutHeight} tall, and fold it.",
  "ribs.hemNote":
    "Hip {hip}, so the band is cut {cut} by {height} and finishes {depth} deep. It presses with {pressure} at rest.",
  "ribs.hangs":
    "At {length} it hangs below the hip. At {holds} or shorter it holds a blouse there.",
  "ribs.holds": "At {length} it holds a blouse at the hip.",
  "ribs.blouse": "Make it hold: ease {ease}",
  "ribs.neck": "Finish the neckband {neckband.finishedDepth} deep, its length {neckband.mode}.",
  "ribs.neckOwn":
    "Finish the neckband {neckband.finishedDepth} deep, its length {neckband.mode}, at {neckband.ratio} of the neckline.",
  "ribs.mode": "Length of the neckband",
  "ribs.mode.found": "found from the rib",
  "ribs.mode.own": "a ratio of your own",
  "ribs.neckNote":
    "Neckline {opening}, band {length}: {ratio} of it, cut {cut} by {height}. Gap to the neck {gap}. It presses with {pressure} at rest.",
  "ribs.noGap": "none",
  "ribs.why.aimed":
    "So long that its fold lies 2 % shorter than the ring on the body, {ring}, after the head has passed.",
  "ribs.why.head":
    "So long because the head, {head}, must pass with a tenth of the stretch in hand.",
  "ribs.why.sews": "So long because it is sewn on with at most half of the rib’s stretch.",
  "ribs.why.flat": "Held to the longest at which its fold still lies flat on the ring, {ring}.",
  "ribs.why.opening": "Held to the length of the neckline itself.",
  "ribs.why.own":
    "Your own ratio. Found from the rib it would lie nearer the ring on the body, {ring}.",
  "ribs.share": "Set the neckband’s eight marks {neckband.share}.",
  "ribs.share.label": "Marks on the neckband",
  "ribs.share.ring": "by the ring under its fold",
  "ribs.share.even": "evenly",
  "ribs.marks": "From the band’s seam at centre back: {list}. Sew evenly from mark to mark.",
  "ribs.ladder": "How far the {band} must stretch",
  "ribs.rest": "at rest",
  "ribs.sewn": "on the seam",
  "ribs.safe": "safe stretch",
  "ribs.over.hand": "over the hand",
  "ribs.over.head": "over the head",
  "ribs.over.hip": "over hip and chest",
  "ribs.scrap": "Test on a scrap of the rib first. Pins out before the needle.",
  "turn.seams":
    "Add {allowances.raglan} on the raglan seams, {allowances.side} on the side seams and {allowances.underarm} on the underarm seams.",
  "turn.seamsNote":
    "Cut lines are drawn wide, seam lines narrow inside them. Corners are trued so that turnings lie flat when pressed open.",
  "turn.bands": "Add {allowances.bands} where a band is sewn, and on the bands.",
  "turn.bandsNote":
    "Neck edges, sleeve ends and hems. A cuff or hem band must be at least {least} tall.",
  "turn.v": "Add {vInsert.allowance} round the V and its insert.",
  "turn.vNote": "Snip the front’s turning to within 1 mm of the point.",
  "turn.notches":
    "Notches stand where partners meet: one on the front raglan, two on the back, one on side and underarm. The neckband has eight marks, cuffs and hem band four.",
  ...making,
} as const;
