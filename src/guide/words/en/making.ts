/** The order of work, step by step. */
export const MAKING = {
  "prepare.title": "Before you sew",
  "prepare.washed": "Wash cloth and rib before you cut them, as the garment will be washed.",
  "prepare.grown":
    "The pieces are drawn larger by what the first wash takes: do not wash the cloth before it is cut. Wash the rib.",
  "prepare.turnings":
    "The turnings are in the pieces: raglan {raglan}, side {side}, underarm {underarm}; bands and the edges they meet {bands}.",
  "prepare.turningV": "Along the V the turning is {v}.",
  "prepare.notches":
    "Mark each notch with chalk or thread. On knits a snip can run; if you snip, then no deeper than half the turning.",
  "prepare.needle":
    "Ball-point needle, NM {needle}, or NM {least} for thinner cloth; polyester thread (common practice).",
  "prepare.try":
    "Try each stitch on two layers of scrap, along and across, and stretch the seam: it must give a little more than the cloth.",
  "stay.title": "Stay the point of the V",
  "stay.sew":
    "On the front, sew small stitches on the seam line, {stayed} to each side of the V’s point.",
  "stay.snip":
    "Snip from the cut corner straight towards the point, {snip} long: to {short} before the stitches.",
  "stay.noSnip": "Here the V has no turning to snip.",
  "v.title": "Sew in the V-insert",
  "v.lay":
    "Lay the insert on the front, right sides together, cut edges level along one side of the V. The turning is {allowance}.",
  "v.sew": "Sew from the top to the point. The seam is {length} long on both pieces.",
  "v.stretched":
    "Sew from the top to the point. The insert, {insert}, is short for the opening, {opening}: stretch it by {by} on each side, {stretch}.",
  "v.stop":
    "Stop exactly at the V’s sewn point, needle down. It lies {short} short of the insert’s cut tip.",
  "v.other": "Open the snip, lay the other side level, and sew it from the top to the same point.",
  "v.across":
    "A stitch or two straight across at the point, {across} at most, lets it lie flat (common practice).",
  "raglanFront.title": "Sleeves to the front",
  "raglanFront.pin":
    "Pin each sleeve to the front, right sides together: neck corners, one notch to one notch, underarms.",
  "raglanBack.title": "Sleeves to the back",
  "raglanBack.pin":
    "Pin each sleeve to the back, right sides together: neck corners, two notches to two, underarms.",
  "raglan.sew": "Each seam is {length} long, its turning {allowance}.",
  "raglan.notch": "The first notch lies {notch} from the neck corner.",
  "seam.ease":
    "The {longer} is {ease} longer, because the cloth shrinks more one way than the other. Ease it in evenly; the first wash takes it.",
  "seam.apart": "The two edges are {difference} apart: share that out between the pins.",
  "longer.front": "front",
  "longer.back": "back",
  "longer.sleeve": "sleeve",
  "longer.sleeveFront": "sleeve’s front edge",
  "longer.sleeveBack": "sleeve’s back edge",
  "side.title": "Underarm and side in one",
  "side.fold":
    "Fold the garment along the shoulders, right sides together. Pin sleeve ends, notches, underarm points and hems.",
  "side.sew":
    "Sew from the sleeve end to the hem in one: {underarm} of underarm and {side} of side, {whole} in all.",
  "side.turning": "The turning is {allowance} all the way.",
  "side.turnings": "The turning is {underarm} on the underarm and {side} on the side.",
  "side.cross": "Where four edges meet, let the raglan turnings lie opposite ways.",
  "band.ring": "Join the ends with a turning of {allowance}. The ring is {length} round.",
  "band.fold": "Fold it along its middle, right side out: {depth} deep as sewn.",
  "band.sew":
    "Pin mark to mark and sew with the band up, turning {allowance}. Stretch the band, never the cloth.",
  "band.flat": "Band and opening are of one length: sew the band on flat.",
  "band.stretch":
    "In all the band is stretched by {by}, {stretch}, evenly between neighbouring marks: the table says how much.",
  "band.ease":
    "The band is {by} longer than the opening: ease it in evenly between neighbouring marks.",
  "band.wash": "The opening is {cut} as cut; the first wash takes it to {finished}.",
  "neckband.title": "Neckband",
  "neckband.marks":
    "The band has eight marks at unequal distances, from its seam at centre back: {a}, {b}, {c}, centre front at {d}, and back the same way.",
  "neckband.unequal":
    "From one pair of marks to the next the stretch differs, from {least} to {most}: a neckline that curves more needs less band at the fold.",
  "neckband.halfWayFront": "The half-way mark lies on the front, {from} from its raglan corner.",
  "neckband.halfWayBack": "The half-way mark lies on the back, {from} from its raglan corner.",
  "neckband.halfWaySleeve":
    "The half-way mark lies on the sleeve, {from} from its raglan corner at the back.",
  "neckband.topstitch":
    "Lay the turnings towards the body and topstitch {aside} beside the seam, stretching a little as you sew.",
  "cuffs.title": "Cuffs",
  "cuffs.quarters":
    "Mark each cuff’s quarters, {quarter} apart; those of the sleeve end are {opening} apart.",
  "cuffs.seam": "The cuff’s seam meets the underarm seam.",
  "hemBand.title": "Hem band",
  "hemBand.marks":
    "Mark the band from its seam: side at 0, centre front at {front}, the other side at {side}, centre back at {back}.",
  "hemBand.seam": "Its seam meets one side seam.",
  "hemBand.hangs":
    "As long as it is the band hangs below the hip; {holds} or shorter would hold a blouse there.",
  "hemBand.holds": "The band is short enough to hold a blouse at the hip: {holds} or less does.",
  "press.title": "Press",
  "press.seams":
    "Press the raglan seams towards the sleeves, side and underarm seams towards the back (common practice).",
  "press.rib":
    "Iron the rib lightly, at the heat for its fibre and with a cloth between, and let it cool flat.",
} as const;
