import type { Finding } from "../../findings/finding.ts";
import { hasErrors, type Outcome } from "../../findings/outcome.ts";
import { settingUnknown } from "../../findings/rules/setting-unknown.ts";
import type { Span } from "../../findings/span.ts";
import { nearest } from "../../findings/suggest.ts";
import type { Draft, SizeDraft } from "../../parse/draft.ts";
import { readFormula } from "../../parse/formulas/read-formula.ts";
import { normaliseName } from "../../parse/names.ts";

/** The plan with sizes from the command line in place of its own: first among `sizes`, then of the outside. */
export function applySettings(draft: Draft, settings: ReadonlyMap<string, string>): Outcome<Draft> {
  const findings: Finding[] = [];
  const sizes = new Map(draft.sizes);
  const outside = new Map<string, SizeDraft>(Object.entries(draft.outside));
  for (const [key, text] of settings) {
    const name = normaliseName(key);
    const table = sizes.has(name) ? sizes : outside;
    const size = table.get(name);
    if (!size) {
      const known = [...sizes.keys(), ...outside.keys()];
      findings.push(settingUnknown(draft.at, { name, known, nearest: nearest(name, known) }));
      continue;
    }
    const read = readFormula({ text, place: (): Span => size.at });
    findings.push(...read.findings);
    if (read.value) table.set(name, { ...size, value: read.value });
  }
  if (hasErrors(findings)) return { findings };
  const kept = (word: "width" | "depth" | "height") => {
    const size = outside.get(word);
    return size ? { [word]: size } : {};
  };
  return { value: { ...draft, sizes, outside: { ...kept("width"), ...kept("depth"), ...kept("height") } }, findings };
}
