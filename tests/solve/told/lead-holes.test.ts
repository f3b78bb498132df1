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
  // NDS 2018, 12.1.6.3, from memory; a nail is 0.113 in thick. White oak (specific gravity 0.68): 0.1017 in, of bits by 1/64 in 3/32 in;
  // redcedar (0.47): 0.0848 in, 5/64 in.
  const chest = nailed("old-plans/cedar-chest").map(textOfStep);
  expect(chest.length).toBeGreaterThan(0);
  for (const each of chest)
    expect(each).toMatch(/\b(?:Do as in|As) step|For each nail bore a lead hole first, 5\/64 in across/u);
  expect(chest[0]).toContain("5/64 in across");
  expect(bits("old-plans/cedar-chest")).toContain("5/64 in");
  const rows = built("old-plans/cedar-chest").fastenerTable.filter(({ kind }) => kind === "nail");
  expect(rows.map(({ lead }) => lead && toInches(lead.diameter))).toEqual(rows.map(() => 5 / 64));
  for (const { lead, fasteners } of rows) expect([lead?.count]).toEqual([fasteners.length]);
  const { build } = solveText(textOf("old-plans/cedar-chest").replaceAll("wood: cedar", "wood: white oak"));
  const oak = build?.steps.map(textOfStep).join(" ");
  expect(oak).toContain("For each nail bore a lead hole first, 3/32 in across and 1 1/4 in deep");
});

test("brads into oak have theirs; no bit is wider than nine tenths of the wire", () => {
  // Brads are 0.048 in thick.
  const texts = nailed("old-plans/plant-stand").map(textOfStep).join(" ");
  expect(texts).toContain("For each brad bore a lead hole first, 1/32 in across");
  expect(bits("old-plans/plant-stand")).toContain("1/32 in");
});

test("no lead hole is deeper than the flutes of its bit are long", () => {
  // ASME B94.11M, jobber drills, from memory: 1/32 in 1/2 in, 5/64 in 1 in, 3/32 in 1 1/4 in. The brads are 1 1/4 in long, the nails 2 in.
  const depths = (name: string) =>
    built(name).fastenerTable.flatMap(({ lead }) => (lead ? [[toInches(lead.diameter), toInches(lead.depth)]] : []));
  expect(new Set(depths("old-plans/medicine-cabinet").map(String))).toEqual(new Set([`${1 / 32},0.5`]));
  for (const [wide, deep] of depths("old-plans/cedar-chest")) expect([wide, deep]).toEqual([5 / 64, 1]);
});
