/** What is needed to work out how parts are made. */
import type { Finding } from "../../../findings/finding.ts";
import { makingSizeNotPositive } from "../../../findings/rules/making-size-not-positive.ts";
import type { Formula, Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { sign } from "../../../units/rational.ts";
import type { Part, Stock } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";

export interface MakingContext {
  readonly units: Units;
  readonly directory: Directory;
  /** A length above zero; null when it is none, which has then been reported. */
  readonly positive: (formula: Formula, what: string) => Length | null;
  readonly stockOf: (part: Part) => Stock | null;
  readonly speciesOf: (part: Part) => string | null;
  readonly print: (length: Length) => string;
  readonly report: (finding: Finding) => void;
}

export function makingContext(
  stock: ReadonlyMap<string, Stock | null>,
  measure: (formula: Formula) => Length | null,
  base: Pick<MakingContext, "units" | "directory" | "print" | "report">,
): MakingContext {
  return {
    ...base,
    positive(formula, what) {
      const value = measure(formula);
      if (value === null || sign(value) > 0) return value;
      base.report(makingSizeNotPositive(formula.at, { what }));
      return null;
    },
    stockOf: (part) => stock.get(part.stock) ?? null,
    speciesOf: (part) => stock.get(part.stock)?.species ?? null,
  };
}
