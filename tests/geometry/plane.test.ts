import fc from "fast-check";
import { expect, test } from "vitest";
import {
  axisPlane,
  boxPlanes,
  flip,
  meet,
  plane,
  planeThrough,
  planeThroughPoints,
  side,
  vertexAt,
} from "../../src/geometry/index.ts";
import { rational } from "../../src/units/rational.ts";
import { anyPlane, point } from "./making.ts";

test("equal planes are one object, in lowest terms", () => {
  expect(plane(2n, 4n, -6n, 8n)).toBe(plane(1n, 2n, -3n, 4n));
  expect(plane(0n, 0n, 5n, 0n)).toBe(axisPlane(2, 1, rational(0)));
  expect(flip(flip(plane(1n, 2n, 3n, 4n)))).toBe(plane(1n, 2n, 3n, 4n));
  expect(axisPlane(0, -1, rational(7, 3))).toBe(plane(-3n, 0n, 0n, -7n));
  expect(() => plane(0n, 0n, 0n, 1n)).toThrow(RangeError);
});

test("a plane through a point with fractions, and through three points", () => {
  const at = [rational(1, 2), rational(1, 3), rational(1, 5)] as const;
  expect(planeThrough(at, [1n, 1n, 1n])).toBe(plane(30n, 30n, 30n, 31n));
  // Counter-clockwise seen from above: outward is up.
  expect(planeThroughPoints(point(0, 0, 2), point(1, 0, 2), point(0, 1, 2))).toBe(plane(0n, 0n, 1n, 2n));
  expect(planeThroughPoints([rational(1, 2), rational(0), rational(0)], point(0, 1, 0), point(0, 0, 1))).toBe(
    plane(2n, 1n, 1n, 1n),
  );
  expect(() => planeThroughPoints(point(0, 0, 0), point(1, 1, 1), point(2, 2, 2))).toThrow(RangeError);
});

test("three planes meet on all three, to the last digit", () => {
  fc.assert(
    fc.property(anyPlane, anyPlane, anyPlane, (p, q, r) => {
      const determinant = p.A * (q.B * r.C - q.C * r.B) - p.B * (q.A * r.C - q.C * r.A) + p.C * (q.A * r.B - q.B * r.A);
      fc.pre(determinant !== 0n);
      const { X, Y, Z, W } = meet(p, q, r);
      expect(W > 0n).toBe(true);
      for (const { A, B, C, D } of [p, q, r]) expect(A * X + B * Y + C * Z).toBe(D * W);
    }),
  );
});

test("sides agree with whole-number arithmetic, also where doubles cannot tell", () => {
  const huge = fc.bigInt({ min: -(2n ** 90n), max: 2n ** 90n });
  const denominator = fc.bigInt({ min: 1n, max: 2n ** 80n });
  const anyPoint = fc
    .tuple(huge, huge, huge, denominator)
    .map(([x, y, z, d]) => [rational(x, d), rational(y, d), rational(z, d)] as const);
  const anyNormal = fc.tuple(huge, huge, huge).filter((n) => n.some((c) => c !== 0n));
  const anyShift = fc.constantFrom(-1n, 0n, 1n);
  fc.assert(
    fc.property(anyPoint, anyNormal, anyShift, (at, normal, shift) => {
      const through = planeThrough(at, normal);
      // The plane through the point, and the two next to it: a shift so small that doubles see none.
      const near = plane(through.A, through.B, through.C, through.D + shift);
      expect(side(vertexAt(at), near) + Number(shift)).toBe(0);
    }),
  );
});

test("sides of whole points agree where sums just leave the whole numbers of doubles", () => {
  const coordinate = fc.bigInt({ min: 2n ** 36n, max: 2n ** 40n });
  const factor = fc.bigInt({ min: -(2n ** 20n), max: 2n ** 20n });
  fc.assert(
    fc.property(fc.tuple(coordinate, coordinate, coordinate), fc.tuple(factor, factor, factor), (at, normal) => {
      fc.pre(normal.every((n) => n !== 0n));
      const D = at.reduce((so, c, i) => so + c * (normal[i] ?? 0n), 0n);
      const vertex = vertexAt([rational(at[0]), rational(at[1]), rational(at[2])]);
      for (const shift of [-1n, 0n, 1n])
        expect(side(vertex, plane(normal[0], normal[1], normal[2], D + shift)) + Number(shift)).toBe(0);
    }),
    { numRuns: 2000 },
  );
});

test("a side is found where the digits exceed the range of doubles", () => {
  const at = vertexAt([rational(1n, 3n ** 800n), rational(10n ** 400n + 1n, 10n ** 400n), rational(0)]);
  expect(at.y).toBe(1);
  expect(side(at, plane(0n, 1n, 0n, 1n))).toBe(1);
  expect(side(at, plane(-1n, 0n, 0n, 0n))).toBe(-1);
});

test("the planes of a box face outward", () => {
  const planes = boxPlanes(point(0, 0, 0), point(2, 4, 6));
  expect(planes).toHaveLength(6);
  for (const p of planes) expect(side(vertexAt(point(1, 2, 3)), p)).toBe(-1);
  for (const outside of [
    point(-1, 2, 3),
    point(3, 2, 3),
    point(1, -1, 3),
    point(1, 5, 3),
    point(1, 2, -1),
    point(1, 2, 7),
  ])
    expect(planes.filter((p) => side(vertexAt(outside), p) > 0)).toHaveLength(1);
});
