/** Measures in a file that has no sizes to name: worked out at once, in the file's own units. */

import type { Finding } from "../../findings/finding.ts";
import { wrongValue } from "../../findings/rules/wrong-value.ts";
import { inches, type Length, millimetres } from "../../units/length.ts";
import { multiply, sign } from "../../units/rational.ts";
import type { Formula, Units } from "../draft.ts";

/** A measure above zero (or not below it), else undefined and a finding. */
export function measureIn(
  formula: Formula,
  { units, key, findings, zero = false }: { units: Units; key: string; findings: Finding[]; zero?: boolean },
): Length | undefined {
  const value = plainLength(formula, units);
  if (value !== undefined && (sign(value) > 0 || (zero && sign(value) === 0))) return value;
  findings.push(
    wrongValue(formula.at, { key, wanted: "a measure, such as 34 1/2", found: value ? "less" : "a formula" }),
  );
  return undefined;
}

export function plainLength(formula: Formula, units: Units): Length | undefined {
  if (formula.kind === "measure") return formula.value;
  return formula.kind === "number" ? multiply(formula.value, units === "inch" ? inches(1) : millimetres(1)) : undefined;
}
