import type { Formula, StockDraft } from "../../../src/parse/draft.ts";
import { resolveStock } from "../../../src/solve/design/stock/resolve.ts";
import { inches, type Length, millimetres, multiply, rational, readLength } from "../../../src/units/index.ts";

export const AT = { start: 0, end: 1, line: 1, column: 1 };

/** `1 1/2` in the plan's units, as a formula. */
export const size = (text: string): Formula => {
  const value = readLength(text.replace("-", ""), "inch") ?? inches(0);
  const measure: Formula = { kind: "measure", value, at: AT };
  return text.startsWith("-") ? { kind: "negate", of: measure, at: AT } : measure;
};
const evaluate = (formula: Formula): Length | null => {
  if (formula.kind === "measure") return formula.value;
  if (formula.kind === "negate") return multiply(evaluate(formula.of) ?? inches(0), rational(-1));
  return null;
};

type Said = Partial<Omit<StockDraft, "soldAs" | "wood">> & { readonly soldAs?: string; readonly wood?: string };

/** A stock of the plan, as `resolveStock` sees it. */
export function resolve({ soldAs, wood, ...more }: Said, units: "inch" | "mm" = "inch") {
  const draft: StockDraft = {
    name: "stuff",
    at: AT,
    ...more,
    ...(soldAs === undefined ? {} : { soldAs: { value: soldAs, at: AT } }),
    ...(wood === undefined ? {} : { wood: { value: wood, at: AT } }),
  };
  const { value, findings } = resolveStock(draft, evaluate, units);
  return { stock: value, findings, rules: findings.map(({ rule }) => rule) };
}

export const inch = (text: string): Length => readLength(text, "inch") ?? inches(0);
export const mm = (n: number): Length => millimetres(Math.round(n * 10), 10);
