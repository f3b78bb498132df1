import { expect, test } from "vitest";
import { readSoldAs } from "../../../src/solve/design/stock/sold-as.ts";
import type { Length } from "../../../src/units/index.ts";
import { inch, mm } from "./draft.ts";

test.each<[string, string, string]>([
  ["2x4", "1 1/2", "3 1/2"],
  ["2×4", "1 1/2", "3 1/2"],
  ["2 x 4", "1 1/2", "3 1/2"],
  ["2 by 4", "1 1/2", "3 1/2"],
  ["2X4 spruce, kiln-dried", "1 1/2", "3 1/2"],
  ['2" x 4"', "1 1/2", "3 1/2"],
  ["1x6", "3/4", "5 1/2"],
  ["1x8 pine board", "3/4", "7 1/4"],
  ["4x4", "3 1/2", "3 1/2"],
  ["6x6", "5 1/2", "5 1/2"],
  ["5/4x6 cedar", "1", "5 1/2"],
  ["2-1/2 x 4", "2", "3 1/2"],
])("lumber: %s", (text, thickness, width) => {
  expect(readSoldAs(text)).toMatchObject({
    kind: "dressed",
    thickness: inch(thickness),
    width: inch(width),
    length: null,
    unknown: [],
  });
});

test.each([
  ["2x4x8", "96"],
  ["2x4x16 ft", "192"],
  ["2x4x96 spruce", "96"],
])("lumber with its length: %s", (text, length) => {
  expect(readSoldAs(text)).toMatchObject({ kind: "dressed", length: inch(length) });
});

test.each<[string, string, string | null, string | null]>([
  ["4/4", "1", "3/4", null],
  ["5/4 cherry", "1 1/4", "1", "cherry"],
  ["8/4 white oak", "2", "1 3/4", "white oak"],
  ["8/4 quarter-sawn white oak", "2", "1 3/4", "white oak"],
  ["hard maple, 1 1/2 in rough", "1 1/2", null, "hard maple"],
  ["26 mm rough", "26 mm", null, null],
])("rough boards: %s", (text, thickness, finished, wood) => {
  const sold = readSoldAs(text);
  expect(sold).toMatchObject({
    kind: "rough",
    thickness: inch(thickness),
    finished: finished && inch(finished),
    unknown: [],
  });
  expect(sold?.species?.name ?? null).toBe(wood);
});

test("a bare number is in the plan's units, a fraction never millimetres", () => {
  expect(readSoldAs("26 rough", "mm")).toMatchObject({ thickness: mm(26) });
  expect(readSoldAs("18 birch plywood", "mm")).toMatchObject({ size: { measures: mm(18) } });
  expect(readSoldAs("3/4 birch plywood", "mm")).toMatchObject({ size: { measures: inch("23/32") } });
  expect(readSoldAs("18 birch plywood")).toMatchObject({ named: inch("18"), size: null });
});

test.each<[string, string, Length, Length]>([
  ["3/4 birch plywood", "plywood", inch("3/4"), inch("23/32")],
  ["1/2 in plywood", "plywood", inch("1/2"), inch("15/32")],
  ['1/4" ply', "plywood", inch("1/4"), inch("7/32")],
  ["23/32 sheathing plywood", "plywood", inch("23/32"), inch("23/32")],
  ["plywood, birch, 3/4 in", "plywood", inch("3/4"), inch("23/32")],
  ["12 mm birch plywood", "plywood", mm(12), mm(12)],
  ["6.5mm baltic birch", "plywood", mm(6.5), mm(6.5)],
  ["18 mm MDF", "MDF", mm(18), mm(18)],
  ["3/4 MDF", "MDF", inch("3/4"), inch("3/4")],
  ["MDF 1/2", "MDF", inch("1/2"), inch("1/2")],
  ["16 mm melamine", "particleboard", mm(16), mm(16)],
  ["1/8 tempered hardboard", "hardboard", inch("1/8"), inch("1/8")],
  ["7/16 OSB", "OSB", inch("7/16"), inch("7/16")],
])("panels: %s", (text, kind, named, measures) => {
  expect(readSoldAs(text)).toMatchObject({ kind: "panel", panel: { kind }, named, size: { measures }, unknown: [] });
});

test.each<[string, Length, Length]>([
  ["3/4 birch plywood 4x8", inch("48"), inch("96")],
  ["3/4 baltic birch 5x5", inch("60"), inch("60")],
  ["18 mm birch plywood 1525 x 1525", mm(1525), mm(1525)],
  ["2440 x 1220 mm, 18 mm MDF", mm(2440), mm(1220)],
  ["18 mm plywood, 1250 × 2500", mm(1250), mm(2500)],
])("panels with the size of the sheet: %s", (text, wide, long) => {
  expect(readSoldAs(text, "mm")).toMatchObject({ kind: "panel", sheet: { wide, long }, unknown: [] });
});

test.each([
  ["2x4 tongue and groove", ["tongue", "groove"]],
  ["1x6 shiplap", ["shiplap"]],
  ["3/4 wobbly plywood", ["wobbly"]],
])("words that may change the size are told: %s", (text, unknown) => {
  expect(readSoldAs(text)?.unknown).toEqual(unknown);
});

test.each(["", "roof batten", "1x1", "7/4", "38 x 89 mm", "45x95", "0x4", "1/0 rough", "2x", "rattan"])(
  "nothing is made of %s",
  (text) => {
    expect(readSoldAs(text)).toBe(null);
  },
);
