import { child, lineOf, type SourceFile, type SyntaxNode, syntax, walk } from "./source.ts";

/** Words of programmers and words that blame, which a maker should never have to read. */
const UNKIND =
  /\b(invalid|illegal|unexpected token|null|undefined|NaN|boolean|string|parse[dr]?|regex|exception)\b|!(\s|$)/i;

/** A sentence for each text of a rule with such a word. The examples are sources, not words of ours. */
export function unkindWords(file: SourceFile): string[] {
  const found: string[] = [];
  const root = syntax(file);
  const spared = new Set<SyntaxNode>();
  walk(root, (node, above) => {
    const key = above?.type === "Property" ? child(above, "key")?.name : undefined;
    const isExample = (key === "wrong" || key === "right") && above?.value === node;
    const isType = node.type.startsWith("TS") || node.type === "ImportDeclaration";
    if (isExample || isType || (above !== undefined && spared.has(above))) spared.add(node);
    const text = spared.has(node) ? "" : textOf(node);
    const word = UNKIND.exec(text)?.[0];
    if (word !== undefined) found.push(`${file.path}:${lineOf(file, node.start)} says "${word.trim()}"`);
  });
  return found;
}

function textOf(node: SyntaxNode): string {
  if (node.type === "Literal" && typeof node.value === "string") return node.value;
  const raw = node.type === "TemplateElement" ? node.value : undefined;
  return typeof raw === "object" && raw !== null && "cooked" in raw ? String(raw.cooked) : "";
}

/** The places where a file names a folder of somebody's machine: it would mean nothing anywhere else. */
export function privateFolders({ path, text }: SourceFile): string[] {
  const lines = text.split("\n");
  return lines.flatMap((line, i) => {
    const folder = /(?:^|[\s"'`(=:])\/(?:work|home|root|Users)\/\w+/.exec(line)?.[0];
    return folder === undefined ? [] : [`${path}:${i + 1} names ${folder.trim()}`];
  });
}
