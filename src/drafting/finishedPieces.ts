import { lengthOf } from "../geometry/length.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import type { Block, BodyEdges, InsertEdges, SleeveEdges } from "./piece.ts";

/** An edge with its length measured once: many steps ask for it. */
export type Measured = { readonly path: Path; readonly length: Mm };

type MeasuredBody = { readonly [K in keyof Required<BodyEdges>]: Measured };
type MeasuredSleeve = { readonly [K in keyof SleeveEdges]: Measured };
type MeasuredInsert = { readonly [K in keyof InsertEdges]: Measured };

/** The altered sew lines with their lengths, finished: as worn, not enlarged for the wash. */
export type FinishedPieces = {
  readonly front: Omit<MeasuredBody, "v"> & { readonly v: Measured | null };
  readonly back: Omit<MeasuredBody, "v"> & { readonly v: Measured | null };
  readonly sleeve: MeasuredSleeve;
  readonly vInsert: MeasuredInsert | null;
};

const measured = (path: Path): Measured => ({ path, length: lengthOf(path) });

const measureBody = (body: BodyEdges): FinishedPieces["front"] => ({
  v: body.v ? measured(body.v) : null,
  neckline: measured(body.neckline),
  raglan: measured(body.raglan),
  side: measured(body.side),
  hem: measured(body.hem),
  centre: measured(body.centre),
});

const measureSleeve = (sleeve: SleeveEdges): MeasuredSleeve => ({
  neckline: measured(sleeve.neckline),
  raglanFront: measured(sleeve.raglanFront),
  underarmFront: measured(sleeve.underarmFront),
  wrist: measured(sleeve.wrist),
  underarmBack: measured(sleeve.underarmBack),
  raglanBack: measured(sleeve.raglanBack),
});

/** Every sew line measured once. Lengths in mm, error below 1e-9. */
export const measurePieces = (block: Block, insert: InsertEdges | null): FinishedPieces => ({
  front: measureBody(block.front),
  back: measureBody(block.back),
  sleeve: measureSleeve(block.sleeve),
  vInsert: insert && {
    top: measured(insert.top),
    right: measured(insert.right),
    left: measured(insert.left),
  },
});
