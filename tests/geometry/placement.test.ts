import fc from "fast-check";
import { expect, test } from "vitest";
import {
  aboutPoint,
  compose,
  inverse,
  mirror,
  mirroredPlacement,
  type Placement,
  placedSolid,
  turnAbout,
  turned,
  turnInto,
  type Vec,
  volume,
} from "../../src/geometry/index.ts";
import { rational, toNumber } from "../../src/units/rational.ts";
import { board, point } from "./making.ts";

const image = (turn: Placement, x: number, y: number, z: number): Vec =>
  turned(turn, [rational(x), rational(y), rational(z)]).map(toNumber) as unknown as Vec;
const box = board([1, 2, 3, 4, 6, 8]);

test("turns by an angle agree with sine and cosine to 1e-12", () => {
  fc.assert(
    fc.property(fc.integer({ min: -1800, max: 1800 }), (tenths) => {
      const turn = turnAbout(2, rational(tenths, 10));
      const [x, y, z] = image(turn, 1, 0, 0);
      const angle = (tenths * Math.PI) / 1800;
      expect(Math.abs(x - Math.cos(angle))).toBeLessThan(1e-12);
      expect(Math.abs(y - Math.sin(angle))).toBeLessThan(1e-12);
      expect(z).toBe(0);
    }),
  );
});

test("a turn is right-handed about its axis", () => {
  expect(image(turnAbout(0, rational(90)), 0, 1, 0)).toEqual([0, 0, 1]);
  expect(image(turnAbout(1, rational(90)), 0, 0, 1)).toEqual([1, 0, 0]);
  expect(image(turnAbout(2, rational(90)), 1, 0, 0)).toEqual([0, 1, 0]);
});

const way = fc
  .tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }))
  .filter(([x, y, z]) => Math.hypot(x, y, z) > 1);
const anyAxis = fc.constantFrom(0 as const, 1 as const, 2 as const);

test("a direction is turned into the one asked for; the rows stay exactly square and of length 1", () => {
  fc.assert(
    fc.property(anyAxis, fc.constantFrom(1 as const, -1 as const), way, (axis, sign, to) => {
      fc.pre(to[axis] * sign >= 0);
      const turn = turnInto(axis, sign, to);
      const unit = [0, 1, 2].map((i) => (i === axis ? sign : 0)) as [number, number, number];
      const found = image(turn, ...unit);
      for (const i of [0, 1, 2] as const) expect(Math.abs(found[i] - to[i] / Math.hypot(...to))).toBeLessThan(1e-11);
      const product = (i: 0 | 1 | 2, j: 0 | 1 | 2) =>
        turn.rows[i].reduce((so, value, k) => so + value * (turn.rows[j][k] ?? 0n), 0n);
      for (const i of [0, 1, 2] as const)
        for (const j of [0, 1, 2] as const) expect(product(i, j)).toBe(i === j ? turn.by * turn.by : 0n);
      // What is laid along a line and was level across it stays level.
      const level = axis === 0 ? image(turn, 0, 1, 0)[2] : axis === 1 ? image(turn, 1, 0, 0)[2] : 0;
      expect(Math.abs(level)).toBeLessThan(1e-11);
    }),
  );
});

test("placed solids keep their volume, and there and back is the same, object by object", () => {
  const placement = compose(aboutPoint(turnAbout(0, rational(8)), point(1, 2, 3)), turnAbout(2, rational(33, 2)));
  const there = placedSolid(box, placement);
  expect(volume(there)).toEqual(volume(box));
  const back = placedSolid(there, inverse(placement));
  expect(back.pieces[0]?.faces.map(({ plane }) => plane)).toEqual(box.pieces[0]?.faces.map(({ plane }) => plane));
  expect(back.pieces[0]?.vertices[0]).toBe(box.pieces[0]?.vertices[0]);
});

test("the image of a placed body is the placed image of the body", () => {
  const placement = aboutPoint(turnAbout(1, rational(8)), point(1, 2, 3));
  const about = rational(2_000_000);
  const image = mirror(placedSolid(box, placement), 0, about);
  const placed = placedSolid(mirror(box, 0, about), mirroredPlacement(placement, 0, about));
  const corners = (solid: typeof image) => new Set(solid.pieces.flatMap(({ vertices }) => vertices));
  expect(corners(placed)).toEqual(corners(image));
});
