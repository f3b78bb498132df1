import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  contact,
  cut,
  flip,
  overlapDepth,
  type Plane,
  plane,
  planeThrough,
  type Solid,
  solidBox,
  subtractBox,
  translate,
  unite,
} from "../../src/geometry/index.ts";
import { TOLERANCE, UNITS_PER_INCH } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";
import { anyPlane, board, point, SIDE, sixtyFourths } from "./making.ts";

const squareInches = (area: number): number => area / UNITS_PER_INCH ** 2;
const areas = (a: Solid, b: Solid): number[] => contact(a, b).map(({ area }) => squareInches(area));
const by = (solid: Solid, x: number, y: number, z: number): Solid => translate(solid, point(x, y, z));

describe("a shelf in a dado", () => {
  // Side 3/4 × 11 × 48 with a dado 1/4 deep at 14; shelf 3/4 thick, let in.
  const side = board([0, 0, 0, 0.75, 11, 48], [0.5, -1, 14, 1, 12, 14.75]);
  const shelf = board([0.5, 0, 14, 29.5, 11, 14.75]);

  test("touches the bottom and both walls of the dado, and overlaps nothing", () => {
    const found = contact(side, shelf);
    expect(found.map(({ normal }) => normal.map((n) => n + 0))).toEqual([
      [0, 0, -1],
      [0, 0, 1],
      [1, 0, 0],
    ]);
    const [upper, lower, bottom] = found.map(({ area }) => squareInches(area));
    expect(upper).toBeCloseTo(0.25 * 11, 9);
    expect(lower).toBeCloseTo(0.25 * 11, 9);
    expect(bottom).toBeCloseTo(0.75 * 11, 9);
    expect(found[2]?.centre.map((c) => c / UNITS_PER_INCH)).toEqual([0.5, 5.5, 14.375]);
    expect(overlapDepth(side, shelf)).toBe(0);
  });

  test("a shelf one unit low neither overlaps beyond the tolerance nor misses a contact", () => {
    const low = by(shelf, 0, 0, -1);
    expect(contact(side, low)).toHaveLength(3);
    expect(overlapDepth(side, low)).toBe(1);
    const short = by(shelf, 1, 0, 0);
    expect(contact(side, short)).toHaveLength(3);
    expect(overlapDepth(side, short)).toBe(0);
  });

  test("beyond the tolerance the contact is gone, or the overlap is there", () => {
    const faces = (dx: number, dz: number) => contact(side, by(shelf, dx, 0, dz)).length;
    expect(faces(TOLERANCE, 0)).toBe(3);
    expect(faces(TOLERANCE + 1, 0)).toBe(2);
    expect(faces(0, TOLERANCE)).toBe(3);
    expect(faces(0, TOLERANCE + 1)).toBe(1);
    expect(overlapDepth(side, by(shelf, 0, 0, TOLERANCE + 1))).toBe(TOLERANCE + 1);
  });

  test("seen from the shelf the same areas, the other way round", () => {
    const turned = contact(shelf, side);
    expect(turned.map(({ area }) => area).toSorted()).toEqual(
      contact(side, shelf)
        .map(({ area }) => area)
        .toSorted(),
    );
    for (const { plane, normal, polygons } of turned) {
      expect(normal[0] * plane.norm).toBeCloseTo(plane.a, 9);
      for (const [x, y, z] of polygons.flat()) expect(plane.a * x + plane.b * y + plane.c * z).toBeCloseTo(plane.d, 3);
    }
  });
});

test("a tenon in its mortise touches with cheeks, edges, end and shoulders", () => {
  // Leg 1 1/2 square; rail 1 × 4, tenon 1/2 × 3 × 1 long, in a mortise of its size.
  const leg = board([0, 0, 0, 1.5, 1.5, 29], [0.5, 0.5, 24.5, 1.5, 1, 27.5]);
  const rail = unite([board([1.5, 0.25, 24, 20, 1.25, 28]), board([0.5, 0.5, 24.5, 1.5, 1, 27.5])]);
  const found = contact(rail, leg);
  const area = (x: number, y: number, z: number) =>
    found
      .filter(({ normal }) => normal[0] === x && normal[1] === y && normal[2] === z)
      .map((c) => squareInches(c.area));
  expect(area(0, 1, 0)[0]).toBeCloseTo(3, 9);
  expect(area(0, 0, 1)[0]).toBeCloseTo(0.5, 9);
  const [end, shoulders] = area(-1, 0, 0).toSorted();
  expect(end).toBeCloseTo(0.5 * 3, 9);
  expect(shoulders).toBeCloseTo(1 * 4 - 0.5 * 3, 9);
  expect(found).toHaveLength(6);
  expect(overlapDepth(rail, leg)).toBe(0);
});

describe("a rail against a tapered leg", () => {
  const taper = planeThrough(sixtyFourths(96, 0, 20 * 64), [29n, 0n, -1n]);
  const leg = cut(board([0, 0, 0, 2, 2, 29]), taper);
  const stretcher = board([1, 0.5, 6, 20, 1.5, 9]);

  test("cut by the leg's own plane it touches all over and overlaps nothing", () => {
    const fitted = cut(stretcher, flip(taper));
    expect(overlapDepth(leg, fitted)).toBe(0);
    const [only, ...others] = contact(leg, fitted);
    expect(others).toEqual([]);
    // 3 high along the slope, 1 wide.
    expect(squareInches(only?.area ?? 0)).toBeCloseTo(3 * Math.sqrt(1 + 1 / 29 ** 2), 6);
    expect(only?.plane).toBe(taper);
  });

  test("cut by a plane of its own, rounded, it touches within the tolerance", () => {
    // The same slope, half a unit off.
    const rounded = flip(
      planeThrough([rational(609_601 * 2 - 1, 2), rational(0), rational(20 * UNITS_PER_INCH)], [29n, 0n, -1n]),
    );
    const fitted = cut(stretcher, rounded);
    expect(overlapDepth(leg, fitted)).toBeLessThan(1);
    expect(contact(leg, fitted)).toHaveLength(1);
  });

  test("left square it meets the slope in an edge, and that is no contact", () => {
    const square = board([1.5, 0.5, 17, 20, 1.5, 20]);
    expect(contact(leg, square)).toEqual([]);
    expect(overlapDepth(leg, square)).toBeLessThan(1);
  });
});

test("boxes that touch in an edge or a corner are not in contact", () => {
  const box = solidBox(point(0, 0, 0), point(100_000, 100_000, 100_000));
  expect(contact(box, by(box, 100_000, 100_000, 0))).toEqual([]);
  expect(contact(box, by(box, 100_000, 100_000, 100_000))).toEqual([]);
  expect(contact(box, by(box, 100_000, 99_900, 0))).toEqual([]);
  expect(contact(box, by(box, 100_000, 50_000, 0))).toHaveLength(1);
});

test("feet of one part in one plane are one contact with several areas", () => {
  const bench = board([0, 0, 0, 40, 10, 16], [2, -1, -1, 38, 11, 15]);
  const floor = board([-10, -10, -1, 60, 60, 0]);
  const found = contact(bench, floor);
  expect(found).toHaveLength(1);
  expect(squareInches(found[0]?.area ?? 0)).toBeCloseTo(2 * 2 * 10, 9);
  expect(found[0]?.centre.map((c) => c / UNITS_PER_INCH)).toEqual([20, 5, 0]);
  expect(found[0]?.polygons).toHaveLength(2);
});

test("a seam is not a face: a thin shaving split off a part does not double its contact", () => {
  const block = board([0, 0, 0, 4, 4, 4]);
  const high = [rational(4 * UNITS_PER_INCH)] as const;
  const shaved = subtractBox(block, point(-1, -1, 4 * UNITS_PER_INCH - 10), [
    high[0],
    high[0],
    rational(5 * UNITS_PER_INCH),
  ]);
  const shaving = solidBox([rational(0), rational(0), rational(4 * UNITS_PER_INCH - 10)], [high[0], high[0], high[0]]);
  const whole = unite([shaved, shaving]);
  expect(areas(whole, board([1, 1, 4, 3, 3, 6]))).toEqual([4]);
});

test("the area in contact does not depend on how the solids are divided", () => {
  // The planes of `making` for a cube a thousand times as large, which is cut in two at half its height.
  const K = 1000;
  const lower = solidBox(point(0, 0, 0), point(SIDE * K, SIDE * K, (SIDE * K) / 2));
  const upper = solidBox(point(0, 0, (SIDE * K) / 2), point(SIDE * K, SIDE * K, SIDE * K));
  fc.assert(
    fc.property(fc.array(anyPlane, { maxLength: 4 }), fc.array(anyPlane, { maxLength: 4 }), (some, others) => {
      const divide = (solid: Solid, { A, B, C, D }: Plane): Solid => {
        const p = plane(A, B, C, D * BigInt(K));
        return unite([cut(solid, p), cut(solid, flip(p))]);
      };
      const found = contact(some.reduce(divide, lower), others.reduce(divide, upper));
      expect(found).toHaveLength(1);
      expect((found[0]?.area ?? 0) / (SIDE * K) ** 2).toBeCloseTo(1, 7);
    }),
    { numRuns: 100 },
  );
});
