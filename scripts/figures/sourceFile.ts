import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, join } from "node:path";
import ts from "typescript";

/** A file of code, read and parsed once. */
export type SourceFile = {
  readonly file: string;
  readonly tree: ts.SourceFile;
  readonly lines: readonly string[];
};

const isCode = (file: string): boolean => /\.(ts|tsx|mjs)$/.test(file) && !/\.d\.ts$/.test(file);

/** Tables of numbers and of words: their length says nothing about how the code reads. */
export const isTable = (file: string): boolean => /\/(data|words)\//.test(file);

/** Every code file under a folder; none where it is not there. */
export const filesUnder = (folder: string): readonly string[] =>
  statSync(folder, { throwIfNoEntry: false })
    ? readdirSync(folder, { recursive: true, encoding: "utf8" })
        .map((name) => join(folder, name))
        .filter((file) => isCode(basename(file)))
        .sort()
    : [];

export const parse = (file: string): SourceFile => {
  const text = readFileSync(file, "utf8");
  const kind = file.endsWith(".tsx") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind);
  return { file, tree, lines: text.replace(/\n$/, "").split("\n") };
};

export const lineAt = (tree: ts.SourceFile, place: number): number =>
  tree.getLineAndCharacterOfPosition(place).line;

export const walk = (node: ts.Node, visit: (node: ts.Node) => void): void => {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
};
