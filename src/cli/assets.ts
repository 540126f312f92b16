import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const FONT = "assets/fonts/NotoSans-subset.ttf";

/** The project's folder: the first above this file that has the font. */
const rootFrom = (folder: string): string => {
  if (existsSync(join(folder, FONT))) return folder;
  const above = dirname(folder);
  if (above === folder) throw new Error(`${FONT} is not in the project's folder`);
  return rootFrom(above);
};

const root = (): string => rootFrom(dirname(fileURLToPath(import.meta.url)));

/** The font that the sheets are printed in. */
export const printFont = (): Uint8Array => readFileSync(join(root(), FONT));
