import fc from "fast-check";
import { expect, test } from "vitest";
import { cut, distance, EMPTY, plane, type Solid, solidBox, translate, type Vec } from "../../src/geometry/index.ts";
import { rational } from "../../src/units/rational.ts";
import { anyOblique, board, cube, numbers, point, SIDE } from "./making.ts";

test("the gap between boxes is exact", () => {
  const far = (x: number, y: number, z: number) => distance(cube, translate(cube, point(x, y, z)));
  expect(far(SIDE + 1, 0, 0)).toBe(1);
  expect(far(0, -SIDE - 12_345, 500)).toBe(12_345);
  expect(far(SIDE + 3, SIDE + 4, 0)).toBe(5);
  expect(far(SIDE + 2, SIDE + 3, SIDE + 6)).toBe(7);
  expect(far(SIDE, 0, 0)).toBe(0);
  expect(far(10, 10, 10)).toBe(0);
  expect(distance(cube, translate(cube, [rational(SIDE * 3 + 1, 3), rational(0), rational(0)]))).toBeCloseTo(1 / 3, 9);
  expect(distance(cube, EMPTY)).toBe(Infinity);
});

test("the nearest pieces count", () => {
  const inch = 406_400;
  const side = board([0, 0, 0, 0.75, 11, 48], [0.5, -1, 14, 1, 12, 14.75]);
  expect(distance(side, board([1, 0, 14, 20, 11, 14.75]))).toBe(inch / 4);
  // The same shelf, thinner than the dado is wide: it is nearer to the walls than to the bottom.
  expect(distance(side, board([0.625, 0, 14.0625, 20, 11, 14.6875]))).toBe(inch / 16);
});

test("over a slope the distance is square to it", () => {
  const wedge = cut(cube, plane(3n, 0n, 4n, 3500n));
  const box = solidBox(point(900, 200, 900), point(2000, 800, 2000));
  expect(distance(wedge, box)).toBeCloseTo((3 * 900 + 4 * 900 - 3500) / 5, 9);
});

test("between crossed edges the distance is along the common perpendicular", () => {
  const lower = [1n, -1n].reduce<Solid>((so, s) => cut(so, plane(0n, s, 1n, s === 1n ? 1000n : 0n)), cube);
  const upper = [1n, -1n].reduce<Solid>((so, s) => cut(so, plane(s, 0n, -1n, s === 1n ? 0n : -1000n)), cube);
  expect(distance(lower, translate(upper, point(0, 0, 70)))).toBeCloseTo(70, 9);
});

test("no plane keeps bodies farther apart than they are, and the best one just as far", () => {
  // The distance is the greatest gap over all directions; that function has one hill, so climbing finds it.
  const random = numbers(21);
  const anyBody = fc.array(anyOblique, { minLength: 1, maxLength: 3 }).map((planes) => planes.reduce(cut, cube));
  const shift = fc.integer({ min: -3 * SIDE, max: 3 * SIDE });
  let apart = 0;
  fc.assert(
    fc.property(anyBody, anyBody, shift, shift, shift, (a, b, x, y, z) => {
      const there = translate(b, point(x, y, z));
      const [p, q] = [a.pieces[0], there.pieces[0]];
      fc.pre(p !== undefined && q !== undefined);
      const along = (n: Vec, v: { x: number; y: number; z: number }) => n[0] * v.x + n[1] * v.y + n[2] * v.z;
      const gap = (n: Vec) =>
        Math.min(...q.vertices.map((v) => along(n, v))) - Math.max(...p.vertices.map((v) => along(n, v)));
      let best: Vec = [1, 0, 0];
      for (let i = 0; i < 4000; i++) {
        const step = i < 200 ? 10 : 0.995 ** (i - 200);
        const v = best.map((c) => c + step * (random() - 0.5));
        const size = Math.sqrt(v.reduce((so, c) => so + c * c, 0));
        const n = v.map((c) => c / size) as [number, number, number];
        if (gap(n) > gap(best)) best = n;
      }
      const found = distance(a, there);
      expect(found).toBeGreaterThanOrEqual(gap(best) - 1e-6);
      if (gap(best) > 0) {
        apart++;
        expect(found).toBeLessThanOrEqual(gap(best) * 1.001 + 0.5);
      }
    }),
    { numRuns: 80, seed: 7 },
  );
  expect(apart).toBeGreaterThan(30);
});
