import fc from "fast-check";
import { expect, test } from "vitest";
import {
  cut,
  intersectPiece,
  overlapDepth,
  plane,
  type Solid,
  solidBox,
  translate,
  type Vec,
} from "../../src/geometry/index.ts";
import { rational } from "../../src/units/rational.ts";
import { anyOblique, board, cube, point, SIDE } from "./making.ts";

const by = (solid: Solid, [x, y, z]: Vec): Solid => translate(solid, point(x, y, z));

test("boxes overlap by the least way out", () => {
  expect(overlapDepth(cube, by(cube, [SIDE - 30, 0, 0]))).toBe(30);
  expect(overlapDepth(cube, by(cube, [SIDE - 30, SIDE - 20, 10 - SIDE]))).toBe(10);
  expect(overlapDepth(cube, by(cube, [SIDE, 0, 0]))).toBe(0);
  // A small box deep inside: the way out is to the nearest face.
  expect(overlapDepth(cube, solidBox(point(100, 300, 400), point(200, 400, 500)))).toBe(200);
});

test("an edge that reaches through a slope overlaps by its depth square to the slope", () => {
  // x + z ≤ 1000 against a box with its corner at (480, 480): 40 / √2 beyond the plane.
  const wedge = cut(cube, plane(1n, 0n, 1n, 1000n));
  const box = solidBox(point(480, 0, 480), point(2000, 1000, 2000));
  expect(overlapDepth(wedge, box)).toBeCloseTo(40 / Math.SQRT2, 9);
  expect(overlapDepth(box, wedge)).toBeCloseTo(40 / Math.SQRT2, 9);
});

test("two crossed edges: only the direction across both tells the depth", () => {
  // Roofs with their ridges at z = 500: one along x below, one along y above, sunk in by 60.
  const lower = [1n, -1n].reduce<Solid>((so, s) => cut(so, plane(0n, s, 1n, s === 1n ? 1000n : 0n)), cube);
  const upper = [1n, -1n].reduce<Solid>((so, s) => cut(so, plane(s, 0n, -1n, s === 1n ? 0n : -1000n)), cube);
  expect(lower.high[2]).toBe(500);
  expect(upper.low[2]).toBe(500);
  expect(overlapDepth(lower, by(upper, [0, 0, -60]))).toBeCloseTo(60, 9);
});

test("the depth is that of the nearest face of the Minkowski difference, found by trying all planes through three of its points", () => {
  const anyBody = fc.array(anyOblique, { maxLength: 2 }).map((planes) => planes.reduce(cut, cube));
  const anyShift = fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: -700, max: 700 })));
  let overlapping = 0;
  fc.assert(
    fc.property(anyBody, anyBody, anyShift, (a, b, [x = 0, y = 0, z = 0]) => {
      const [p, q] = [a.pieces[0], by(b, [x, y, z]).pieces[0]];
      fc.pre(p !== undefined && q !== undefined);
      const found = overlapDepth(a, by(b, [x, y, z]));
      const planes = q.faces.map((face) => face.plane);
      const expected = nearestFace(
        p.vertices.flatMap((v) => q.vertices.map((w): Vec => [v.x - w.x, v.y - w.y, v.z - w.z])),
      );
      if (intersectPiece(p, planes)) {
        overlapping++;
        expect(found).toBeCloseTo(expected, 5);
      } else expect(found).toBeLessThan(1e-6);
    }),
    { numRuns: 60, seed: 7 },
  );
  expect(overlapping).toBeGreaterThan(20);
});

test("parts that fit do not overlap, however many pieces they have", () => {
  const left = board([0, 0, 0, 0.75, 11, 48], [0.5, -1, 14, 1, 12, 14.75], [0.5, -1, 28, 1, 12, 28.75]);
  const shelf = board([0.5, 0, 14, 20, 11, 14.75], [14, -1, 14, 15, 5, 15]);
  expect(overlapDepth(left, shelf)).toBe(0);
  expect(overlapDepth(left, translate(shelf, [rational(1, 3), rational(0), rational(0)]))).toBe(0);
  expect(overlapDepth(left, translate(shelf, [rational(-1, 3), rational(0), rational(0)]))).toBeCloseTo(1 / 3, 6);
});

/** How far the origin lies inside the hull of the points. */
function nearestFace(all: readonly Vec[]): number {
  const points = [...new Map(all.map((v) => [v.map((c) => c.toFixed(6)).join(), v])).values()];
  let least = Infinity;
  for (const [i, u] of points.entries())
    for (const [j, v] of points.slice(0, i).entries())
      for (const w of points.slice(0, j)) {
        const [a, b] = [minus(v, u), minus(w, u)];
        const n: Vec = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
        const size = Math.sqrt(dot(n, n));
        if (size < 1e-6 * Math.sqrt(dot(a, a) * dot(b, b))) continue;
        const height = dot(n, u);
        if (Math.abs(height) / size >= least) continue;
        const outward = height < 0 ? -1 : 1;
        if (points.every((at) => outward * (dot(n, at) - height) <= 1e-6 * size)) least = Math.abs(height) / size;
      }
  return least;
}

const minus = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
