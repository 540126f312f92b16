/**
 * A report as its reader has it: only what the contract promises, from the text itself. Nothing of
 * the program's own types is used.
 */
export type ReportPiece = {
  readonly edges: Readonly<Record<string, { readonly path: string; readonly length: number }>>;
  readonly cutLine: string;
  readonly onFold: string | null;
  readonly notches: readonly {
    readonly edge: string;
    readonly at: number;
    readonly seam: string;
  }[];
};
type Side = readonly (readonly [string, string])[];
export type Report = {
  readonly choices: {
    readonly allowances: {
      readonly raglan: number;
      readonly side: number;
      readonly underarm: number;
      readonly bands: number;
    };
    readonly cloth: {
      readonly body: {
        readonly shrinkLength: number;
        readonly shrinkWidth: number;
        readonly turned: boolean;
      };
    };
    readonly alterations: { readonly vInsert: { readonly allowance: number } };
  };
  readonly block: Readonly<Record<string, ReportPiece>>;
  readonly pieces: Readonly<Record<string, ReportPiece>>;
  readonly seams: readonly {
    readonly id: string;
    readonly a: Side;
    readonly b: Side;
    readonly lengthA: number;
    readonly lengthB: number;
    readonly difference: number;
    readonly ease: number;
  }[];
  readonly bands: Readonly<
    Record<string, { readonly opening: number; readonly finishedLength: number }>
  >;
  readonly checks: readonly { readonly id: string; readonly verdict: string }[];
};

export const readReport = (text: string): Report => {
  const report: Report = JSON.parse(text);
  return report;
};

/** An edge of the report by piece and name, which must be there. */
export const edgeOf = (report: Report, [piece, edge]: readonly [string, string]) => {
  const found = report.pieces[piece]?.edges[edge];
  if (!found) throw new Error(`The report has no ${piece}.${edge}.`);
  return found;
};
