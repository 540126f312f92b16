import { SETTINGS, STITCHES } from "./data/stitches.ts";
import type { Stitch } from "./step.ts";
import { count, given, told } from "./words/told.ts";

const overedge: Stitch = {
  machine: "overlock",
  told: told("stitch.overedge", {
    type: count(STITCHES.overedge.type),
    length: given(SETTINGS.overedgeLength),
  }),
};

const zigzag: Stitch = {
  machine: "home",
  told: told("stitch.zigzag", {
    type: count(STITCHES.zigzag.type),
    width: given(SETTINGS.zigzagWidth),
    length: given(SETTINGS.zigzagLength),
  }),
};

const lockstitch: Stitch = {
  machine: "either",
  told: told("stitch.lockstitch", {
    type: count(STITCHES.lockstitch.type),
    length: given(SETTINGS.stayLength),
  }),
};

const covering: Stitch = {
  machine: "either",
  told: told("stitch.covering", { type: count(STITCHES.covering.type) }),
};

/** Seams that must give as the cloth gives. */
export const SEAM_STITCHES: readonly Stitch[] = [overedge, zigzag];
/** A V has a corner, which an overlock cannot turn. */
export const V_STITCHES: readonly Stitch[] = [zigzag];
/** The one short line that need not stretch. */
export const STAY_STITCHES: readonly Stitch[] = [lockstitch];
/** The neckband is topstitched as well. */
export const NECKBAND_STITCHES: readonly Stitch[] = [overedge, zigzag, covering];
