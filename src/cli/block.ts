import { basename, dirname } from "node:path";
import type { BlockFile, OwnAllowances } from "../drafting/blockFile.ts";
import type { Fault } from "../drafting/fault.ts";
import { blockFileOf } from "../project/blockFileOf.ts";
import { type Given, readTape, readTurnings, withNames } from "../project/ownBlockInputs.ts";
import { sentence } from "../project/refusal.ts";
import { readJson, readText } from "../project/textFile.ts";
import { writeBlockFile } from "../project/writeProject.ts";
import { examine } from "../trace/doctor/examine.ts";
import { blockFromLines } from "../trace/edges/blockFromLines.ts";
import type { BroughtIn } from "../trace/edges/toBlock.ts";
import type { ReadLine } from "../trace/files/drawing.ts";
import { layPages } from "../trace/files/joinPages.ts";
import { placesByMarks } from "../trace/files/pageMarks.ts";
import { readPdf } from "../trace/files/pdfIn.ts";
import { readSvg } from "../trace/files/svgIn.ts";
import { blockByTape } from "../trace/tape/blockByTape.ts";
import type { BlockCommand } from "./blockCommand.ts";
import { type ExitStatus, REFUSED } from "./exitStatus.ts";
import type { Voice } from "./progress.ts";
import { LARGEST, readInput } from "./readInput.ts";
import { writeFiles } from "./writeFiles.ts";

const jsonFrom = (file: string): Given<unknown> => {
  const read = readInput(file, LARGEST.block);
  if ("fault" in read) return { faults: [read.fault] };
  const json = readJson(read.bytes, file);
  return "fault" in json ? { faults: [json.fault] } : { is: json.json };
};

const fromTape = (file: string): Given<BroughtIn> => {
  const json = jsonFrom(file);
  if ("faults" in json) return json;
  const tape = readTape(json.is);
  if ("faults" in tape) return tape;
  const told = blockByTape(tape.is);
  return "fault" in told ? { faults: [told.fault] } : { is: told.found };
};

const PDF_MARK = "%PDF-";

const pdfLines = async (bytes: Uint8Array): Promise<Given<readonly ReadLine[]>> => {
  const pages = await readPdf(bytes);
  if ("fault" in pages) return { faults: [pages.fault] };
  const [first] = pages.found;
  const alone = first ? [{ page: first.page, x: 0, y: 0 }] : [];
  // Tiles without the tool's marks are put together by hand, in the studio.
  const places = placesByMarks(pages.found) ?? (pages.found.length === 1 ? alone : null);
  if (places) return { is: layPages(pages.found, places) };
  const fault: Fault = {
    field: "drawing",
    value: `${pages.found.length} pages`,
    reason: `The PDF has ${pages.found.length} pages without this tool's corner marks, so it is not told how they lie together.`,
    do: "Put them together in the studio, or save the block on one page.",
  };
  return { faults: [fault] };
};

const linesFrom = async (file: string): Promise<Given<readonly ReadLine[]>> => {
  const read = readInput(file, LARGEST.drawing);
  if ("fault" in read) return { faults: [read.fault] };
  const head = new TextDecoder("latin1").decode(read.bytes.subarray(0, PDF_MARK.length));
  if (head === PDF_MARK || /\.pdf$/iu.test(file)) return pdfLines(read.bytes);
  const text = readText(read.bytes, file);
  if ("fault" in text) return { faults: [text.fault] };
  const svg = readSvg(text.text);
  return "fault" in svg ? { faults: [svg.fault] } : { is: svg.found.lines };
};

const turningsFrom = (file: string | null): Given<OwnAllowances | null> => {
  if (file === null) return { is: null };
  const json = jsonFrom(file);
  return "faults" in json ? json : readTurnings(json.is);
};

const named = (lines: readonly ReadLine[], file: string | null): Given<readonly ReadLine[]> => {
  if (file === null) return { is: lines };
  const json = jsonFrom(file);
  return "faults" in json ? json : withNames(lines, json.is);
};

type FromDrawing = Extract<BlockCommand["from"], { readonly drawing: string }>;

const fromDrawing = async (from: FromDrawing): Promise<Given<BroughtIn>> => {
  const turnings = turningsFrom(from.allowances);
  if ("faults" in turnings) return turnings;
  const lines = await linesFrom(from.drawing);
  if ("faults" in lines) return lines;
  const called = named(lines.is, from.names);
  if ("faults" in called) return called;
  const told = blockFromLines(called.is, turnings.is);
  return "fault" in told ? { faults: [told.fault] } : { is: told.found };
};

/** `block`: a block of the maker's own from a drawing or a tape, examined and written. */
export const block = async ({ from, out }: BlockCommand, voice: Voice): Promise<ExitStatus> => {
  const brought = "tape" in from ? fromTape(from.tape) : await fromDrawing(from);
  if ("faults" in brought) {
    for (const fault of brought.faults) voice.err(`${sentence(fault)}\n`);
    return REFUSED;
  }
  const { block: made, assumed } = brought.is;
  const file: BlockFile = blockFileOf(made);
  const status = writeFiles(dirname(out), { [basename(out)]: writeBlockFile(file) }, voice);
  if (status === REFUSED) return status;
  for (const what of assumed) voice.err(`assumed: ${what}\n`);
  const findings = examine(made).filter(({ verdict }) => verdict !== "sound");
  for (const { id, verdict, message } of findings) voice.out(`${id}: ${verdict}: ${message}\n`);
  voice.err(
    findings.length > 0
      ? `${out}: ${findings.length} to look at.\n`
      : `${out}: all seams of the block meet.\n`,
  );
  return status;
};
