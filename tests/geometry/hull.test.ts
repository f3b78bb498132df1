import fc from "fast-check";
import { expect, test } from "vitest";
import {
  convexOfHull,
  convexOfPiece,
  cut,
  cylinder,
  hullDepth,
  hullHits,
  overlapDepth,
  plane,
  type Solid,
  shifted,
  solidBox,
  translate,
  type Vec,
} from "../../src/geometry/index.ts";
import { TOLERANCE } from "../../src/units/length.ts";
import { anyOblique, board, cube, numbers, point, SIDE } from "./making.ts";

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

test("a prism around a cylinder holds the cylinder, and its corners are where its planes meet", () => {
  const random = numbers(3);
  for (const direction of [
    [0, 0, 1],
    [0.6, 0, -0.8],
    [2 / 3, -1 / 3, 2 / 3],
  ] as const) {
    const from: Vec = [100, -200, 300];
    const hull = cylinder(from, direction, 1000, 5000);
    expect(hull.planes).toHaveLength(14);
    expect(hull.vertices).toHaveLength(24);
    for (const at of hull.vertices) {
      const heights = hull.planes.map(({ normal, d }) => dot(normal, at) - d);
      expect(Math.max(...heights)).toBeLessThan(1e-9);
      expect(heights.filter((h) => h > -1e-9)).toHaveLength(3);
    }
    for (let i = 0; i < 500; i++) {
      // A random point on the cylinder: a random vector made square to the axis.
      const v: Vec = [random() - 0.5, random() - 0.5, random() - 0.5];
      const along = dot(v, direction);
      const out: Vec = [v[0] - along * direction[0], v[1] - along * direction[1], v[2] - along * direction[2]];
      const size = Math.sqrt(dot(out, out));
      const t = random() * 5000;
      const at = from.map((c, k) => c + t * (direction[k] ?? 0) + (1000 * (out[k] ?? 0)) / size) as [
        number,
        number,
        number,
      ];
      const heights = hull.planes.map(({ normal, d }) => dot(normal, at) - d);
      expect(Math.max(...heights)).toBeLessThan(1e-9);
      // 12 sides stand off by no more than 1 − cos 15°.
      expect(Math.max(...heights.slice(2))).toBeGreaterThan(-35);
    }
  }
});

test("a driver beside a panel is stopped by more than the tolerance, not by less", () => {
  const panel = solidBox(point(100_000, 0, 0), point(200_000, 400_000, 400_000));
  const at = (radius: number) => cylinder([0, 200_000, 500_000], [0, 0, -1], radius, 300_000, 4);
  expect(hullHits(at(99_000), panel)).toBe(false);
  expect(hullHits(at(200_000), panel)).toBe(true);
  const endOn = (length: number) => cylinder([150_000, 200_000, 500_000], [0, 0, -1], 10_000, length);
  expect(hullHits(endOn(100_000), panel)).toBe(false);
  expect(hullHits(endOn(100_000 + TOLERANCE), panel)).toBe(false);
  expect(hullHits(endOn(100_001 + TOLERANCE), panel)).toBe(true);
  expect(hullDepth(endOn(100_500), panel)).toBeCloseTo(500, 6);
});

test("through a hole in a board nothing is hit", () => {
  const holed = board([0, 0, 0, 10, 10, 1], [4, 4, -1, 6, 6, 2]);
  const inch = 406_400;
  const rod = (x: number, radius: number) =>
    cylinder([x * inch, 5 * inch, 3 * inch], [0, 0, -1], radius * inch, 6 * inch);
  expect(hullHits(rod(5, 0.9), holed)).toBe(false);
  expect(hullHits(rod(5.2, 0.9), holed)).toBe(true);
});

test("a hull of a piece reaches as deep as the piece", () => {
  const anyBody = fc.array(anyOblique, { maxLength: 3 }).map((planes) => planes.reduce(cut, cube));
  const shift = fc.integer({ min: -SIDE, max: SIDE });
  fc.assert(
    fc.property(anyBody, anyBody, shift, shift, shift, (a, b, x, y, z) => {
      const [p] = a.pieces;
      fc.pre(p !== undefined);
      const there = translate(b, point(x, y, z));
      expect(hullDepth(convexOfPiece(p), there)).toBeCloseTo(overlapDepth(a, there), 6);
    }),
  );
});

test("a cylinder hits where points of it lie inside the wood", () => {
  const random = numbers(9);
  const wood: Solid = cut(board([0, 0, 0, 8, 8, 4], [3, -1, 2, 5, 9, 5]), plane(1n, 1n, 2n, 6_000_000n));
  const inch = 406_400;
  let [hits, misses] = [0, 0];
  for (let i = 0; i < 400; i++) {
    const direction = (
      [
        [0, 0, 1],
        [1, 0, 0],
        [0.6, 0.8, 0],
        [2 / 3, -1 / 3, 2 / 3],
      ] as const
    )[i % 4] ?? [0, 0, 1];
    const from: Vec = [(random() * 16 - 4) * inch, (random() * 16 - 4) * inch, (random() * 12 - 4) * inch];
    const hull = cylinder(from, direction, (0.1 + random()) * inch, (1 + random() * 3) * inch);
    const found = hullHits(hull, wood);
    let sampled = -Infinity;
    for (let k = 0; k < 3000; k++) {
      // A random mixture of six corners fills the hull, thinly at its rim.
      const weights = [1, 2, 3, 4, 5, 6].map(() => random() ** 3);
      const total = weights.reduce((so, w) => so + w);
      const corners = weights.map(() => hull.vertices[Math.floor(random() * hull.vertices.length)] ?? from);
      const at = [0, 1, 2].map((c) => corners.reduce((so, v, n) => so + (v[c] ?? 0) * ((weights[n] ?? 0) / total), 0));
      for (const piece of wood.pieces) {
        const inside = Math.min(
          ...piece.faces.map(
            ({ plane: p }) => (p.d - p.a * (at[0] ?? 0) - p.b * (at[1] ?? 0) - p.c * (at[2] ?? 0)) / p.norm,
          ),
        );
        sampled = Math.max(sampled, inside);
      }
    }
    if (sampled > TOLERANCE) expect(found).toBe(true);
    if (found && hullDepth(hull, wood) > 0.2 * inch) expect(sampled).toBeGreaterThan(0);
    if (found) hits++;
    else misses++;
  }
  expect(Math.min(hits, misses)).toBeGreaterThan(60);
});

test("a shifted hull is judged as the one that is made where it was shifted to", () => {
  const wood = cube;
  const random = numbers(11);
  let hits = 0;
  for (let i = 0; i < 200; i++) {
    const direction: Vec = i % 2 === 0 ? [0.6, 0, -0.8] : [2 / 3, -1 / 3, 2 / 3];
    const from: Vec = [random() * SIDE, random() * SIDE, random() * SIDE];
    const by: Vec = [(random() - 0.5) * SIDE, (random() - 0.5) * SIDE, (random() - 0.5) * SIDE];
    const [near, far] = [0.05 * SIDE, 0.3 * SIDE];
    const there = shifted(convexOfHull(cylinder(from, direction, near, far)), by);
    const made = cylinder([from[0] + by[0], from[1] + by[1], from[2] + by[2]], direction, near, far);
    expect(hullDepth(there, wood)).toBeCloseTo(hullDepth(made, wood), 3);
    if (hullDepth(there, wood) > TOLERANCE) hits += 1;
  }
  expect(hits).toBeGreaterThan(20);
  expect(hits).toBeLessThan(180);
});
