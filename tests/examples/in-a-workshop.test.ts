import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { solve } from "../../src/compile.ts";
import { auditOf, SMALL_EXAMPLES, textOf } from "./compiled.ts";

const bytes = readFileSync("examples/workshops/tool-library.yaml");

/** With other kerfs, pieces on hand and prices, no promise is broken, and nothing is worse than a piece of advice about bits. */
it.each(SMALL_EXAMPLES)("%s in the workshop of the tool library", (name) => {
  const text = textOf(name);
  const source = { name: "plan.yaml", bytes: new TextEncoder().encode(text) };
  const { value, findings } = solve(source, { sizes: new Map(), workshop: { name: "workshop.yaml", bytes } });
  expect(findings.map(({ rule }) => rule).filter((rule) => rule !== "cutter-does-not-exist")).toEqual([]);
  expect(value && auditOf(text, value)).toEqual([]);
});

it("uses up the offcuts that fit, and says so in layouts and purchases", () => {
  const source = { name: "plan.yaml", bytes: new TextEncoder().encode(textOf("boot-bench")) };
  const build = solve(source, { sizes: new Map(), workshop: { name: "workshop.yaml", bytes } }).value;
  // Three pieces of 44 in, each for one slat of 42 in.
  const had = build?.layouts.filter(({ source: from }) => from === "on hand") ?? [];
  expect(had).toHaveLength(3);
  const lumber = build?.purchases.filter(({ section }) => section === "lumber") ?? [];
  expect(lumber.reduce((so, { onHand }) => so + onHand, 0)).toBe(3);
  expect(lumber.reduce((so, { quantity }) => so + quantity, 0)).toBe((build?.layouts.length ?? 0) - 3);
});
