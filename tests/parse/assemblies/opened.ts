import { expect } from "vitest";
import { expandSource } from "../../../src/compile.ts";
import type { Build } from "../../../src/solve/build.ts";
import { printLength } from "../../../src/units/index.ts";
import { auditOf, said, solveText } from "../../examples/compiled.ts";
import { sizeOf } from "../../solve/design/plan.ts";

/** A plan of which nothing is found and whose record the auditor passes. */
export function sound(text: string): Build {
  const { build, findings } = solveText(text);
  expect(said(findings)).toEqual([]);
  if (build === undefined) throw new Error("nothing was built");
  expect(auditOf(text, build)).toEqual([]);
  return build;
}

/** The parts of a plan by name, as the cut list gives them: "3/4 × 3 × 11". */
export const partsOf = (text: string): Readonly<Record<string, string>> => {
  const { design } = sound(text);
  return Object.fromEntries(design.parts.map((part) => [part.id, sizeOf(part, design.units)]));
};

/** The cut list of a plan, and the same after its assemblies were opened. */
export function cutLists(text: string): readonly [own: readonly unknown[], opened: readonly unknown[]] {
  const { value } = expandSource({ name: "plan.yaml", bytes: new TextEncoder().encode(text) }, new Map());
  return [cutList(text), cutList(value ?? "")];
}

const cutList = (text: string): readonly unknown[] => {
  const { cutList, design } = sound(text);
  const print = (length: Parameters<typeof printLength>[0]): string => printLength(length, design).text;
  return cutList.map(({ mark, name, parts, notes, ...line }) => [
    mark,
    name,
    parts,
    notes,
    [line.thickness, line.width, line.length].map(print),
  ]);
};
