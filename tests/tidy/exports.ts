import { child, lineOf, type SourceFile, type SyntaxNode, syntax } from "./source.ts";

/**
 * A sentence for each export called `then`. Who imports such a module on demand waits for ever: `await import()` takes the module
 * for a promise and calls its `then` (ECMA-262, promise resolve functions: an object with a callable `then` is followed).
 */
export function thenables(file: SourceFile): string[] {
  const statements = syntax(file).body as readonly SyntaxNode[];
  return statements
    .filter((statement) => exportedNames(statement).includes("then"))
    .map((statement) => `${file.path}:${lineOf(file, statement.start)} exports a "then"`);
}

/** The names that a statement exports, those of types left out. */
function exportedNames(statement: SyntaxNode): string[] {
  if (statement.type === "ExportAllDeclaration") return nameOf(child(statement, "exported"));
  if (statement.type !== "ExportNamedDeclaration" || statement.exportKind === "type") return [];
  const declared = child(statement, "declaration");
  const specifiers = (statement.specifiers ?? []) as readonly SyntaxNode[];
  return [
    ...specifiers.flatMap((specifier) => nameOf(child(specifier, "exported"))),
    ...(declared === undefined ? [] : declaredNames(declared)),
  ];
}

function declaredNames(declaration: SyntaxNode): string[] {
  if (declaration.type !== "VariableDeclaration") return nameOf(child(declaration, "id"));
  return (declaration.declarations as readonly SyntaxNode[]).flatMap((each) => boundNames(child(each, "id")));
}

/** Every name in a pattern: `a`, `{ b: c }`, `[d, ...e]`, `{ f = 1 }`. */
function boundNames(pattern: SyntaxNode | undefined): string[] {
  if (pattern === undefined) return [];
  if (pattern.type === "Identifier") return nameOf(pattern);
  const parts = [pattern.properties, pattern.elements, pattern.value, pattern.argument, pattern.left].flat();
  return parts.flatMap((part) => boundNames((part ?? undefined) as SyntaxNode | undefined));
}

/** An identifier's name, or the text of a name in quotes. */
const nameOf = (node: SyntaxNode | undefined): string[] => {
  const name = node?.name ?? node?.value;
  return typeof name === "string" ? [name] : [];
};
