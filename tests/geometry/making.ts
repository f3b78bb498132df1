/** Solids and random values for the tests of geometry. Lengths are whole units unless said otherwise. */
import fc from "fast-check";
import {
  type Plane,
  type Point,
  plane,
  planeThrough,
  type Solid,
  solidBox,
  subtractBox,
} from "../../src/geometry/index.ts";
import { inches } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";

export const point = (x: number, y: number, z: number): Point => [rational(x), rational(y), rational(z)];

/** In 1/64 in. */
export const sixtyFourths = (x: number, y: number, z: number): Point => [inches(x, 64), inches(y, 64), inches(z, 64)];

type Six = readonly [number, number, number, number, number, number];

/** A box by its low and high corner in inches (multiples of 1/64), with boxes cut out of it. */
export const board = (corners: Six, ...removed: readonly Six[]): Solid =>
  removed.reduce((so, region) => subtractBox(so, ...cornersOf(region)), solidBox(...cornersOf(corners)));

const cornersOf = ([x, y, z, X, Y, Z]: Six): [Point, Point] => [
  sixtyFourths(x * 64, y * 64, z * 64),
  sixtyFourths(X * 64, Y * 64, Z * 64),
];

/** An edge of the box that `anyPlane` cuts, in units. */
export const SIDE = 1000;
export const cube = solidBox(point(0, 0, 0), point(SIDE, SIDE, SIDE));

const anyCoordinate = fc
  .record({ n: fc.integer({ min: 0, max: SIDE * 60 }), d: fc.integer({ min: 1, max: 60 }) })
  .map(({ n, d }) => rational(n % (SIDE * d + 1), d));
const anyFactor = fc.integer({ min: -30, max: 30 }).map(BigInt);

/** A plane of any inclination through a point of the cube with fractional coordinates. */
export const anyOblique: fc.Arbitrary<Plane> = fc
  .record({
    at: fc.tuple(anyCoordinate, anyCoordinate, anyCoordinate),
    normal: fc.tuple(anyFactor, anyFactor, anyFactor),
  })
  .filter(({ normal }) => normal.some((n) => n !== 0n))
  .map(({ at, normal }) => planeThrough(at, normal));

/** The same, square to an axis. */
export const anySquare: fc.Arbitrary<Plane> = fc
  .record({ at: anyCoordinate, axis: fc.constantFrom(0, 1, 2), sign: fc.constantFrom(1n, -1n) })
  .map(({ at, axis, sign }) => {
    const [A, B, C] = [0, 1, 2].map((i) => (i === axis ? sign * at.d : 0n)) as [bigint, bigint, bigint];
    return plane(A, B, C, sign * at.n);
  });

export const anyPlane = fc.oneof(anySquare, anyOblique);

/** A convex region, bounded or not, often crossing the cube. */
export const anyRegion = fc.array(anyPlane, { minLength: 1, maxLength: 6 });

/** A repeatable sequence of numbers in [0, 1): Park and Miller's "minimal standard" generator. */
export function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
