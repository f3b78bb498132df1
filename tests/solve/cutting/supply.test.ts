import fc from "fast-check";
import { expect, test } from "vitest";
import { printJson } from "../../../src/render/write/record/json.ts";
import { layoutRecord, proofRecord } from "../../../src/render/write/record/layouts.ts";
import { blankRecord } from "../../../src/render/write/record/parts.ts";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import { cutsBeforeHome, sawnAlike, settingsOf } from "../../../src/solve/build/layout-facts.ts";
import { supplyOf } from "../../../src/solve/build/supply.ts";
import type { Blank } from "../../../src/solve/build.ts";
import type { Design, PieceOnHand, Stock } from "../../../src/solve/design.ts";
import { inches, type Length, millimetres, toInches } from "../../../src/units/index.ts";
import { layouts as auditLayouts } from "../../audit/layouts.ts";
import { modelOf } from "../../audit/model.ts";
import type { BuildRecord } from "../../audit/record.ts";
import { blank, board, sheet } from "./stock.ts";

const AT = { start: 0, end: 1, line: 1, column: 1 };
const sixteenths = (low: number, high: number): fc.Arbitrary<Length> =>
  fc.integer({ min: low * 16, max: high * 16 }).map((n) => inches(n, 16));

/** Lays blanks out as a plan in a workshop does. */
function laidOut(stock: Stock, blanks: readonly Blank[], kerf: Length, squaring?: Length) {
  const workshop = { file: "shed.yaml", supplies: new Map(), prices: new Map(), ...(squaring && { squaring }) };
  const design = { stock: [stock], units: "inch", workshop } as unknown as Design;
  return layOut([stock], blanks, kerf, { units: "inch", ...supplyOf(design) });
}

/** What an auditor that shares no code with the program finds wrong with layouts (promise 7). */
function audited(laid: ReturnType<typeof layOut>, blanks: readonly Blank[]): readonly string[] {
  const record = {
    ...{ parts: [], hardware: [], joints: [], fasteners: [] },
    ...(JSON.parse(
      printJson({
        layouts: laid.layouts.map(layoutRecord),
        layoutProof: laid.proof.map(proofRecord),
        blanks: blanks.map(blankRecord),
      }),
    ) as object),
  } as unknown as BuildRecord;
  return [...auditLayouts(modelOf(record))].map(({ check, message }) => `${check}: ${message}`);
}

const grain = fc.constantFrom("length" as const, "width" as const, "free" as const);
const kerf = fc.constantFrom(inches(1, 8), inches(3, 32), millimetres(32, 10), millimetres(24, 10));
const squaring = fc.constantFrom(inches(1, 8), inches(1, 4), inches(1, 2));
const onHand = fc.array(
  fc
    .tuple(sixteenths(6, 48), sixteenths(6, 96), fc.integer({ min: 1, max: 3 }))
    .map(([width, length, count]): PieceOnHand => ({ at: AT, width, length, count })),
  { maxLength: 3 },
);

test("sheets: whatever the kerf, grain, squaring cut and pieces on hand, the auditor finds nothing", () => {
  const part = fc.tuple(sixteenths(1, 40), sixteenths(1, 40), grain);
  const ways = fc.tuple(fc.array(part, { minLength: 1, maxLength: 12 }), kerf, squaring, onHand, fc.boolean());
  fc.assert(
    fc.property(ways, ([parts, k, square, pieces, priced]) => {
      const sold = [
        { width: inches(48), length: inches(96), price: 62 },
        { width: inches(48), length: inches(48), price: 36.5 },
      ];
      const stock = sheet(inches(48), inches(96), { onHand: pieces, ...(priced && { sold }) });
      const blanks = parts.map(([w, l, along], i) => blank(stock, `b${i}`, w, l, { grain: along }));
      const laid = laidOut(stock, blanks, k, square);
      expect(laid.findings).toEqual([]);
      expect(audited(laid, blanks)).toEqual([]);
      const placed = laid.layouts.flatMap(({ placements }) => placements.map((p) => p.blank));
      expect(placed.toSorted()).toEqual(blanks.map(({ id }) => id).toSorted());
      atMostWhatIsThere(laid, pieces);
    }),
    { numRuns: 25, seed: 20261125 },
  );
}, 60_000);

test("boards: lengths with prices, rips, and boards on hand", () => {
  const part = fc.tuple(sixteenths(1, 5), sixteenths(1, 90), fc.constant("length" as const));
  const boards = fc.array(
    fc
      .tuple(sixteenths(12, 120), fc.integer({ min: 1, max: 2 }))
      .map(([length, count]): PieceOnHand => ({ at: AT, width: inches(11, 2), length, count })),
    { maxLength: 2 },
  );
  const ways = fc.tuple(fc.array(part, { minLength: 1, maxLength: 12 }), kerf, boards);
  fc.assert(
    fc.property(ways, ([parts, k, pieces]) => {
      const sold = [8, 10, 12].map((feet, i) => ({
        width: inches(11, 2),
        length: inches(12 * feet),
        price: 6 + 2.5 * i,
      }));
      const stock = board(
        inches(11, 2),
        sold.map(({ length }) => length),
        { width: null, onHand: pieces, sold },
      );
      const blanks = parts.map(([w, l, along], i) => blank(stock, `b${i}`, w, l, { grain: along }));
      const laid = laidOut(stock, blanks, k);
      expect(laid.findings).toEqual([]);
      expect(audited(laid, blanks)).toEqual([]);
      atMostWhatIsThere(laid, pieces);
    }),
    { numRuns: 25, seed: 20261125 },
  );
}, 60_000);

/** No more is used up of a size than lies there. */
function atMostWhatIsThere({ layouts }: ReturnType<typeof layOut>, pieces: readonly PieceOnHand[]): void {
  const size = ({ width, length }: { width: Length; length: Length }) => `${toInches(width)} × ${toInches(length)}`;
  const used = layouts.filter(({ source }) => source === "on hand").map(size);
  for (const each of new Set(used)) {
    const there = pieces.filter((piece) => size(piece) === each).reduce((so, { count }) => so + count, 0);
    expect(used.filter((other) => other === each).length).toBeLessThanOrEqual(there);
  }
}

test("what lies in the workshop is cut first, the small pieces before the large, and less is bought", () => {
  const piece = (width: number, length: number, count: number): PieceOnHand => ({
    ...{ at: AT, count },
    ...{ width: inches(width), length: inches(length) },
  });
  const blanks = (stock: Stock, names: string) => [...names].map((id) => blank(stock, id, inches(20), inches(40)));
  const ask = (onHand: readonly PieceOnHand[], names = "abc") => {
    const stock = sheet(inches(48), inches(96), { onHand });
    return laidOut(stock, blanks(stock, names), inches(1, 8));
  };
  const two = ask([piece(48, 96, 1), piece(24, 42, 3)]);
  // Three offcuts take one each, and the sheet is spared: nothing is bought, and 3 × 24 × 42 is less than 48 × 96.
  expect(two.layouts.map(({ source, length }) => [source, toInches(length)])).toEqual([
    ["on hand", 42],
    ["on hand", 42],
    ["on hand", 42],
  ]);
  expect(two.proof).toMatchObject([{ count: 0, countBound: 0, optimal: true }]);
  // A sheet holds four, two by two: the offcut spares the second sheet for the fifth.
  const one = ask([piece(24, 42, 1)], "abcde");
  expect(one.layouts.map(({ source }) => source)).toEqual(["on hand", "buy"]);
  // 4000 − 1008 square inches are more than nothing, so one sheet has to be bought.
  expect(one.proof).toMatchObject([{ count: 1, countBound: 1, optimal: true }]);
  // One sheet that has to be bought anyway gives all three: the offcut stays whole.
  expect(ask([piece(24, 42, 1)]).layouts.map(({ source }) => source)).toEqual(["buy"]);
  // 20 in and 1/8 in squared off do not fit 20 in.
  expect(ask([piece(20, 42, 1)]).layouts.every(({ source }) => source === "buy")).toBe(true);
});

const SHEET = sheet(inches(48), inches(96));
const CASE = [
  ...["a", "b"].map((id) => blank(SHEET, id, inches(23, 2), inches(36))),
  ...["c", "d", "e"].map((id) => blank(SHEET, id, inches(11), inches(93, 4))),
];

test("how many cuts have to be made before a sheet goes into the car", () => {
  const [layout] = layOut([SHEET], [blank(SHEET, "a", inches(40), inches(50))], inches(1, 8)).layouts;
  if (layout === undefined) throw new Error("no layout");
  // A crosscut at 50 in leaves 47 7/8 × 50 and 47 7/8 × 45 3/4 in.
  expect(cutsBeforeHome(layout, { width: inches(48), length: inches(96) })).toBe(0);
  expect(cutsBeforeHome(layout, { width: inches(60), length: inches(48) })).toBe(1);
  // 47 7/8 is wider than 45, also after both cuts.
  expect(cutsBeforeHome(layout, { width: inches(45), length: inches(50) })).toBeNull();
});

test("cuts at one setting stand together, and nothing is left out", () => {
  const { layouts } = layOut([SHEET], CASE, inches(1, 8));
  for (const layout of layouts) {
    const runs = settingsOf(layout);
    expect(runs.flatMap(({ cuts }) => cuts)).toEqual(layout.cuts);
    for (const { fence, kind, cuts } of runs)
      for (const cut of cuts) expect([cut.kind, toInches(cut.fence)]).toEqual([kind, toInches(fence)]);
  }
  const twice = [...layouts, ...layouts];
  expect(sawnAlike(twice).map(({ numbers }) => numbers)).toEqual([[1, 2]]);
});
