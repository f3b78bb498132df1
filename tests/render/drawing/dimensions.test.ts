import { describe, expect, test } from "vitest";
import { chosen, spans } from "../../../src/render/drawing/dimension/chain.ts";
import { closes } from "../../../src/render/drawing/dimension/closing.ts";
import { drawRows } from "../../../src/render/drawing/dimension/rows.ts";
import { sideOf } from "../../../src/render/drawing/dimension/side.ts";
import { threeViews } from "../../../src/render/drawing/index.ts";
import { crosses, Plate, passes } from "../../../src/render/drawing/plate.ts";
import { makePlan } from "../../../src/render/pages/plan.ts";
import { inches, type Length, roundTo, subtract, sum, toInches } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { numbers } from "../../geometry/picture/scenes.ts";
import { plain } from "../../solve/told/examples.ts";
import { bench, bookcase, pen } from "./fixture.ts";
import { paths, segmentsOf, texts, words } from "./look.ts";

const frame = { x: 60, y: 64, width: 510, height: 640 };
const printing = { print: (length: Length) => String(toInches(length)) };

describe("chains", () => {
  test("fill the outside size without a gap", () => {
    const next = numbers(17);
    for (let i = 0; i < 50; i++) {
      const stops = Array.from({ length: 1 + Math.floor(next() * 6) }, () => inches(1 + Math.floor(next() * 640), 64));
      const chain = spans(stops, inches(0), inches(12), printing);
      expect(sum(chain.map(({ from, to }) => subtract(to, from)))).toEqual(inches(12));
      for (const [j, { from }] of chain.slice(1).entries()) expect(from).toEqual(chain[j]?.to);
    }
  });

  test("three alike in a row become one", () => {
    const at = [2, 4, 6, 8].map((n) => inches(n));
    expect(spans(at, inches(0), inches(9), printing).map(({ text }) => text)).toEqual(["4 × 2", "1"]);
    expect(spans([inches(2), inches(4)], inches(0), inches(9), printing).map(({ text }) => text)).toEqual([
      "2",
      "2",
      "5",
    ]);
  });
});

const station = (at: Length, weight: number, gap = false) => ({ at, weight, low: 0, high: 1, gap, twins: [] });

describe("places of a chain", () => {
  const [low, high] = [inches(0), inches(42)];
  // At 1:12 an inch is 6 points: two lines of one stile, 1 3/4 apart, both stand, a gap of 1/16 only beside what moves.
  const rules = { scale: 6 / 406_400, gap: 8.5, pitch: 24, face: "low" } as const;
  const told = (places: readonly (readonly [number, boolean])[]) =>
    chosen(
      places.map(([sixteenths, gap]) => station(inches(sixteenths, 16), 0.6, gap)),
      low,
      high,
      rules,
    ).map(({ at }) => toInches(at));

  test("two doors between two posts of 2, with gaps of 1/16, 1/8 and 1/16: alike on both sides", () => {
    // 2, 1/16, 18 7/8, 1/8, 18 7/8, 1/16, 2, which is 42.
    const places = [32, 33, 335, 337, 639, 640].map((n) => [n, n !== 32 && n !== 640] as const);
    expect(told(places)).toEqual([2, 2.0625, 20.9375, 21.0625, 39.9375, 40]);
  });

  // Five fronts of 7 less 1/8, one above the other on a bottom that ends 1/8 below the lowest: by hand.
  test("a row of fronts is measured from front to front, not from what lies under the lowest", () => {
    const fronts = [0, 1, 2, 3, 4].flatMap((i) => [98 + 112 * i, 98 + 112 * i + 110]);
    const stops = chosen(
      [station(inches(96, 16), 0.66), ...fronts.map((n) => station(inches(n, 16), 0.6, true))],
      low,
      high,
      { ...rules, gap: 11, pitch: 14, face: "high" },
    );
    expect(stops.map(({ at }) => toInches(at))).toContain(6.125);
    expect(stops.map(({ at }) => toInches(at))).not.toContain(6);
  });

  test("what stands too close is taken on neither side or on both", () => {
    const stops = told([32, 40, 632, 640].map((n) => [n, false]));
    expect(stops).toEqual([2, 40]);
  });

  test("a divider in the middle has both its faces, so that the openings beside it are alike; elsewhere it has one", () => {
    const divided = (from: number, to: number) => {
      const faces = [inches(from, 16), inches(to, 16)];
      const both = faces.map((at, i) => ({ ...station(at, 0.9), twins: [faces[1 - i] as Length] }));
      return chosen(both, low, high, rules).map(({ at }) => toInches(at));
    };
    // 42 is 672 sixteenths: 3/4 in the middle leaves 20 5/8 on both sides.
    expect(divided(330, 342)).toEqual([20.625, 21.375]);
    expect(divided(300, 312)).toEqual([18.75]);
  });

  test("what is printed adds up, the same from both ends", () => {
    const pen = { print: (length: Length) => String(toInches(length)) };
    const sixteenth = inches(1, 16);
    const rounding = {
      ...pen,
      printed: (length: Length) => roundTo(length, sixteenth),
      marked: (length: Length) => roundTo(length, sixteenth),
    };
    // Thirds of an inch: 1 1/3, 1 1/3, 28 2/3, 1 1/3, 1 1/3 would be printed as 5/16 four times and 11/16: 33 15/16.
    const stops = [inches(4, 3), inches(8, 3), inches(94, 3), inches(98, 3)];
    const texts = spans(stops, inches(0), inches(34), rounding).map(({ text }) => Number(text));
    expect(texts.reduce((sum, each) => sum + each, 0)).toBe(34);
    expect(texts).toEqual([1.3125, 1.375, 28.625, 1.375, 1.3125]);
  });
});

describe("three views of the bench, from its source in the fixture", () => {
  const { items } = threeViews(bench(), { frame, pen });
  const said = words(items);
  test("outside sizes, legs, aprons and slats", () => {
    for (const text of ["42", "14", "18", "34", "7", pen.print(inches(27, 2)), `4 × ${pen.print(inches(23, 8))}`])
      expect(said).toContain(text);
    // The overhang and the thickness of a leg, left and right.
    for (const text of [pen.print(inches(3, 2)), pen.print(inches(5, 2))])
      expect(said.filter((w) => w === text).length).toBeGreaterThanOrEqual(2);
  });

  test("each outside size once", () => {
    for (const text of ["42", "14", "18"]) expect(said.filter((w) => w === text)).toHaveLength(1);
  });

  test("larger sizes outside smaller ones", () => {
    const y = (text: string) => texts(items).find((t) => t.text === text)?.y ?? 0;
    const x = (text: string) => texts(items).find((t) => t.text === text)?.x ?? 0;
    expect(y("42")).toBeGreaterThan(y("34"));
    expect(x("18")).toBeLessThan(x(pen.print(inches(27, 2))));
  });

  test("a dimension line as long as what it measures", () => {
    const scale = 72 / 8;
    const xs = paths(items)
      .filter(({ stroke, fill }) => stroke?.width === 0.35 && !fill)
      .flatMap(segmentsOf)
      .filter(([, y1, , y2]) => y1 === y2);
    const row = (texts(items).find((t) => t.text === "42")?.y ?? 0) - 3.3;
    const ends = xs.filter(([, y]) => Math.abs(y - row) < 0.5).flatMap(([x1, , x2]) => [x1, x2]);
    expect(Math.max(...ends) - Math.min(...ends)).toBeCloseTo(42 * scale, 6);
  });
});

test("the toe notch of a bookcase is measured in the side view", () => {
  const said = words(threeViews(bookcase(), { frame, pen }).items);
  for (const text of ["2", "9", pen.print(inches(5, 2))]) expect(said).toContain(text);
});

describe("places on the plate against points tried one by one", () => {
  const next = numbers(31);
  const spot = (): [number, number] => [next() * 100, next() * 100];
  test("a segment through a box", () => {
    for (let i = 0; i < 500; i++) {
      const [a, b, c] = [spot(), spot(), spot()];
      const box = { left: c[0], top: c[1], right: c[0] + 20, bottom: c[1] + 12 };
      const hit = Array.from({ length: 2001 }, (_, k) => k / 2000).some((t) => {
        const [x, y] = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
        return x > box.left && x < box.right && y > box.top && y < box.bottom;
      });
      if (hit) expect(passes([a, b], box)).toBe(true);
      else if (passes([a, b], box))
        expect(
          passes([a, b], {
            ...box,
            left: box.left + 0.2,
            top: box.top + 0.2,
            right: box.right - 0.2,
            bottom: box.bottom - 0.2,
          }),
        ).toBe(false);
    }
  });
  test("lines are found through the grid as without it", () => {
    const plate = new Plate({ x: 0, y: 0, width: 100, height: 100 });
    const lines = Array.from({ length: 60 }, () => [spot(), spot()] as const);
    for (const line of lines) plate.addLine(line);
    for (let i = 0; i < 100; i++) {
      const [a, b] = [spot(), spot()];
      const box = {
        left: Math.min(a[0], b[0]),
        right: Math.max(a[0], b[0]),
        top: Math.min(a[1], b[1]),
        bottom: Math.max(a[1], b[1]),
      };
      expect(plate.linesThrough(box)).toBe(lines.filter((l) => passes(l, box)).length);
      expect(plate.linesAcross([a, b])).toBe(lines.filter((l) => crosses(l, [a, b])).length);
    }
  });
});

test("no two extension lines run side by side closer than 0.7 mm (ISO 128-2), up to just before their row", () => {
  const view = { left: 100, top: 100, right: 300, bottom: 200 };
  const row = [
    { from: 100, to: 199, text: "19" },
    { from: 199, to: 200, text: "1/8" },
    { from: 200, to: 300, text: "20" },
  ];
  const feet = new Map([199, 200].map((along) => [along, -80]));
  const { items } = drawRows(
    [row],
    feet,
    sideOf(view, "below"),
    new Plate({ x: 0, y: 0, width: 600, height: 600 }),
    pen,
  );
  const upright = paths(items)
    .flatMap(segmentsOf)
    .filter(([x1, , x2]) => Math.abs(x1 - x2) < 1e-9)
    .map(([along, y1, , y2]) => ({ along, high: Math.min(y1, y2), low: Math.max(y1, y2) }));
  const long = upright.filter(({ along, high }) => along > 150 && along < 250 && high < 200);
  expect(long.map(({ along }) => along)).toEqual([199.5]);
  expect(long[0]?.high).toBeLessThan(130);
  // At the row each place has its own end, the two of them drawn a little farther apart than they are: their strokes are told apart.
  const ends = upright.filter(({ along, high }) => along > 150 && along < 250 && high >= 200);
  // One line comes to them from where the view ends.
  expect(ends.map(({ along }) => along).sort()).toEqual([197.5, 199.5, 201.5]);
  for (const { low, high } of ends) expect(low - high).toBeLessThanOrEqual(8);
});

// By hand: a leg 2 1/4 wide that leans 1 in 8 is 2 1/4 × √65/8 = 2.267 wide where it is cut level, which is 2 17/64 to the nearest mark and 2 1/4 to a plan's 1/16.
describe("a size is told alike in every chain of a drawing", () => {
  const sixteenths = (length: Length) => roundTo(length, inches(1, 16));
  const onRule = (length: Length) => roundTo(length, inches(1, 64));
  const leg = inches(2267, 1000);
  const pens = {
    print: (length: Length) => String(toInches(length)),
    printed: (length: Length) => (onRule(length) === length ? length : sixteenths(length)),
    marked: onRule,
  };
  const top = [inches(7), sum([inches(7), leg])];

  test("where each rounds to a coarser mark and that adds up", () => {
    expect(closes([inches(0), ...top, inches(54)], pens)).toBe(true);
    expect(spans(top, inches(0), inches(54), pens)[1]?.text).toBe("2.267");
  });

  test("and where another chain had to be finer", () => {
    expect(spans(top, inches(0), inches(54), { ...pens, finely: true })[1]?.text).toBe(String(2 + 17 / 64));
  });

  test("the desk's legs are as wide at the top as at the foot", () => {
    const desk = built("loan-desk");
    const { pen: own } = makePlan(desk, frame);
    const told = words(threeViews(desk, { frame, pen: own }).items).map(plain);
    expect(told.filter((text) => text === "2 17/64")).toHaveLength(4);
    expect(told).toContain("35 15/32");
  });
});
