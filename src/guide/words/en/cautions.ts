/** Stitches and cautions. Where they come from stands in the data of the guide. */
export const CAUTIONS = {
  "stitch.overedge":
    "Overlock: four-thread overedge, ISO 4915 type {type}, {length} from stitch to stitch (common practice).",
  "stitch.zigzag":
    "Home machine: zigzag, ISO 4915 type {type}, {width} wide and {length} long (common practice).",
  "stitch.lockstitch":
    "Lockstitch, ISO 4915 type {type}, {length} long. It cracks where a knit is stretched, so only here.",
  "stitch.covering": "Topstitch: covering stitch, ISO 4915 type {type}, or the zigzag above.",
  "caution.cutter":
    "Keep the rotary cutter closed unless you are cutting. Cut away from yourself, fingers off the edge of the rule.",
  "caution.blade":
    "Change a dull blade: one that must be pressed can slip. Used blades and needles go into a closed, hard tin.",
  "caution.machine": "Switch the machine off and unplug it before you change a needle or a foot.",
  "caution.needle": "Keep your fingers clear of the needle.",
  "caution.shears": "Close the shears when you lay them down; snip with their points only.",
  "caution.pins":
    "Take every pin out before the needle or the overlock’s knife reaches it, and count them back.",
  "caution.iron":
    "An iron stays hot after it is switched off. Keep it and its cord out of children’s reach, your fingers out of its steam.",
  "caution.ironDown": "Never leave an iron face down: it can start a fire.",
  "caution.cord":
    "No cord, drawstring or tie at the head or neck of a child’s garment; to the age of seven, or 134 cm tall, none at all.",
  "caution.smallParts":
    "For a child under three: no button, bead or trim that can come off. Small parts can choke.",
  "caution.sleepwear": "Not for children’s sleepwear, which has rules of its own.",
  "caution.local": "Where your local rules say more, follow them.",
} as const;
