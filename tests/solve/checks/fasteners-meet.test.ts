/** Nails and screws of two joints in one part; places by hand from the plan in the text. */
import { expect, test } from "vitest";
import { type Length, UNITS_PER_INCH } from "../../../src/units/length.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { solveCopy, solveText, textOf } from "../../examples/compiled.ts";

const CHEST = textOf("old-plans/cedar-chest");
const met = (text: string): number => solveText(text).findings.filter(({ rule }) => rule === "fasteners-meet").length;

// The nails of the ends lie 1 1/2 in above the bottom, those of the bottom come 1 1/8 in up: 1 in above it they would cross, and the row goes higher.
test("nails go past those that come up from below", () => {
  expect(met(CHEST)).toBe(0);
  expect(met(CHEST.replaceAll("count: 5, in from ends: 1 1/2 }", "count: 5, in from ends: 1 }"))).toBe(0);
});

const KEYS = textOf("key-cabinet");
const inches = (length: Length): number => toNumber(length) / UNITS_PER_INCH;

// Seven hooks 1 3/16 in from the ends of a rail 16 9/16 in long are 2 23/64 in apart, four brads 1 in from its ends 4 55/64 in: the second comes 1/16 in
// beside the third hook. Both are in the middle of the rail's width; brad and hole reach 13/32 and 1/2 in into 3/4 in of wood.
test("brads go past the holes that hooks are turned into", () => {
  const { build, findings } = solveCopy(KEYS, {});
  expect(findings.filter(({ rule }) => rule === "fasteners-meet")).toEqual([]);
  const rails = build?.parts.filter(({ id }) => id.startsWith("key-rail")) ?? [];
  expect(rails).toHaveLength(3);
  for (const { id } of rails) {
    const hooks = build?.holes.filter(({ part }) => part === id).map(({ at }) => inches(at[0])) ?? [];
    const brads = build?.fasteners.filter(({ into }) => into === id).map(({ head }) => inches(head.at[0])) ?? [];
    expect([hooks.length, brads.length]).toEqual([7, 4]);
    // 3/32 in of hole, 3/64 in of brad, 1/32 in of wood between.
    for (const hook of hooks)
      for (const brad of brads) expect(Math.abs(hook - brad)).toBeGreaterThan(3 / 64 + 3 / 128 + 1 / 32);
  }
});

// Sixteen to a rail are 1 in apart, and five brads at fixed places among them.
test("a brad that no row brings past a hole is told", () => {
  const crowded = KEYS.replace(
    "{ fit: key-hook, to: key-rail, count: 7 }",
    "{ fit: key-hook, to: key-rail, count: 24 }",
  ).replace("with: brads, glue: yes", "with: brads, count: 12, glue: yes");
  const { findings } = solveCopy(crowded, {});
  expect(findings.find(({ rule }) => rule === "fasteners-meet")?.message).toMatch(
    /a brad through .* and the hole of a hook meet in key-rail/u,
  );
});
