import { child, lineOf, type SourceFile, type SyntaxNode, syntax, walk } from "./source.ts";

const CLOCK = "the same source gives the same plan at any time of day";
const CHANCE = "the same source gives the same plan in every run";
const WORLD = "only src/cli touches files, network, environment and terminal";
const LOCALE = "the same source gives the same plan in every country";
const ROUNDING = "its last digit differs between processors; src/geometry/angle.ts has its own";

/** Names that mean something outside the program, each with the reason why no phase may use it. */
const GLOBALS: ReadonlyMap<string, string> = new Map([
  ...["Date", "performance", "setTimeout", "setInterval", "setImmediate", "queueMicrotask"].map(
    (n) => [n, CLOCK] as const,
  ),
  ...["crypto"].map((n) => [n, CHANCE] as const),
  ...["process", "console", "require", "fetch", "navigator", "globalThis", "eval", "Function"].map(
    (n) => [n, WORLD] as const,
  ),
  ...["Intl"].map((n) => [n, LOCALE] as const),
]);

/** The same for properties, whatever they are taken from. */
const PROPERTIES: ReadonlyMap<string, string> = new Map(
  [
    "localeCompare",
    "toLocaleString",
    "toLocaleDateString",
    "toLocaleTimeString",
    "toLocaleUpperCase",
    "toLocaleLowerCase",
  ].map((n) => [n, LOCALE]),
);

/** And for functions of Math. */
const MATHS: ReadonlyMap<string, string> = new Map([
  ["random", CHANCE],
  ...["sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1"].map(
    (n) => [n, ROUNDING] as const,
  ),
  ...["log", "log2", "log10", "log1p", "pow", "hypot", "cbrt"].map((n) => [n, ROUNDING] as const),
]);

/** A sentence for each forbidden name in a file. */
export function impurities(file: SourceFile): string[] {
  const found = new Set<string>();
  walk(syntax(file), (node, above) => {
    const [name, reason] = forbidden(node, above) ?? [];
    if (name !== undefined) found.add(`${file.path}:${lineOf(file, node.start)} uses ${name}: ${reason}`);
  });
  return [...found];
}

function forbidden(node: SyntaxNode, above: SyntaxNode | undefined): readonly [string, string] | undefined {
  if (node.type === "MemberExpression") {
    const name = propertyName(node);
    const owner = child(node, "object");
    const table = owner?.type === "Identifier" && owner.name === "Math" ? MATHS : PROPERTIES;
    const reason = table.get(name);
    return reason === undefined ? undefined : [table === MATHS ? `Math.${name}` : name, reason];
  }
  if (node.type === "BinaryExpression" && node.operator === "**" && !isExact(node)) return ["**", ROUNDING];
  if (node.type !== "Identifier" || typeof node.name !== "string" || isLabel(node, above)) return undefined;
  if (node.name === "Math" && above?.type !== "MemberExpression") return ["Math as a whole", ROUNDING];
  const reason = GLOBALS.get(node.name);
  return reason === undefined ? undefined : [node.name, reason];
}

/** Powers that every processor gives alike: of whole numbers (`10n ** x`), and of two by a number written out (`2 ** -49`). */
function isExact(node: SyntaxNode): boolean {
  const [left, right] = [child(node, "left"), child(node, "right")];
  const power = right?.type === "UnaryExpression" ? child(right, "argument") : right;
  return typeof left?.bigint === "string" || (left?.value === 2 && Number.isInteger(power?.value));
}

const propertyName = (node: SyntaxNode): string => {
  const property = child(node, "property");
  return String((node.computed ? property?.value : property?.name) ?? "");
};

/** Whether an identifier only names a field: `a.process`, `{ process: 1 }`, `readonly process: string`. */
function isLabel(node: SyntaxNode, above: SyntaxNode | undefined): boolean {
  if (above === undefined || above.computed === true) return false;
  if (above.type === "MemberExpression") return above.property === node;
  return above.key === node && above.shorthand !== true;
}
