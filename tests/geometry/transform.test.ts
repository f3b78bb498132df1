import fc from "fast-check";
import { expect, test } from "vitest";
import {
  cut,
  isMirror,
  type Movement,
  mirror,
  move,
  type Solid,
  translate,
  volume,
  volume6,
} from "../../src/geometry/index.ts";
import { negate, rational } from "../../src/units/rational.ts";
import { anyPlane, board, cube, point, SIDE } from "./making.ts";

const anyBody = fc.array(anyPlane, { maxLength: 4 }).map((planes) => planes.reduce(cut, cube));
const anyFraction = fc
  .tuple(fc.integer({ min: -5000, max: 5000 }), fc.integer({ min: 1, max: 9 }))
  .map(([n, d]) => rational(n, d));

test("there and back again is the same, object by object", () => {
  fc.assert(
    fc.property(anyBody, anyFraction, anyFraction, anyFraction, (solid, x, y, z) => {
      const back = translate(translate(solid, [x, y, z]), [negate(x), negate(y), negate(z)]);
      expect(corners(back)).toEqual(corners(solid));
      expect(corners(mirror(mirror(solid, 1, x), 1, x))).toEqual(corners(solid));
      back.pieces.forEach((piece, i) => {
        expect(piece.faces[0]?.plane).toBe(solid.pieces[i]?.faces[0]?.plane);
        expect(piece.vertices[0]).toBe(solid.pieces[i]?.vertices[0]);
      });
    }),
  );
});

test("a mirror image has the volume, and faces that look outward", () => {
  fc.assert(
    fc.property(anyBody, fc.constantFrom(0 as const, 1 as const, 2 as const), anyFraction, (solid, axis, about) => {
      const image = mirror(solid, axis, about);
      expect(volume(image)).toEqual(volume(solid));
      for (const piece of image.pieces) expect(volume6(piece).n > 0n).toBe(true);
    }),
  );
});

test("shifts and mirror images lie where they should", () => {
  const box = board([1, 0, 0, 3, 2, 1]);
  const inch = 406_400;
  expect(mirror(box, 0, rational(10 * inch)).low[0]).toBe(17 * inch);
  expect(mirror(box, 0, rational(10 * inch)).high[0]).toBe(19 * inch);
  expect(translate(cube, [rational(1, 3), rational(0), rational(0)]).high[0]).toBeCloseTo(SIDE + 1 / 3, 9);
});

test("of the 48 signed permutations of the axes those with determinant −1 are mirrors", () => {
  const box = board([0, 0, 0, 1, 2, 3]);
  for (const from of [
    [0, 1, 2],
    [1, 2, 0],
    [2, 0, 1],
    [0, 2, 1],
    [2, 1, 0],
    [1, 0, 2],
  ] as const)
    for (const sign of [
      [1, 1, 1],
      [1, 1, -1],
      [1, -1, 1],
      [-1, 1, 1],
      [-1, -1, 1],
      [-1, 1, -1],
      [1, -1, -1],
      [-1, -1, -1],
    ] as const) {
      const movement: Movement = { from, sign, shift: point(0, 0, 0) };
      const row = (i: 0 | 1 | 2) => [0, 1, 2].map((j) => (from[i] === j ? sign[i] : 0)) as [number, number, number];
      const [[a, b, c], [d, e, f], [g, h, i]] = [row(0), row(1), row(2)];
      expect(isMirror(movement)).toBe(a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g) < 0);
      const [piece] = move(box, movement).pieces;
      expect(piece && volume6(piece).n > 0n).toBe(true);
    }
});

const corners = (solid: Solid): string[] =>
  solid.pieces.flatMap((piece) =>
    piece.faces.flatMap((face) => face.vertices.map(({ X, Y, Z, W }) => `${X}:${Y}:${Z}:${W}`)),
  );
