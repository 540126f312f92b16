/** What stands on the printed marks for photographing a block. */
export const MARKERS = {
  "markers.title": "Mark",
  "markers.of": "One of {of} marks for the picture of a paper block",
  "markers.print":
    "Print at actual size, without fitting to the page. The square below must measure {side} each way.",
  "markers.lay":
    "Lay one mark beyond each corner of the piece, flat, the whole white page free. No mark lies on the piece.",
  "markers.hold":
    "Hold each page with two strips of tape, so that none slips until all is measured.",
  "markers.measure":
    "Measure from white point to white point, every mark to every other: six distances for four marks, to the millimetre.",
  "markers.take":
    "Take the picture from straight above, as far away as shows all marks whole, in even light without flash.",
  "markers.caution":
    "Stand on the floor or on a firm step to take it, never on a chair. Lift the pages off the floor afterwards: paper slips underfoot.",
  "markers.square": "{side}, to the middle of the line",
} as const;
