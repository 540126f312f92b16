export type BlockCommand = {
  readonly command: "block";
  readonly from:
    | { readonly tape: string }
    | {
        readonly drawing: string;
        readonly names: string | null;
        readonly allowances: string | null;
      };
  readonly out: string;
};

/** The options of `block`, by name. */
export const BLOCK_OPTIONS = {
  drawing: "string",
  tape: "string",
  names: "string",
  allowances: "string",
  out: "string",
} as const;

type Wanted = BlockCommand | { readonly sentence: string };

/** What `block` asks for, or one sentence about what is wrong with it. */
export const blockWanted = (options: ReadonlyMap<string, string>): Wanted => {
  const [drawing, tape, out] = [options.get("drawing"), options.get("tape"), options.get("out")];
  const [names, allowances] = [options.get("names") ?? null, options.get("allowances") ?? null];
  if (drawing !== undefined && tape !== undefined)
    return { sentence: "--drawing and --tape stand together; one of them is enough." };
  if (out === undefined) return { sentence: "--out BLOCK.json is missing." };
  if (drawing !== undefined) {
    return { command: "block", from: { drawing, names, allowances }, out };
  }
  if (tape === undefined)
    return { sentence: "--drawing FILE.svg is missing (or FILE.pdf, or --tape TAPE.json)." };
  if (names !== null || allowances !== null)
    return { sentence: "--names and --allowances belong to --drawing; a tape needs neither." };
  return { command: "block", from: { tape }, out };
};
