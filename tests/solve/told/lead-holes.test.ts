import { expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { built, solveText, textOf } from "../../examples/compiled.ts";
import { plain, textOfStep } from "./examples.ts";

const nailed = (name: string) =>
  built(name).steps.filter(({ actions }) =>
    actions.some((action) => action.do === "drive" && action.tool === "hammer"),
  );
const bits = (name: string): string =>
  plain(built(name).tools.find(({ tool }) => tool.startsWith("Drill bits"))?.tool ?? "");

test("nails have lead holes of at most nine tenths of their diameter in dense wood, of three quarters in lighter wood", () => {
  // NDS 2018, 12.1.6.3, from memory. Box nails (ASTM F1667, from memory) of 1 3/4 in are 0.080 in thick, of 2 in 0.099 in. Redcedar (specific gravity
  // 0.47): 0.060 and 0.074 in, of bits by 1/64 in 3/64 and 1/16; white oak (0.68): 0.072 and 0.089 in, 1/16 and 5/64.
  const chest = nailed("old-plans/cedar-chest").map(textOfStep);
  expect(chest.length).toBeGreaterThan(0);
  for (const each of chest)
    expect(each).toMatch(/\b(?:Do as in|As) step|For each nail bore a lead hole first, (?:3\/64|1\/16) in across/u);
  expect(bits("old-plans/cedar-chest")).toContain("1/16 in");
  const rows = built("old-plans/cedar-chest").fastenerTable.filter(({ kind }) => kind === "nail");
  expect(rows.map(({ item, lead }) => [item, lead && toInches(lead.diameter)])).toEqual([
    [expect.stringMatching(/^nail 1.3.4.in long$/u), 3 / 64],
    [expect.stringMatching(/^nail 2.in long$/u), 1 / 16],
  ]);
  for (const { lead, fasteners } of rows) expect([lead?.count]).toEqual([fasteners.length]);
  const { build } = solveText(textOf("old-plans/cedar-chest").replaceAll("wood: cedar", "wood: white oak"));
  const oak = build?.steps.map(textOfStep).join(" ");
  expect(oak).toContain("For each nail bore a lead hole first, 5/64 in across and 1 in deep");
});

test("where a bit is too short for the nail, a thinner one goes on; how thick they are is told where they are bought", () => {
  // 2 - 1/4 in are wanted, and the flutes of a 1/16 in bit are 7/8 in long (ASME B94.11M, from memory).
  const { steps, purchases } = built("old-plans/cedar-chest");
  expect(steps.map(textOfStep).join(" ")).toContain(
    "1/16 in across and 7/8 in deep, or the wood splits, and go on to 1 3/4 in with a thinner nail in the chuck, its head nipped off",
  );
  const bought = purchases.filter(({ item }) => item.startsWith("nail")).map(({ note }) => plain(note ?? ""));
  expect(bought).toEqual([
    expect.stringContaining("about 5/64 in thick"),
    expect.stringContaining("about 3/32 in thick"),
  ]);
});

test("brads into oak have theirs; no bit is wider than nine tenths of the wire", () => {
  // Brads are 0.048 in thick.
  const texts = nailed("old-plans/plant-stand").map(textOfStep).join(" ");
  expect(texts).toContain("For each brad bore a lead hole first, 1/32 in across");
  expect(bits("old-plans/plant-stand")).toContain("1/32 in");
});

test("no lead hole is deeper than the flutes of its bit are long", () => {
  // ASME B94.11M, jobber drills, from memory: 1/32 in 1/2 in, 5/64 in 1 in, 3/32 in 1 1/4 in. 3/64 in 3/4 in, 1/16 in 7/8 in.
  const depths = (name: string) =>
    built(name).fastenerTable.flatMap(({ lead }) => (lead ? [[toInches(lead.diameter), toInches(lead.depth)]] : []));
  expect(new Set(depths("old-plans/medicine-cabinet").map(String))).toEqual(new Set([`${1 / 32},0.5`]));
  for (const [wide, deep] of depths("old-plans/cedar-chest"))
    expect([3 / 64, 1 / 16].indexOf(wide as number)).toBe([3 / 4, 7 / 8].indexOf(deep as number));
});

test("how one goes on with a nail is told once, and later steps refer to it", () => {
  const steps = built("old-plans/cedar-chest").steps.map((each) => ({ ...each, told: textOfStep(each) }));
  const nipped = steps.filter(({ told }) => told.includes("its head nipped off"));
  expect(nipped).toHaveLength(1);
  const later = steps.filter(({ told }) => told.includes(`in the chuck as in step ${nipped[0]?.number}`));
  expect(later.length).toBeGreaterThan(5);
  expect(later.every(({ number }) => number > (nipped[0]?.number ?? Number.POSITIVE_INFINITY))).toBe(true);
  // Its bit and its depth stand in each step; the offcut once for each size.
  for (const { told } of later)
    expect(told).toMatch(/first, (?:3\/64 in across and 3\/4|1\/16 in across and 7\/8) in deep/u);
  expect(steps.filter(({ told }) => /lead hole first[^.]*; try it in an offcut/u.test(told))).toHaveLength(2);
});
