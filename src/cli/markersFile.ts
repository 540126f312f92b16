import { basename, dirname } from "node:path";
import { markersPdf } from "../export/markerPages.ts";
import { printFont } from "./assets.ts";
import type { ExitStatus } from "./exitStatus.ts";
import type { MarkersCommand } from "./markers.ts";
import type { Voice } from "./progress.ts";
import { writeFiles } from "./writeFiles.ts";

/** `markers`: the pages that are laid round a block to photograph it. */
export const markers = async (
  { marks, paper, language, out }: MarkersCommand,
  voice: Voice,
): Promise<ExitStatus> => {
  const pdf = await markersPdf(marks, { font: printFont(), paper, language });
  return writeFiles(dirname(out), { [basename(out)]: pdf }, voice);
};
