import type { Finding } from "../../findings/finding.ts";
import { hasErrors, type Outcome } from "../../findings/outcome.ts";
import { measuredStockUnknown } from "../../findings/rules/measured-stock-unknown.ts";
import type { Span } from "../../findings/span.ts";
import { nearest } from "../../findings/suggest.ts";
import type { Draft, Formula } from "../../parse/draft.ts";
import { readFormula } from "../../parse/formulas/read-formula.ts";
import type { Length } from "../../units/length.ts";

/** The plan with thicknesses from the command line in place of its own. */
export function applyMeasured(draft: Draft, measured: ReadonlyMap<string, string>): Outcome<Draft> {
  const findings: Finding[] = [];
  const formulas = new Map<string, Formula>();
  for (const [name, text] of measured) {
    const stock = draft.stock.get(name);
    if (!stock) {
      const known = [...draft.stock.keys()];
      findings.push(measuredStockUnknown(draft.at, { name, known, nearest: nearest(name, known) }));
      continue;
    }
    const read = readFormula({ text: ofOne(text), place: (): Span => stock.measures?.at ?? stock.at });
    findings.push(...read.findings);
    if (read.value) formulas.set(name, read.value);
  }
  return hasErrors(findings) ? { findings } : { value: withMeasured(draft, formulas), findings };
}

/** The plan drawn for other thicknesses, of some of its stock. */
export const atThicknesses = (draft: Draft, thicknesses: ReadonlyMap<string, Length>): Draft =>
  withMeasured(
    draft,
    new Map([...thicknesses].map(([name, value]) => [name, { kind: "measure", value, at: draft.at } as const])),
  );

/** What was measured is one thickness: of a range that the plan has to survive, nothing is left. */
function withMeasured(draft: Draft, measured: ReadonlyMap<string, Formula>): Draft {
  const stock = [...draft.stock].map(([name, whole]) => {
    const found = measured.get(name);
    const { between: _, ...rest } = whole;
    return [name, found ? { ...rest, measured: found } : whole] as const;
  });
  return { ...draft, stock: new Map(stock) };
}

/** "7.03 for 10": a stack of ten pieces was measured. */
function ofOne(text: string): string {
  const [, stack, count] = /^(.+?)\s+for\s+([1-9]\d{0,3})$/u.exec(text.trim()) ?? [];
  return stack === undefined ? text : `(${stack}) / ${count}`;
}
