import { MOST_NESTED } from "../export/data/layerStyles.ts";
import { PAPER_NAMES } from "../export/data/paper.ts";
import { FEWEST_MARKS, MOST_MARKS } from "../export/markerPages.ts";

export const COMMANDS = [
  "draft",
  "batch",
  "check",
  "block",
  "guide",
  "handout",
  "markers",
  "nest",
] as const;
export type CommandName = (typeof COMMANDS)[number];

const NAMES = PAPER_NAMES.join(", ");

/** How sheets are printed: the same for each command that prints some. */
const PRINT_DETAILS = `  --paper NAME    a name below, or a size of your own in mm, across before along: 210x330
  --turn WAY      portrait, landscape, or fewest: whichever needs fewer sheets
  --margins MM    what the printer leaves bare: 10, or top,right,bottom,left: 10,12,15,12
  --join WAY      overlap: each sheet is laid on the one before; butt: edge to edge
  --overlap MM    how far a sheet repeats its neighbour; 10 where it is left out
  --square-along MM  --square-across MM
                  what the test square of 50 mm measures from your printer, along and across its
                  feed: the sheets are then drawn so that this printer makes them true`;

const PAPERS_LIST = `Papers: ${NAMES}.
Without --paper it is a4. Rolls are named by their width.`;

const SYNOPSIS: Readonly<Record<CommandName, string>> = {
  draft: `npm run -s ribwright -- draft --body BODY.json --out DIR
    [--choices CHOICES.json] [--block BLOCK.json] [--paper NAME] [--only A1,A2] [--date YYYY-MM-DD]
    [--copy-shop NAME] [--projector]
    [--turn portrait|landscape|fewest] [--margins MM] [--join overlap|butt] [--overlap MM]
    [--square-along MM] [--square-across MM]`,
  batch: `npm run -s ribwright -- batch --bodies BODIES.csv --out DIR
    [--choices CHOICES.json] [--paper NAME] [--no-sheets]
    [--turn portrait|landscape|fewest] [--margins MM] [--join overlap|butt] [--overlap MM]
    [--square-along MM] [--square-across MM]`,
  check: "npm run -s ribwright -- check REPORT.json",
  block: `npm run -s ribwright -- block --drawing FILE.svg|FILE.pdf --out BLOCK.json
    [--names NAMES.json] [--allowances ALLOWANCES.json]
    npm run -s ribwright -- block --tape TAPE.json --out BLOCK.json`,
  guide: `npm run -s ribwright -- guide --body BODY.json --out DIR
    [--choices CHOICES.json] [--block BLOCK.json] [--paper a4|letter] [--language en|de]
    [--date YYYY-MM-DD]`,
  handout: `npm run -s ribwright -- handout --body BODY.json --out DIR [--no-answers]
    npm run -s ribwright -- handout --class CLASS.csv --out DIR
    [--choices CHOICES.json] [--paper a4|letter] [--language en|de] [--date YYYY-MM-DD]`,
  nest: `npm run -s ribwright -- nest --sizes W80,W90,W100 --out DIR
    npm run -s ribwright -- nest --bodies BODIES.csv --out DIR
    [--choices CHOICES.json] [--paper NAME] [--only A1,A2] [--date YYYY-MM-DD]
    [--turn portrait|landscape|fewest] [--margins MM] [--join overlap|butt] [--overlap MM]
    [--square-along MM] [--square-across MM]`,
  markers: `npm run -s ribwright -- markers --out MARKS.pdf [--marks ${FEWEST_MARKS} to ${MOST_MARKS}]
    [--paper a4|letter] [--language en|de]`,
};

/** The options that guide and handout share. */
const HOME_DETAILS = `  --body FILE     the body: { "id": "…", "measures": { "chest": 960, "height": 1660 } }
  --size NAME     in place of --body: a standard size, such as W90-regular or W90
  --choices FILE  fit, alterations, cloth, bands, allowances; everything has a default
  --block FILE    the maker's own block; without it the block is drafted from the measures
  --paper NAME    a4 or letter; a4 where it is left out
  --language NAME en or de; en where it is left out
  --date DATE     printed at the foot, such as 2026-03-14; without it no date is printed
  --out DIR       where the file goes; made if it is not there`;

const DETAILS: Readonly<Record<CommandName, string>> = {
  draft: `Drafts one body and writes report.json, pattern.pdf, pattern.svg and pattern.dxf into DIR.

  --body FILE     the body: { "id": "…", "measures": { "chest": 960, "height": 1660 } }
  --size NAME     in place of --body: a standard size, such as W90-regular or W90
  --choices FILE  fit, alterations, cloth, bands, allowances; everything has a default
  --block FILE    the maker's own block; without it the block is drafted from the measures
${PRINT_DETAILS}
  --only SHEETS   these sheets alone, by their names on the page map: A1,A2,C3
  --copy-shop NAME  copy-shop.pdf as well: all on one large sheet of this paper, such as roll-914 or a0
  --projector     projector.pdf as well: one page at true size, light lines on dark over a grid
  --date DATE     printed on the sheets, such as 2026-03-14; without it no date is printed
  --out DIR       where the files go; made if it is not there

${PAPERS_LIST}`,
  batch: `Drafts every body of a table and writes DIR/summary.csv, DIR/refused.json and, for every
body, a folder DIR/ID as draft writes it. A body that is refused does not stop the others.

  --bodies FILE   CSV with the columns id, chest, height and any other measure
  --choices FILE  fit, alterations, cloth, bands, allowances; everything has a default
${PRINT_DETAILS}
  --no-sheets     report.json alone: no pdf, svg, dxf
  --out DIR       where the files go; made if it is not there

${PAPERS_LIST}`,
  check: `Reads a report back, measures every line of it again and prints what does not hold,
by seam or edge.`,
  block: `Brings a block of the maker's own in from a drawing or from its lengths by tape, prints what
its seams have to say, one line each, and writes it for draft --block.

  --drawing FILE     SVG, or a PDF that was drawn; lines named front, front.raglan and so on, or
                     told by their shapes
  --names FILE       what lines are called in the drawing: { "front": "path12", "back.side": "B3" }
  --allowances FILE  where the turnings are drawn, in mm:
                     { "raglan": 10, "side": 10, "underarm": 10, "hem": 30, "neckline": 10 }
  --tape FILE        in place of --drawing: { "unit": "mm", "halfWidth": 275, … }, see docs/files.md
  --out FILE         the block's file`,
  guide: `Writes DIR/guide.pdf: how to sew this garment, step by step, with its own lengths and pictures,
the cloth it needs and the rib's test on a table.

${HOME_DETAILS}`,
  handout: `Writes DIR/handout.pdf: from block to sweatshirt by hand, with blanks, the block at a quarter and
a fifth of its size, and the answers. Of a class it writes DIR/class.pdf: every pupil's block on a
sheet of its own. A pupil that is refused does not stop the others.

  --class FILE    in place of a body: CSV as for batch, 40 pupils at most
  --no-answers    without the answers on the last pages
${HOME_DETAILS}`,
  nest: `Writes DIR/nested.pdf: several sizes or bodies one over the other, ${MOST_NESTED} at most, each in a layer
that a PDF reader switches on and off, and with a kind of line of its own.

  --sizes NAMES   standard sizes, with commas between: W80,W90-tall,M100
  --bodies FILE   in place of sizes: CSV as for batch
  --choices FILE  fit, alterations, cloth, bands, allowances; everything has a default
${PRINT_DETAILS}
  --only SHEETS   these sheets alone, by their names on the page map: A1,A2,C3
  --date DATE     printed on the first page, such as 2026-03-14; without it no date is printed
  --out DIR       where the file goes; made if it is not there

${PAPERS_LIST}`,
  markers: `Writes the marks that are laid round a paper block when it is photographed, at true scale, one a
page, with how to lay and measure them.

  --out FILE      the PDF to write
  --marks NUMBER  ${FEWEST_MARKS} to ${MOST_MARKS}; ${FEWEST_MARKS} where it is left out
  --paper NAME    a4 or letter; a4 where it is left out
  --language NAME en or de; en where it is left out`,
};

const EXIT_STATUS = `Exit status: 0 all done, 2 some input was refused or does not hold, 1 the program failed.`;

/** The usage of one command, or of all. */
export const usageOf = (command: CommandName | null): string =>
  command === null
    ? [
        "Ribwright drafts raglan sweatshirts to measure: true-scale patterns with rib bands.",
        ...COMMANDS.map((name) => `  ${SYNOPSIS[name]}`),
        "More of each: npm run -s ribwright -- draft --help. The version: --version.",
        EXIT_STATUS,
      ].join("\n\n")
    : [`Usage:\n  ${SYNOPSIS[command]}`, DETAILS[command], EXIT_STATUS].join("\n\n");
