import ts from "typescript";
import { lineAt, type SourceFile, walk } from "./sourceFile.ts";

/** A function with a body: where it stands and how many lines it takes. */
type Sized = { readonly where: string; readonly lines: number; readonly isMarkup: boolean };

/** What is counted in one file. Rules: a function is anything with a body, arrows included. */
export type Counts = {
  readonly functions: readonly Sized[];
  readonly wide: number;
  readonly exported: number;
  readonly documented: number;
  readonly commentLines: number;
  readonly writtenLines: number;
  /** Places of what the house style does not have, by its name. */
  readonly unwanted: Readonly<Record<Unwanted, readonly string[]>>;
};

export const UNWANTED = [
  "any",
  "as",
  "!",
  "class",
  "default export",
  "barrel",
  "TODO",
  "bare tolerance",
] as const;
export type Unwanted = (typeof UNWANTED)[number];

const MOST_PARAMETERS = 4;

const hasBody = (node: ts.Node): node is ts.FunctionLikeDeclaration =>
  (ts.isFunctionDeclaration(node) ||
    ts.isFunctionExpression(node) ||
    ts.isArrowFunction(node) ||
    ts.isMethodDeclaration(node) ||
    ts.isConstructorDeclaration(node) ||
    ts.isAccessor(node)) &&
  node.body !== undefined;

const isMarked = (node: ts.Node, kind: ts.SyntaxKind): boolean =>
  ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some((mark) => mark.kind === kind);

const isDocumented = ({ tree }: SourceFile, node: ts.Node): boolean =>
  (ts.getLeadingCommentRanges(tree.text, node.getFullStart()) ?? []).some(({ pos }) =>
    tree.text.startsWith("/**", pos),
  );

const isBarrel = ({ tree }: SourceFile): boolean =>
  tree.statements.some(ts.isExportDeclaration) &&
  tree.statements.every((s) => ts.isExportDeclaration(s) || ts.isImportDeclaration(s));

const holdsMarkup = (node: ts.Node): boolean => {
  let found = false;
  walk(node, (inner) => {
    if (ts.isJsxElement(inner) || ts.isJsxSelfClosingElement(inner)) found = true;
  });
  return found;
};

/** What the compiler knows of a node that the style does not have, or null. */
const unwantedAt = (node: ts.Node, tree: ts.SourceFile): Unwanted | null => {
  if (ts.isNonNullExpression(node)) return "!";
  if (node.kind === ts.SyntaxKind.AnyKeyword) return "any";
  if (ts.isAsExpression(node) && node.type.getText(tree) !== "const") return "as";
  if (ts.isClassLike(node)) return "class";
  const isDefault = ts.isExportAssignment(node) || isMarked(node, ts.SyntaxKind.DefaultKeyword);
  return isDefault ? "default export" : null;
};

const isComment = (line: string): boolean => /^\s*(\/\/|\/\*|\*)/.test(line);

/** A number such as 1e-9 on a line that gives it no name of its own. */
const isBareTolerance = (line: string): boolean =>
  /\b\d(\.\d+)?e-\d+\b/.test(line) && !isComment(line) && !/const [A-Z_]+\b.*=/.test(line);

const emptyUnwanted = (): Record<Unwanted, string[]> => ({
  any: [],
  as: [],
  "!": [],
  class: [],
  "default export": [],
  barrel: [],
  TODO: [],
  "bare tolerance": [],
});

const unwantedLines = (source: SourceFile, found: Record<Unwanted, string[]>): void => {
  for (const [i, line] of source.lines.entries()) {
    const where = `${source.file}:${i + 1}`;
    if (/\b(TODO|FIXME|XXX|HACK)\b/.test(line)) found.TODO.push(where);
    if (isBareTolerance(line)) found["bare tolerance"].push(where);
  }
  if (isBarrel(source)) found.barrel.push(source.file);
};

export const countIn = (source: SourceFile): Counts => {
  const { file, tree, lines } = source;
  const functions: Sized[] = [];
  const unwanted = emptyUnwanted();
  let [wide, exported, documented] = [0, 0, 0];
  unwantedLines(source, unwanted);
  walk(tree, (node) => {
    const first = lineAt(tree, node.getStart(tree));
    const where = `${file}:${first + 1}`;
    const kind = unwantedAt(node, tree);
    if (kind) unwanted[kind].push(where);
    if (hasBody(node)) {
      const size = lineAt(tree, node.getEnd()) - first + 1;
      functions.push({ where, lines: size, isMarkup: size > 40 && holdsMarkup(node) });
      if (node.parameters.length > MOST_PARAMETERS) wide++;
    }
    if (isMarked(node, ts.SyntaxKind.ExportKeyword)) {
      exported++;
      if (isDocumented(source, node)) documented++;
    }
  });
  return {
    functions,
    wide,
    exported,
    documented,
    commentLines: lines.filter(isComment).length,
    writtenLines: lines.filter((line) => line.trim() !== "").length,
    unwanted,
  };
};
