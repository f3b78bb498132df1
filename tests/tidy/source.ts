import { readdirSync, readFileSync } from "node:fs";
import { parseAst } from "vitest/node";

/** A file of the project: its path from the root, and its text. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** A node of the syntax tree, as the ESTree and TS-ESTree descriptions have it. */
export interface SyntaxNode {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

const isNode = (value: unknown): value is SyntaxNode =>
  typeof value === "object" && value !== null && "type" in value && typeof value.type === "string";

/** The node in a field of another, if there is one. */
export const child = (node: SyntaxNode, field: string): SyntaxNode | undefined => {
  const value = node[field];
  return isNode(value) ? value : undefined;
};

/** Calls `visit` with every node and the node above it. */
export function walk(root: SyntaxNode, visit: (node: SyntaxNode, above: SyntaxNode | undefined) => void): void {
  const waiting: [SyntaxNode, SyntaxNode | undefined][] = [[root, undefined]];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const [node, above] = next;
    visit(node, above);
    for (const value of Object.values(node))
      for (const below of Array.isArray(value) ? value : [value]) if (isNode(below)) waiting.push([below, node]);
  }
}

export const syntax = (file: SourceFile): SyntaxNode => parseAst(file.text, { lang: "ts" }) as unknown as SyntaxNode;

export const lineOf = (file: SourceFile, offset: number): number => file.text.slice(0, offset).split("\n").length;

/** The files below a folder whose names end so, sorted by path. */
export function filesBelow(folder: string, ending: string): SourceFile[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => `${folder}/${name}`)
    .filter((path) => path.endsWith(ending))
    .sort()
    .map((path) => ({ path, text: readFileSync(path, "utf8") }));
}
