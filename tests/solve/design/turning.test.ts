import { expect, test } from "vitest";
import { centroid, solidBox, volume } from "../../../src/geometry/index.ts";
import { turnAbout } from "../../../src/geometry/placement.ts";
import { holeOnBench, placedArrangement } from "../../../src/solve/design/turning.ts";
import type { Fastener, Hole, Part, Point } from "../../../src/solve/design.ts";
import { rational, toNumber, ZERO } from "../../../src/units/rational.ts";

/** A quarter turn about the upward direction: (x, y, z) goes to (-y, x, z), as worked out by hand. */
const QUARTER = turnAbout(2, rational(90));
const at = (x: number, y: number, z: number): Point => [rational(x), rational(y), rational(z)];
const numbers = (point: Point): readonly number[] => point.map((n) => toNumber(n) + 0);
const KEEP = { edge: ZERO, end: ZERO, under: ZERO };

const bolt: Fastener = {
  id: "f1",
  joint: "j1",
  kind: "bolt",
  item: "bolt",
  length: rational(40),
  rod: rational(6),
  head: { at: at(10, 2, 3), diameter: rational(12), height: rational(4), seat: "proud" },
  direction: [1, 0, 0],
  through: ["a"],
  into: "b",
  travelsWith: null,
  nut: { at: at(50, 2, 3), direction: [-1, 0, 0], diameter: rational(12), height: rational(5) },
  body: solidBox(at(10, 0, 0), at(50, 2, 3)),
};
const slot: Hole = {
  part: "a",
  kind: "slot",
  at: at(10, 2, 3),
  direction: [0, 0, -1],
  stages: [{ diameter: rational(6), depth: rational(20) }],
  through: true,
  slot: { along: [1, 0, 0], length: rational(12) },
  for: "f1",
  keep: KEEP,
  atBench: true,
};

test("a bolt's nut and a fastener's body are turned with it", () => {
  const { fasteners } = placedArrangement({ fasteners: [bolt], holes: [] }, QUARTER);
  const [turned] = fasteners;
  expect(numbers(turned?.head.at as Point)).toEqual([-2, 10, 3]);
  expect(numbers(turned?.nut?.at as Point)).toEqual([-2, 50, 3]);
  expect((turned?.nut?.direction ?? []).map((n) => n + 0)).toEqual([0, -1, 0]);
  const body = turned?.body as NonNullable<Fastener["body"]>;
  expect(toNumber(volume(body))).toBe(40 * 2 * 3);
  // From 10 to 50 along x and 0 to 2 along y: now from -2 to 0, and 10 to 50.
  const middle = centroid(body);
  [-1, 30, 1.5].forEach((n, i) => {
    expect(middle[i]).toBeCloseTo(n, 9);
  });
});

test("a slot is drawn out along the turned direction, and lies along the board again on the bench", () => {
  const { holes } = placedArrangement({ fasteners: [], holes: [slot] }, QUARTER);
  const hole = holes[0] as Hole;
  expect(hole.slot?.along.map((n) => n + 0)).toEqual([0, 1, 0]);
  const part = { turned: { placement: QUARTER } } as Part;
  expect(holeOnBench(part, hole)).toEqual(slot);
});
