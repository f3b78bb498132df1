import { describe, expect, test } from "vitest";
import { bodiesOf } from "../../../src/render/drawing/dimension/bodies.ts";
import { chosen } from "../../../src/render/drawing/dimension/chain.ts";
import { levelEnds } from "../../../src/render/drawing/dimension/slanted.ts";
import { stations } from "../../../src/render/drawing/dimension/stations.ts";
import { threeViews } from "../../../src/render/drawing/index.ts";
import { outsideOf } from "../../../src/render/drawing/outside.ts";
import { aspectsOf } from "../../../src/render/drawing/three-views/aspect.ts";
import { ORDERS, rowsOf, setOut } from "../../../src/render/drawing/three-views/setting-out.ts";
import type { Build, BuiltPart } from "../../../src/solve/build.ts";
import { inches, type Length, roundTo, toInches } from "../../../src/units/index.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { at, inch, part, type Six } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { clashes, outside, words } from "./look.ts";

const frame = { x: 60, y: 64, width: 510, height: 640 };
const said = (items: Parameters<typeof words>[0]) => words(items).map((word) => word.replaceAll(/\s/gu, " "));
const plain = (parts: readonly BuiltPart[]): Build => ({ ...bench(), parts, holes: [], hardware: [], motions: [] });
const broadPart = (id: string, body: Six) => part(id, "A", "Part", "board", { body });

/** A box of 39 × 19 × 18 with fingers at its corners on a plinth of 36 × 16, under a lid of 40 × 20. In inches, by hand. */
function chest(): readonly BuiltPart[] {
  const fingers = [3, 5, 7, 9, 11, 13, 15, 17, 19];
  const sockets = (x: number): readonly Six[] => fingers.map((z) => [x, 0.5, z, x + 0.75, 1.25, z + 1]);
  const both = [...sockets(0.5), ...sockets(38.75)];
  const front = part("front", "A", "Front", "board", { body: [0.5, 0.5, 3, 39.5, 1.25, 21], cuts: both });
  const cut = both.map(([x, y, z]) => ({
    ...{
      kind: "socket" as const,
      for: "fingers",
      origin: at(x, y, z),
      size: [inch(0.75), inch(1), inch(0.75)] as const,
    },
    ...{ along: [1, 0, 0] as const, across: [0, 0, 1] as const, into: [0, 1, 0] as const },
  }));
  const side = (id: string, x: number) =>
    part(id, "B", "Side", "board", { body: [x, 1.25, 3, x + 0.75, 19.5, 21], more: sockets(x) });
  // Its fingers belong to the body of a side.
  const whole = (made: BuiltPart): BuiltPart => ({ ...made, body: made.blank });
  return [
    { ...front, features: cut },
    ...[whole(side("left", 0.5)), whole(side("right", 38.75))],
    broadPart("plinth", [2, 2, 0, 38, 18, 3]),
    broadPart("lid", [0, 0, 21, 40, 20, 21.75]),
  ];
}

describe("a chest with fingers at its corners", () => {
  const build = plain(chest());
  const around = outsideOf(build.parts);
  if (!around) throw new Error("no wood");
  const [front] = aspectsOf(build, around);

  test("has no place at the roots of the fingers, whose lines show there: the inner face of a side", () => {
    expect(front.lines.flatMap(({ visible }) => visible).some(([a]) => Math.abs(a[0] - 1.25 * 406_400) < 1)).toBe(true);
    const places = stations(bodiesOf(build), front, 0).map((each) => toInches(each.at));
    expect(places).toEqual([0, 0.5, 2, 38, 39.5, 40]);
  });

  test("is measured along its box, its plinth and its lid, each in a row of its own that adds up", () => {
    const told = said(threeViews(build, { frame, pen }).items);
    for (const size of ["36", "39", "40"]) expect(told.filter((word) => word === size)).toHaveLength(1);
    expect(told.filter((word) => word === "2").length).toBeGreaterThanOrEqual(2);
    expect(told).toContain("1⁄2");
  });
});

test("what stands back is measured to its outside, though its inner face shows as much", () => {
  // Rails of 3/4 that stand 3/8 back from posts, at 1:9: 3 points and 9 points from the end.
  const faces: readonly [number, number][] = [
    [0.375, 1.125],
    [1.125, 0.375],
    [16.875, 17.625],
    [17.625, 16.875],
  ];
  const all = faces.map(([place, twin]) => ({
    ...{ at: inch(place), weight: 0.6, low: 0, high: 1, gap: false, twins: [inch(twin)] },
  }));
  const stops = chosen(all, inches(0), inches(18), { scale: 8 / 406_400, gap: 8.5, pitch: 24, face: "low" });
  expect(stops.map((stop) => toInches(stop.at))).toEqual([0.375, 17.625]);
});

test("a row of shelves is told as one though the bottom's underside shows a little more than its top", () => {
  const weights: readonly [number, number][] = [
    [3, 1],
    ...[3.75, 14.75, 25.75, 36.75].map((place): [number, number] => [place, 0.94]),
  ];
  const all = weights.map(([place, weight]) => ({
    ...{ at: inch(place), weight, low: 0, high: 1, gap: false, twins: [] as readonly Length[] },
  }));
  const stops = chosen(all, inches(0), inches(47.75 * 64, 64), {
    scale: 6 / 406_400,
    gap: 11,
    pitch: 14,
    face: "high",
  });
  expect(stops.map((stop) => toInches(stop.at))).toEqual([3.75, 14.75, 25.75, 36.75]);
});

test("a shelf low down is measured to what things stand on, of a plinth that stands as low the outside counts", () => {
  const faces: readonly [number, number][] = [
    [4.4375, 5.3125],
    [5.3125, 4.4375],
  ];
  const all = faces.map(([place, twin]) => ({
    ...{ at: inch(place), weight: 0.6, low: 0, high: 1, gap: false, twins: [inch(twin)] },
  }));
  const rules = { scale: 7.2 / 406_400, gap: 8.5, pitch: 24 };
  const told = (face: "low" | "high") =>
    chosen(all, inches(0), inches(20), { ...rules, face }).map((stop) => toInches(stop.at));
  expect(told("high")).toEqual([5.3125]);
  expect(told("low")).toEqual([4.4375]);
});

test("a chain in a short row has no more than seven dimensions, one in a long row nine", () => {
  const all = [2, 3, 6, 7.5, 10.5, 12, 15, 16].map((place) => ({
    ...{ at: inch(place), weight: 0.6, low: 0, high: 1, gap: false, twins: [] as readonly Length[] },
  }));
  const told = (scale: number) =>
    chosen(all, inches(0), inches(18), { scale: scale / 406_400, gap: 8.5, pitch: 24, face: "low" }).length + 1;
  expect(told(9)).toBeLessThanOrEqual(7);
  expect(told(12)).toBe(9);
});

test("legs that stand 1/4 back under a top, too little for a line of its own, are measured over all", () => {
  const legs = [0.25, 39.5].flatMap((x) =>
    [0.25, 17.5].map((y) => broadPart(`leg ${x} ${y}`, [x, y, 0, x + 2.25, y + 2.25, 29])),
  );
  const { items } = threeViews(plain([broadPart("top", [0, 0, 29, 42, 20, 30]), ...legs]), { frame, pen });
  expect(said(items)).toEqual(expect.arrayContaining(["42", "41 1⁄2", "20", "19 1⁄2"]));
});

test("where the legs of the loan desk stand and where they end below the top", () => {
  const { build } = solveText(textOf("loan-desk"));
  if (!build) throw new Error("does not compile");
  // They lean by 6°, 7 in from the ends of a top 1 in thick, 29 in above the floor, and are 2 1/4 thick: by hand.
  const lean = Math.tan(Math.PI / 30);
  const wide = 2.25 / Math.cos(Math.PI / 30);
  const leg = build.parts.find(({ id }) => id === "front-left-leg") as BuiltPart;
  const [foot, head] = levelEnds(leg, [0, 2]);
  const from = toInches(build.parts.find(({ id }) => id === "left-breadboard")?.body.low[0] ?? inches(0));
  expect(toInches(head?.from ?? inches(0)) - from).toBeCloseTo(7, 4);
  expect(toInches(head?.to ?? inches(0)) - from).toBeCloseTo(7 + wide, 4);
  expect(toInches(foot?.from ?? inches(0)) - from).toBeCloseTo(7 - 29 * lean, 4);
  // Seen from the side they are upright.
  expect(levelEnds(leg, [1, 2])).toEqual([]);
  const sixteenth = inches(1, 16);
  const rounding = {
    ...pen,
    print: (length: Length) => pen.print(roundTo(length, sixteenth)),
    printed: (length: Length) => roundTo(length, sixteenth),
    marked: (length: Length) => roundTo(length, sixteenth),
  };
  const told = said(threeViews(build, { frame, pen: rounding }).items);
  expect(told.filter((word) => word === "7")).toHaveLength(2);
  // 54 less twice 7 and 2.262.
  expect(told).toContain("35 1⁄2");
});

test("views one below the other with captions beside them go in larger, and keep clear", () => {
  const build = plain([broadPart("box", [0, 0, 0, 36, 18, 21.5])]);
  const around = outsideOf(build.parts);
  if (!around) throw new Error("no wood");
  const aspects = aspectsOf(build, around);
  const fits = (by: number) => {
    const scale = 72 / 406_400 / by;
    const told = () => rowsOf(build, aspects, scale);
    return ORDERS.filter((order) => setOut(told, aspects, scale, { room: frame, pen, order }) !== null);
  };
  expect(fits(8)).toEqual(["close"]);
  expect(fits(10)).toEqual(["aside", "stacked", "close"]);
  const { items, scale } = threeViews(build, { frame, pen });
  expect(scale).toBe("1:8");
  expect(clashes(items)).toEqual([]);
  expect(outside(items, frame)).toEqual([]);
});

// A divider of 23/32 in between bays of 16 15/16 and 16 29/32 in, 1/64 in beside the middle; at 1:12 its faces lie nearer than lines stand.
test("what stands in the middle, or a little beside it, has both of its faces", () => {
  const place = (at: number, twin: number) => ({
    ...{ at: inches(at * 32, 32), weight: 0.9, low: 0, high: 1, gap: false },
    twins: [inches(twin * 32, 32)],
  });
  const all = [place(23 / 32, 0), place(17 + 21 / 32, 18.375), place(18.375, 17 + 21 / 32), place(35 + 9 / 32, 36)];
  const stops = chosen(all, inches(0), inches(36), { scale: 6 / 406_400, gap: 8.5, pitch: 24, face: "low" });
  expect(stops.map(({ at }) => toInches(at))).toEqual([23 / 32, 17 + 21 / 32, 18.375, 35 + 9 / 32]);
});

// The side of a chest, 1/2 in behind its lid: 1/2 and 19 1/2 in, not left out for its two faces.
test("what is as deep as the piece but for a little is told by its face that stands back", () => {
  const station = (at: number, twin: number) => ({
    ...{ at: inches(at * 2, 2), weight: 0.9, low: 0, high: 1, gap: false },
    twins: [inches(twin * 2, 2)],
  });
  const stops = chosen([station(0.5, 20), station(20, 0.5)], inches(0), inches(20), {
    scale: 7.2 / 406_400,
    ...{ gap: 8.5, pitch: 24, face: "low" },
  });
  expect(stops.map(({ at }) => toInches(at))).toEqual([0.5]);
});
