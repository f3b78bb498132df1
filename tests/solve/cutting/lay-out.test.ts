import { expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import type { Blank } from "../../../src/solve/build.ts";
import { inches, type Length, millimetres, toInches } from "../../../src/units/index.ts";
import { faultsOf } from "./replay.ts";
import { blank, board, sheet } from "./stock.ts";

const KERF = inches(1, 8);
const SHEET = sheet(inches(48), inches(96));
const TWO_BY_FOUR = board(
  inches(7, 2),
  [8, 10, 12, 16].map((feet) => inches(12 * feet)),
);
const inMap = <T extends { id: string }>(list: readonly T[]): ReadonlyMap<string, T> =>
  new Map(list.map((each) => [each.id, each]));

test("two sides and three shelves of a small case come out of one sheet", () => {
  const blanks = [
    ...["a", "b"].map((id) => blank(SHEET, id, inches(23, 2), inches(36))),
    ...["c", "d", "e"].map((id) => blank(SHEET, id, inches(11), inches(93, 4))),
  ];
  const { layouts, proof, findings } = layOut([SHEET], blanks, KERF);
  expect(findings).toEqual([]);
  expect(layouts).toHaveLength(1);
  expect(layouts.flatMap((layout) => faultsOf(layout, inMap(blanks)))).toEqual([]);
  expect(layouts[0]?.placements).toHaveLength(5);
  expect(proof).toMatchObject([{ stocks: ["ply"], count: 1, countBound: 1, optimal: true }]);
});

test("a sheet gives no part that needs all of it, and the finding names the part", () => {
  const at = { start: 40, end: 44, line: 3, column: 5 };
  const whole = blank(SHEET, "a", inches(48), inches(96));
  const { layouts, findings } = layOut([SHEET], [whole], KERF, { spans: new Map([["part.a", at]]) });
  expect(layouts).toEqual([]);
  expect(findings).toMatchObject([{ rule: "larger-than-any-sheet", severity: "error", at, also: [{ at: SHEET.at }] }]);
  expect(findings[0]?.message).toBe("`part.a` is 48 in × 96 in; a sheet of `ply` gives 47 7/8 in × 95 7/8 in");
  const fits = blank(SHEET, "a", inches(383, 8), inches(767, 8));
  expect(layOut([SHEET], [fits], KERF)).toMatchObject({ findings: [], layouts: [{ cuts: [] }] });
});

test("boards: the end is trimmed first, and each part is one crosscut further", () => {
  const blanks = ["a", "b"].map((id) => blank(TWO_BY_FOUR, id, inches(7, 2), inches(40)));
  const [layout] = layOut([TWO_BY_FOUR], blanks, KERF).layouts;
  expect(layout && faultsOf(layout, inMap(blanks))).toEqual([]);
  expect(layout?.cuts.map(({ kind, fence }) => [kind, toInches(fence)])).toEqual([
    ["crosscut", 0.25],
    ["crosscut", 40],
    ["crosscut", 40],
  ]);
  expect(layout?.placements.map(({ y }) => toInches(y))).toEqual([0.375, 40.5]);
  expect(layout?.offcuts.map(({ length }) => toInches(length))).toEqual([96 - 80.625]);
});

// 6 in less 5 15/16 is 1/16, half a kerf.
test("no cut shaves less than a kerf off what a later step cuts to size, whatever else is on the board", () => {
  const stock = board(inches(6), [inches(96)]);
  const cut = (why: Blank["why"], wide: Length): readonly string[] => {
    const blanks = [{ ...blank(stock, "a", wide, inches(30)), why }];
    const [layout] = layOut([stock], blanks, KERF).layouts;
    expect(layout && faultsOf(layout, inMap(blanks))).toEqual([]);
    expect(layout?.placements.map(({ width, length }) => [toInches(width), toInches(length)])).toEqual([
      [layout?.cuts.some(({ kind }) => kind === "rip") ? toInches(wide) : 6, 30],
    ]);
    return layout?.cuts.map(({ kind }) => kind) ?? [];
  };
  const [shaving, kerf] = [inches(95, 16), inches(47, 8)];
  expect(cut("cut later", shaving)).toEqual(["crosscut", "crosscut"]);
  expect(cut("cut later", kerf)).toEqual(["crosscut", "crosscut", "rip"]);
  expect(cut("as finished", shaving)).toEqual(["crosscut", "crosscut", "rip"]);
});

test("what is left is eaten by the last kerf where it is thinner", () => {
  const stock = board(inches(6), [inches(96)]);
  const blanks = [blank(stock, "a", inches(95, 16), inches(30))];
  const [layout] = layOut([stock], blanks, KERF).layouts;
  expect(layout && faultsOf(layout, inMap(blanks))).toEqual([]);
  expect(layout?.cuts.map(({ kind }) => kind)).toEqual(["crosscut", "crosscut", "rip"]);
});

test("lengths are chosen so that little is bought", () => {
  // 7 × 27 1/2 in with kerfs need 193 3/8 in: more than 16 ft, which 8 ft and 10 ft together hold.
  const blanks = [..."abcdefg"].map((id) => blank(TWO_BY_FOUR, id, inches(7, 2), inches(55, 2)));
  const { layouts } = layOut([TWO_BY_FOUR], blanks, KERF);
  expect(layouts.map(({ length }) => toInches(length)).toSorted((a, b) => a - b)).toEqual([96, 120]);
});

test("parts too wide, too long, too thick are told apart, and the others are laid out", () => {
  const oak = board(inches(6), [inches(96)], { name: "oak", assumed: true, width: null, thickness: inches(3, 4) });
  const blanks = [
    blank(oak, "a", inches(7), inches(30)),
    blank(oak, "b", inches(8), inches(100)),
    blank(oak, "c", inches(3), inches(30), { thickness: inches(1) }),
    blank(oak, "d", inches(3), inches(30)),
  ];
  const { layouts, findings, proof } = layOut([oak], blanks, KERF);
  expect(findings.map(({ rule, message }) => [rule, message])).toEqual([
    ["thicker-than-its-stock", "`part.c` is 1 in thick; `oak` measures 3/4 in"],
    ["wider-than-any-board", "`part.b` and `part.a` are up to 8 in wide; boards of `oak` are taken to be 6 in wide"],
    ["longer-than-any-board", "`part.b` is 100 in long; the longest board of `oak` is taken to give 95 5/8 in"],
  ]);
  expect(layouts.flatMap(({ placements }) => placements.map((p) => p.blank))).toEqual(["d"]);
  expect(proof).toMatchObject([{ count: 1, countBound: 1, optimal: false }]);
});

test("a blank whose grain runs over its width lies turned, and a free one where it fits", () => {
  const stock = sheet(millimetres(600), millimetres(2400));
  const over = blank(stock, "a", millimetres(1200), millimetres(500), { grain: "width" });
  const free = blank(stock, "b", millimetres(1000), millimetres(550), { grain: "free" });
  const { layouts, findings } = layOut([stock], [over, free], millimetres(3), { units: "mm" });
  expect(findings).toEqual([]);
  expect(layouts.flatMap((layout) => faultsOf(layout, inMap([over, free])))).toEqual([]);
  expect(layouts.flatMap(({ placements }) => placements.map(({ turned }) => turned))).toEqual([true, true]);
  const along = { ...over, grain: "length" as const };
  expect(layOut([stock], [along], millimetres(3)).findings).toHaveLength(1);
});

test("the same blanks give the same layouts", () => {
  const blanks = [..."abcdefghijkl"].map((id, i) => blank(SHEET, id, inches(5 + i), inches(40 - 2 * i)));
  const first = layOut([SHEET], blanks, KERF);
  layOut([TWO_BY_FOUR], [blank(TWO_BY_FOUR, "z", inches(7, 2), inches(20))], KERF);
  expect(layOut([SHEET], blanks, KERF)).toEqual(first);
});
