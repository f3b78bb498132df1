import { readFileSync } from "node:fs";
import { andThen, hasErrors, type Outcome } from "../../../src/findings/outcome.ts";
import { parse } from "../../../src/parse/index.ts";
import { design } from "../../../src/solve/design/index.ts";
import type { Design, Part } from "../../../src/solve/design.ts";
import { printLength } from "../../../src/units/index.ts";

/** Text to Design. */
export const designOf = (text: string, sizes: Readonly<Record<string, string>> = {}): Outcome<Design> =>
  andThen(parse({ name: "test.yaml", bytes: new TextEncoder().encode(text) }), (draft) =>
    design(draft, { sizes: new Map(Object.entries(sizes)) }),
  );

/** The design of a source that must have no errors. */
export function soundDesign(text: string, sizes: Readonly<Record<string, string>> = {}): Design {
  const { value, findings } = designOf(text, sizes);
  if (!value || hasErrors(findings)) throw new Error(findings.map((f) => `${f.at.line}: ${f.message}`).join("\n"));
  return value;
}

export const exampleText = (name: string): string =>
  readFileSync(new URL(`../../../examples/${name}.yaml`, import.meta.url), "utf8");

/** "3/4 × 3 × 11" */
export const sizeOf = (part: Part, units: "inch" | "mm" = "inch"): string =>
  [part.thickness, part.width, part.length].map((l) => printLength(l, { units }).text).join(" × ");

/** Number of parts of each size: a cut list without names, lines of equal size added up. */
export function bill(design: Design): ReadonlyMap<string, number> {
  const lines = new Map<string, number>();
  for (const part of design.parts) {
    const size = sizeOf(part, design.units);
    lines.set(size, (lines.get(size) ?? 0) + 1);
  }
  return lines;
}
