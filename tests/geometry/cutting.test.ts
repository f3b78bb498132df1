import fc from "fast-check";
import { expect, test } from "vitest";
import {
  axisPlane,
  boxPiece,
  centroid,
  clip,
  cut,
  EMPTY,
  flip,
  intersect,
  intersectPiece,
  isEmpty,
  type Piece,
  type Plane,
  plane,
  type Solid,
  side,
  solidBox,
  split,
  subtract,
  subtractBox,
  unite,
  volume,
  volume6,
} from "../../src/geometry/index.ts";
import { add, equal, multiply, rational } from "../../src/units/rational.ts";
import { anyPlane, anyRegion, cube, numbers, point, SIDE } from "./making.ts";

const inside = (planes: readonly Plane[], [x, y, z]: readonly bigint[], d: bigint): boolean =>
  planes.every(({ A, B, C, D }) => A * (x ?? 0n) + B * (y ?? 0n) + C * (z ?? 0n) < D * d);
const planesOf = (piece: Piece): readonly Plane[] => piece.faces.map((face) => face.plane);

/** Corners on their planes and inside all others, every edge in two faces, and Euler's V − E + F = 2. */
function expectSound(piece: Piece): void {
  const directed = new Set<string>();
  for (const { plane: own, vertices } of piece.faces) {
    expect(vertices.length).toBeGreaterThanOrEqual(3);
    vertices.forEach((v, i) => {
      expect(side(v, own)).toBe(0);
      const w = vertices[(i + 1) % vertices.length];
      directed.add(`${piece.vertices.indexOf(v)}>${w ? piece.vertices.indexOf(w) : "?"}`);
    });
    for (const v of piece.vertices) expect(side(v, own)).toBeLessThanOrEqual(0);
  }
  for (const edge of directed) expect(directed.has(edge.split(">").reverse().join(">"))).toBe(true);
  expect(piece.vertices.length - directed.size / 2 + piece.faces.length).toBe(2);
  expect(volume6(piece).n > 0n).toBe(true);
}

test("what is left and what is removed make up the blank, exactly, under any cuts", () => {
  fc.assert(
    fc.property(fc.array(anyRegion, { minLength: 1, maxLength: 5 }), (regions) => {
      let left: Solid = cube;
      let removed = rational(0);
      for (const region of regions) {
        removed = add(removed, volume(intersect(left, region)));
        left = subtract(left, region);
      }
      expect(add(volume(left), removed)).toEqual(rational(SIDE ** 3));
      left.pieces.forEach(expectSound);
      left.pieces.forEach((p, i) => {
        for (const q of left.pieces.slice(i + 1)) expect(intersectPiece(p, planesOf(q))).toBeNull();
      });
    }),
    { numRuns: 150 },
  );
});

test("a point is in exactly one piece when it is in the blank and in no region", () => {
  const random = numbers(11);
  fc.assert(
    fc.property(fc.array(anyRegion, { minLength: 1, maxLength: 4 }), (regions) => {
      const left = regions.reduce(subtract, cube);
      for (let i = 0; i < 50; i++) {
        // A prime denominator beyond those of the planes: the point lies on none of them.
        const d = 1_000_003n;
        const at = [1, 2, 3].map(() => BigInt(1 + Math.floor(random() * 1_000_002)) * BigInt(SIDE));
        const removed = regions.some((region) => inside(region, at, d));
        expect(left.pieces.filter((piece) => inside(planesOf(piece), at, d))).toHaveLength(removed ? 0 : 1);
      }
    }),
    { numRuns: 100 },
  );
});

test("a cut and its other side make up the whole", () => {
  fc.assert(
    fc.property(fc.array(anyPlane, { maxLength: 3 }), anyPlane, (before, p) => {
      const whole = before.reduce(cut, cube);
      expect(add(volume(cut(whole, p)), volume(cut(whole, flip(p))))).toEqual(volume(whole));
      for (const piece of whole.pieces) expect(split(piece, p).inside).toEqual(clip(piece, p));
    }),
  );
});

test("halving stays exact, down to 2^-120 of the blank", () => {
  let solid = cube;
  let expected = rational(SIDE ** 3);
  for (let i = 0; i < 120; i++) {
    const axis = ([0, 1, 2] as const)[i % 3] ?? 0;
    solid = cut(solid, axisPlane(axis, 1, rational(SIDE, 2n ** BigInt(Math.floor(i / 3) + 1))));
    expected = multiply(expected, rational(1, 2));
    expect(volume(solid)).toEqual(expected);
  }
  expect(solid.pieces[0]?.vertices).toHaveLength(8);
});

test("halving by inclined planes through the middle stays exact", () => {
  // Any plane through the middle of a body with a centre of symmetry halves it.
  for (const [A, B, C] of [
    [1n, 2n, 3n],
    [17n, -5n, 2n],
    [1n, 1n, 0n],
  ] as const) {
    const D = (A + B + C) * BigInt(SIDE);
    const lower = cut(cube, plane(2n * A, 2n * B, 2n * C, D));
    expect(equal(multiply(volume(lower), rational(2)), volume(cube))).toBe(true);
  }
  for (const at of centroid(cube)) expect(at).toBeCloseTo(SIDE / 2, 9);
});

test("a corner cut off a cube is a sixth of the cube on its legs", () => {
  const rest = cut(solidBox(point(0, 0, 0), point(6, 6, 6)), plane(1n, 1n, 1n, 12n));
  expect(volume(rest)).toEqual(rational(216 - 36));
  // The cut-off corner has its centre at a quarter of its height: (6 − 6/4) along each axis.
  const expected = (216 * 3 - 36 * 4.5) / 180;
  for (const at of centroid(rest)) expect(at).toBeCloseTo(expected, 12);
});

test("pieces that a region does not meet stay whole, and a solid that is not cut is returned as it is", () => {
  const dadoed = subtractBox(cube, point(-1, 400, 500), point(1001, 600, 1001));
  expect(dadoed.pieces).toHaveLength(3);
  expect(subtractBox(dadoed, point(-1, 450, 700), point(1001, 550, 900))).toBe(dadoed);
  expect(subtractBox(dadoed, point(-1, 400, 500), point(1001, 600, 1001))).toBe(dadoed);
  expect(cut(dadoed, axisPlane(0, 1, rational(SIDE)))).toBe(dadoed);
  // A wedge whose planes both cut the cube, but which lies beyond its edge.
  expect(
    subtract(cube, [plane(-1n, -2n, 0n, -2700n), plane(2n, 1n, 0n, 2700n), plane(-2n, -1n, 0n, -2690n)]).pieces.length,
  ).toBeGreaterThan(1);
  expect(
    subtract(cube, [
      plane(-1n, -2n, 0n, -2900n),
      plane(2n, 1n, 0n, 2700n),
      plane(0n, -1n, 0n, -950n),
      plane(1n, 0n, 0n, 800n),
    ]),
  ).toBe(cube);
  const notched = subtractBox(dadoed, point(-1, -1, -1), point(100, 100, 100));
  const kept = notched.pieces.filter((piece) => dadoed.pieces.includes(piece));
  expect(kept).toHaveLength(2);
});

test("solids without wood", () => {
  expect(isEmpty(solidBox(point(0, 0, 0), point(1, 0, 1)))).toBe(true);
  expect(isEmpty(cut(cube, axisPlane(2, 1, rational(0))))).toBe(true);
  expect(isEmpty(subtract(cube, [axisPlane(2, 1, rational(2000))]))).toBe(true);
  expect(volume(EMPTY)).toEqual(rational(0));
  expect(unite([])).toBe(EMPTY);
  expect(subtractBox(cube, point(5, 5, 5), point(5, 6, 6))).toBe(cube);
});

test("a tenon united with its body counts both", () => {
  const tenon = solidBox(point(SIDE, 300, 300), point(1200, 700, 700));
  const whole = unite([cube, tenon]);
  expect(volume(whole)).toEqual(rational(SIDE ** 3 + 200 * 400 * 400));
  expect(whole.high).toEqual([1200, SIDE, SIDE]);
});

test("a box piece is sound and has its volume", () => {
  const piece = boxPiece([rational(1, 3), rational(0), rational(-1, 7)], point(1, 2, 3));
  expectSound(piece);
  expect(volume6(piece)).toEqual(multiply(rational(6 * 2 * 2, 3), rational(22, 7)));
});
