import { describe, expect, test } from "vitest";
import { spans } from "../../../src/render/drawing/dimension/chain.ts";
import { extensionLines, roundAbout } from "../../../src/render/drawing/dimension/extension-lines.ts";
import { drawRows } from "../../../src/render/drawing/dimension/rows.ts";
import { sideOf } from "../../../src/render/drawing/dimension/side.ts";
import { stations } from "../../../src/render/drawing/dimension/stations.ts";
import { threeViews } from "../../../src/render/drawing/index.ts";
import { Plate } from "../../../src/render/drawing/plate.ts";
import { NARROW, OUTLINE } from "../../../src/render/drawing/strokes.ts";
import { besides } from "../../../src/render/drawing/three-views/besides.ts";
import { inches, type Length, roundTo, toInches } from "../../../src/units/index.ts";
import { part } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { clashes, outside, paths, segmentsOf, texts as textsOf, words } from "./look.ts";
import { thinLines } from "./thin-lines.ts";

const frame = { x: 60, y: 64, width: 510, height: 640 };
const printing = { print: (length: Length) => String(toInches(length)) };

describe("rows of dimensions", () => {
  // A front of 36 × 34: two doors below, three drawers above, sides of 1 all the way up. In inches, by hand.
  const extent = { low: [0, 0], high: [36, 34] } as const;
  const line = (place: number, low: number, high: number) => ({
    ...{ at: inches(place), weight: (high - low) / 34, low, high, gap: false, twins: [] },
  });
  const sides = [line(1, 0, 34), line(35, 0, 34)];
  const doors = [line(2, 1, 25), line(18, 1, 25)];
  const drawers = [line(12, 26, 33), line(24, 26, 33)];
  const places = (row: readonly { readonly at: Length }[]) => row.map(({ at }) => toInches(at));

  test("what stands in the upper row is measured above, what stands in the lower one below", () => {
    const [below, above] = besides([...sides, ...doors, ...drawers], extent, ["below", "above"]);
    expect(below.rows.map(places)).toEqual([[1, 2, 18, 35]]);
    expect(above.rows.map(places)).toEqual([[1, 12, 24, 35]]);
  });

  test("a row in the middle has a line of its own, outside that of the lowest row", () => {
    const middle = [line(9, 13, 22), line(27, 13, 22)];
    const lower = [line(18, 1, 12)];
    const [below] = besides([...sides, ...lower, ...middle], extent, ["below", "above"]);
    expect(below.rows.map(places)).toEqual([
      [1, 18, 35],
      [1, 9, 27, 35],
    ]);
  });

  test("a part of a chain is told alone, and adds up with the rest of it", () => {
    const stops = [1, 12, 24, 35].map((n) => inches(n));
    const part = spans(stops, inches(0), inches(36), printing, { from: inches(1), to: inches(35) });
    expect(part.map(({ text }) => text)).toEqual(["11", "12", "11"]);
  });

  test("what shows through the pane of a door is not told with the door", () => {
    const at = (y: number, from: number, to: number) => ({ low: [from, y] as const, high: [to, y] as const });
    const lines = [at(2, 2, 34), at(10, 6, 30), at(30, 2, 34)].map(({ low: a, high: b }, i) => ({
      ...{ id: i === 1 ? "shelf" : "door", visible: [[a, b].map(([x, y]) => [x * 406_400, y * 406_400])], hidden: [] },
    })) as unknown as Parameters<typeof stations>[1]["lines"];
    const door = part("door", "C", "Door", "board", { body: [2, 0, 2, 34, 0.75, 30] });
    const shelf = part("shelf", "D", "Shelf", "board", { body: [1, 1, 9.25, 35, 12, 10] });
    const seen = { lines, extent: { low: [0, 0], high: [36 * 406_400, 34 * 406_400] }, axes: [0, 2] } as const;
    const heights = (moves: boolean) =>
      stations(
        [
          { parts: [door], moves },
          { parts: [shelf], moves: false },
        ],
        seen,
        1,
      ).map(({ at }) => toInches(at));
    expect(heights(true)).toEqual([2, 30]);
    expect(heights(false)).toEqual([2, 10, 30]);
  });

  test("extension lines begin off the wood, and none of them runs through an inner row's number", () => {
    const lines: readonly (readonly [[number, number], [number, number]])[] = [
      [
        [150, 210],
        [150, 290],
      ],
      [
        [20, 50],
        [90, 50],
      ],
    ];
    const box = { left: 140, top: 240, right: 160, bottom: 250 };
    expect(roundAbout(lines, box)).toEqual([
      [
        [150, 210],
        [150, 240],
      ],
      [
        [150, 250],
        [150, 290],
      ],
      [
        [20, 50],
        [90, 50],
      ],
    ]);
    const { items } = threeViews(bench(), { frame, pen });
    const { thin, across: through } = thinLines(items);
    expect(thin.length).toBeGreaterThan(20);
    expect(through).toEqual([]);
    // ISO 128-2: wide to narrow at least 2 : 1.
    expect(OUTLINE.width / NARROW.width).toBeGreaterThanOrEqual(2);
  });
});

// A table whose top stands 4 in over its legs on all sides, 30 in high. In inches, by hand.
test("an extension line from a top that stands over is broken beside the legs: a stub, and what lies below them", () => {
  const leg = (x: number, y: number) =>
    part(`leg ${x} ${y}`, "B", "Leg", "board", { body: [x, y, 0, x + 2, y + 2, 29] });
  const top = part("top", "A", "Top", "board", { body: [0, 0, 29, 48, 24, 30] });
  const legs = [4, 42].flatMap((x) => [4, 18].map((y) => leg(x, y)));
  const { items } = threeViews({ ...bench(), parts: [top, ...legs] }, { frame, pen });
  const all = paths(items).filter(({ stroke, fill }) => stroke && !fill);
  const upright = (width: number) =>
    all
      .filter(({ stroke }) => stroke?.width === width)
      .flatMap(segmentsOf)
      .filter(([x1, , x2]) => Math.abs(x1 - x2) < 0.01)
      .map(([x, y1, , y2]) => ({ x, top: Math.min(y1, y2), bottom: Math.max(y1, y2) }));
  const wood = upright(OUTLINE.width);
  const left = Math.min(...wood.map(({ x }) => x));
  const shortest = Math.min(...wood.filter(({ x }) => Math.abs(x - left) < 0.01).map((l) => l.bottom - l.top));
  const under = upright(NARROW.width).filter(({ x }) => Math.abs(x - left) < 0.01);
  // The top is 1 in thick, so the legs are 29 times as long; their feet are where the outer piece begins.
  const legFoot = Math.max(...wood.filter(({ x }) => x > left + 1).map(({ bottom }) => bottom));
  expect(under.length).toBeGreaterThan(1);
  expect(Math.max(...under.filter((l) => l.top < legFoot).map((l) => l.bottom - l.top))).toBeLessThan(
    (29 * shortest) / 4,
  );
  expect(
    extensionLines(
      new Map([[200, 30]]),
      new Map([[200, -60]]),
      sideOf({ left: 100, top: 100, right: 300, bottom: 400 }, "below"),
    ),
  ).toEqual([
    [
      [200, 342],
      [200, 348],
    ],
    [
      [200, 402],
      [200, 432.5],
    ],
  ]);
});

test("a piece as long and thin as a rod has its captions on the page", () => {
  const rods = ["a", "b"].map((id, i) => part(id, "A", "Rod", "board", { body: [0, i, 0, 120, i + 1, 1] }));
  const drawing = threeViews({ ...bench(), parts: rods }, { frame, pen });
  expect(words(drawing.items)).toContain("Right side");
  expect(outside(drawing.items, frame)).toEqual([]);
});

// At 1:12 two gaps of 1/16 beside a strip of 3/4 are 0.4, 4.5 and 0.4 points wide: their numbers stand below, in their order.
test("numbers of short dimensions one after the other stand beside each other, and none is lost", () => {
  const ends = [0, 240, 240.4, 244.9, 245.3, 500];
  const texts = ["13 7/8", "1/16", "3/4", "1/16", "13 7/8"];
  for (const name of ["below", "left"] as const) {
    const row = texts.map((text, i) => ({ from: 100 + (ends[i] ?? 0), to: 100 + (ends[i + 1] ?? 0), text }));
    const view = { left: 100, top: 100, right: 600, bottom: 600 };
    const plate = new Plate({ x: 0, y: 0, width: 700, height: 700 });
    const { items, lost } = drawRows([row], new Map(), sideOf(view, name), plate, pen);
    expect(lost).toBe(0);
    const small = textsOf(items).filter(({ text }) => text.length < 6);
    const along = small.map(({ x, y }) => (name === "below" ? x : y));
    expect(small.map(({ text }) => text)).toEqual(["1/16", "3/4", "1/16"]);
    expect(along).toEqual([...along].sort((a, b) => a - b));
    expect(clashes(items)).toEqual([]);
  }
});

test("what is alike and has no mark on the rule is told once, by its sum", () => {
  // From 4 to 25 in four of 5 1/4; of five sixths of an inch a rule in sixteenths has none: 3 1/3 is told as 3 5/16.
  const sixteenth = inches(1, 16);
  const round = (length: Length) => roundTo(length, sixteenth);
  const rounding = { ...printing, printed: round, marked: round };
  const said = (stops: readonly Length[]) => spans(stops, inches(0), inches(25), rounding).map(({ text }) => text);
  expect(said([16, 37, 58, 79].map((n) => inches(n, 4)))).toEqual(["4", "4 × 5.25"]);
  expect(said([24, 29, 34, 39, 44].map((n) => inches(n, 6)))).toEqual(["4", "4 equal: 3.3125", "17.6875"]);
});
