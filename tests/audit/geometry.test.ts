import fc from "fast-check";
import { expect, test } from "vitest";
import { clipped, outside } from "./clip.ts";
import { boxOf, type Convex, mapped, volume } from "./convex.ts";
import { type Cylinder, hits, prism } from "./cylinder.ts";
import { distance } from "./distance.ts";
import { penetration } from "./overlap.ts";
import { joined, touches } from "./touch.ts";
import { along, dot, minus, plus, size, times, turned, unit, type V3, ZERO } from "./vector.ts";

// The judge is judged here by closed formulas for boxes along the axes, and by brute force over points and positions.

const SEED = { seed: 20, numRuns: 300 };
const length = fc.integer({ min: 1, max: 40 });
const coordinate = fc.integer({ min: -40, max: 40 });
const place = fc.tuple(coordinate, coordinate, coordinate) as fc.Arbitrary<V3>;
const extents = fc.tuple(length, length, length) as fc.Arbitrary<V3>;
const box = fc.record({ low: place, extent: extents }).map(({ low, extent }) => ({ low, high: plus(low, extent) }));
const spin = fc.record({ axis: place.filter((v) => size(v) > 0), degrees: fc.integer({ min: 0, max: 359 }) });
type Spin = { axis: V3; degrees: number };
const spun = (body: Convex, { axis, degrees }: Spin) => mapped(body, (p) => turned(p, ZERO, axis, degrees));
const tilted = fc.tuple(box, spin).map(([{ low, high }, by]) => spun(boxOf(low, high), by));

/** Points all over a body: its corners drawn towards each other. */
const scattered = (body: Convex): V3[] =>
  body.points.flatMap((p) =>
    body.points.flatMap((q) => body.points.map((r) => times(plus(plus(p, q), times(r, 1.001)), 1 / 3.001))),
  );

test("boxes along the axes overlap by their least common extent, however the room is turned", () => {
  const check = fc.property(box, box, spin, (a, b, by) => {
    const common = ([0, 1, 2] as const).map((i) => Math.min(a.high[i] - b.low[i], b.high[i] - a.low[i]));
    const least = Math.min(...common);
    const found = penetration(spun(boxOf(a.low, a.high), by), spun(boxOf(b.low, b.high), by), ZERO, -Infinity);
    // Where boxes are apart any separating axis will do, and the one between two edges may be longer.
    return least > 0 ? Math.abs(found - least) < 1e-9 : found < 1e-9;
  });
  fc.assert(check, SEED);
});

test("bodies overlap exactly where one, cut down by the faces of the other, leaves something", () => {
  const check = fc.property(tilted, tilted, (a, b) => {
    const depth = penetration(a, b, ZERO, -Infinity);
    const cut = (body: Convex | undefined, face: Convex["faces"][number]) =>
      body && clipped(body, face.normal, face.offset);
    const common = b.faces.reduce<Convex | undefined>(cut, a);
    const room = common === undefined ? 0 : volume(common);
    return (depth < 1e-3 || room > 0) && (room < 1e-6 || depth > 0);
  });
  fc.assert(check, SEED);
});

test("what is met on the way is what is met at some moment of it", () => {
  const check = fc.property(tilted, tilted, place, (a, b, by) => {
    const swept = penetration(a, b, by, -Infinity);
    const moments = Array.from({ length: 101 }, (_, i) => mapped(a, (p) => along(p, by, i / 100)));
    const deepest = Math.max(...moments.map((body) => penetration(body, b, ZERO, -Infinity)));
    return (deepest <= 0 || swept >= deepest - 1e-9) && (swept < 1 || deepest > 0);
  });
  fc.assert(check, { ...SEED, numRuns: 40 });
});

const cylinder = fc
  .record({ from: place, way: place.filter((v) => size(v) > 0), length, radius: fc.integer({ min: 1, max: 20 }) })
  .map(({ from, way, ...rest }): Cylinder => ({ from, axis: unit(way), ...rest }));

test("a body hits a cylinder exactly where one of its points lies in it", () => {
  const check = fc.property(cylinder, tilted, (c, body) => {
    const inside = (p: V3, more: number) => {
      const h = dot(minus(p, c.from), c.axis);
      return h > -more && h < c.length + more && size(minus(p, along(c.from, c.axis, h))) < c.radius + more;
    };
    if (scattered(body).some((p) => inside(p, -0.02))) return hits(c, body);
    // The prism lies within the cylinder, so what cuts deep into it must hit.
    return hits(c, body) || penetration(prism(c), body, ZERO, 0) < 0.03;
  });
  fc.assert(check, SEED);
});

test("a body that only touches a cylinder does not hit it", () => {
  const upright: Cylinder = { from: ZERO, axis: [0, 0, 1], length: 10, radius: 5 };
  expect(hits(upright, boxOf([5, -5, 0], [9, 5, 10]))).toBe(false);
  expect(hits(upright, boxOf([4.98, -5, 0], [9, 5, 10]))).toBe(true);
  expect(hits(upright, boxOf([-5, -5, 10], [5, 5, 12]))).toBe(false);
  expect(hits(upright, boxOf([-5, -5, 9.98], [5, 5, 12]))).toBe(true);
  expect(hits(upright, boxOf([3.6, 3.6, 0], [9, 9, 10]))).toBe(false);
  expect(hits(upright, boxOf([3.5, 3.5, 0], [9, 9, 10]))).toBe(true);
});

test("boxes along the axes lie as far apart as their gaps say, however the room is turned", () => {
  const check = fc.property(box, box, spin, (a, b, by) => {
    const gaps = ([0, 1, 2] as const).map((i) => Math.max(0, a.low[i] - b.high[i], b.low[i] - a.high[i]));
    const found = distance(spun(boxOf(a.low, a.high), by), spun(boxOf(b.low, b.high), by));
    return Math.abs(found - Math.hypot(...gaps)) < 1e-7;
  });
  fc.assert(check, SEED);
});

test("what is left of a body has the volume that was not taken", () => {
  const check = fc.property(box, box, spin, (a, b, by) => {
    const common = ([0, 1, 2] as const).map((i) =>
      Math.max(0, Math.min(a.high[i], b.high[i]) - Math.max(a.low[i], b.low[i])),
    );
    const whole = spun(boxOf(a.low, a.high), by);
    const left = outside(whole, [spun(boxOf(b.low, b.high), by)]).reduce((so, rest) => so + volume(rest), 0);
    return Math.abs(volume(whole) - common.reduce((so, c) => so * c, 1) - left) < 1e-6 * volume(whole);
  });
  fc.assert(check, SEED);
});

test("the two sides of a cut make up the body", () => {
  const check = fc.property(tilted, spin, fc.integer({ min: -30, max: 30 }), (body, { axis }, offset) => {
    const n = unit(axis);
    const sides = [clipped(body, n, offset), clipped(body, times(n, -1), -offset)];
    const sum = sides.reduce((so, side) => so + (side === undefined ? 0 : volume(side)), 0);
    return Math.abs(sum - volume(body)) < 1e-6 * volume(body);
  });
  fc.assert(check, SEED);
});

test("two boxes touch in the rectangle that their faces share", () => {
  const check = fc.property(box, extents, place, spin, (a, extent, at, by) => {
    const low: V3 = [a.high[0], at[1], at[2]];
    const high = plus(low, extent);
    const sides = ([1, 2] as const).map((i) => [Math.max(a.low[i], low[i]), Math.min(a.high[i], high[i])] as const);
    const area = sides.reduce((so, [from, to]) => so * Math.max(0, to - from), 1);
    const found = joined(touches([spun(boxOf(a.low, a.high), by)], [spun(boxOf(low, high), by)], 0.01));
    if (area === 0) return found === undefined;
    const [[y0, y1], [z0, z1]] = sides as [readonly [number, number], readonly [number, number]];
    const centre = turned([a.high[0], (y0 + y1) / 2, (z0 + z1) / 2], ZERO, by.axis, by.degrees);
    return found !== undefined && Math.abs(found.area - area) < 1e-6 && size(minus(found.centre, centre)) < 1e-6;
  });
  fc.assert(check, SEED);
});
