/** The rib on a table: three readings (reference: rib bands, section 7). */
export const TABLE_TEST = {
  "test.title": "Try the rib on a table",
  "test.need":
    "You need a scrap of the rib {long} long across, cut to the band’s height, {height}, and folded; two clips as wide as the scrap, a 1 litre bottle, tape, pins, a soft board and the printed arc.",
  "test.stretch.title": "1 Stretch",
  "test.stretch.mark":
    "Mark {marked} on the middle of the folded scrap, and clip both ends over their whole width.",
  "test.stretch.load":
    "Hang {grams} g on one end: {perMm} g for each millimetre of the folded width, {width}.",
  "test.stretch.bottle":
    "A bottle holds that as {millilitres} ml of water, less its own weight and the clip’s.",
  "test.stretch.read": "After 10 seconds read how far apart the marks are.",
  "test.recovery.title": "2 Recovery",
  "test.recovery.pull":
    "Stretch the marks to {stretched}, as the head will. Hold for 5 seconds and let go; three times.",
  "test.recovery.read": "Read after 1 minute and after 1 hour. The hour counts for the bands.",
  "test.slack.title": "3 Slack that the fold bears",
  "test.slack.pin":
    "Pin the raw edges along the printed arc so that the marks stand at 0 and at a tick, evenly between, and fold the band inward.",
  "test.slack.down":
    "Begin at {most} and go down by {by}. Read the shortest tick at which the fold still lies flat after a pat.",
  "test.slack.steam": "If the band will be steamed, read again after steam.",
  "test.arc": "Radius {radius}: the opening, {opening}, laid out flat",
  "test.arcStraight": "This opening does not turn inward: pin along a straight line",
  "test.arc.fold": "fold, {depth} further in",
  "test.caution.bottle": "Keep your feet clear of the hanging bottle.",
  "test.caution.pins": "Cap pins and needles when you lay them down.",
  "test.found.stretch": "Stretch {stretch}.",
  "test.found.recovery": "Recovery {recovery} after an hour.",
  "test.found.minute":
    "After a minute only {recovery} has gone back: the band will look loose just after it is put on.",
  "test.found.slack":
    "The fold bears {slack} of slack before it lifts; the draft reckons with {limit}.",
  "test.found.slackLess":
    "That is less than the draft reckons with: sew the neckband at {target} and no longer.",
  "test.found.target": "The neckband is at that length already.",
  "test.found.noTarget":
    "The neckband cannot be that short for this head and opening; choose a rib that stretches more, or a wider neckline.",
  "test.change.neckband": "Neckband: {before} becomes {after}, cut {cut}.",
  "test.change.same": "Neckband: stays {after}.",
  "test.change.fixed": "Neckband: stays {after}, since its ratio is fixed by hand.",
  "test.change.hem": "Hem band: {before} or shorter held a blouse; now {after} or shorter does.",
  "test.change.pass":
    "To pass, the neckband must stretch by {neckband} of {stretch}, the cuff by {cuff}, the hem band by {hemBand}.",
  "test.change.tight": "That is more than nine tenths of what the rib can: see the checks.",
} as const;
