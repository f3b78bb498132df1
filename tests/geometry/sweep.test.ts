import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  blocks,
  cut,
  overlapDepth,
  plane,
  type Solid,
  solidBox,
  subtractBox,
  translate,
  travelFree,
  type Vec,
} from "../../src/geometry/index.ts";
import { TOLERANCE, UNITS_PER_INCH } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";
import { board, point } from "./making.ts";

const SIX: readonly Vec[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];
const free = (moving: Solid, still: Solid): string =>
  SIX.map((along) => (blocks(moving, still, along) ? "·" : "o")).join("");

describe("which of right, left, back, front, up, down is free", () => {
  const side = board([0, 0, 0, 0.75, 11, 48], [0.5, -1, 14, 1, 12, 14.75]);
  const shelf = board([0.5, 0, 14, 29.5, 11, 14.75]);

  test("a shelf in a through dado leaves outward and along the dado", () => {
    expect(free(shelf, side)).toBe("o·oo··");
    expect(free(side, shelf)).toBe("·ooo··");
  });

  test("one unit out of place it still does", () => {
    for (const d of [
      [0, 0, 1],
      [0, 0, -1],
      [1, 0, 0],
      [-1, 0, 0],
      [0, 0, TOLERANCE],
    ] as const)
      expect(free(translate(shelf, point(d[0], d[1], d[2])), side)).toBe("o·oo··");
  });

  test("a shelf in a stopped dado leaves outward and to the back", () => {
    const stopped = board([0, 0, 0, 0.75, 11, 48], [0.5, 1, 14, 1, 12, 14.75]);
    const notched = board([0.5, 0, 14, 29.5, 11, 14.75], [0, -1, 13, 0.75, 1, 15]);
    expect(free(notched, stopped)).toBe("o·o···");
  });

  test("a tenon leaves its mortise one way only", () => {
    const leg = board([0, 0, 0, 1.5, 1.5, 29], [0.5, 0.5, 24.5, 1.5, 1, 27.5]);
    const rail = board(
      [0.5, 0.25, 24, 20, 1.25, 28],
      [0, 0, 0, 1.5, 0.5, 30],
      [0, 1, 0, 1.5, 2, 30],
      [0, 0, 0, 1.5, 2, 24.5],
      [0, 0, 27.5, 1.5, 2, 30],
    );
    expect(free(rail, leg)).toBe("o·····");
  });

  test("boxes face to face slide and part, and do not push through", () => {
    const box = board([0, 0, 0, 4, 4, 4]);
    expect(free(translate(box, [rational(4 * UNITS_PER_INCH), rational(0), rational(0)]), box)).toBe("o·oooo");
  });
});

test("a short way is free where a long one is not", () => {
  const wall = board([10, 0, 0, 11, 10, 10]);
  const box = board([0, 2, 2, 4, 6, 6]);
  expect(blocks(box, wall, [1, 0, 0])).toBe(true);
  expect(blocks(box, wall, [1, 0, 0], 6 * UNITS_PER_INCH)).toBe(false);
  expect(blocks(box, wall, [1, 0, 0], 6 * UNITS_PER_INCH + TOLERANCE)).toBe(false);
  expect(blocks(box, wall, [1, 0, 0], 6 * UNITS_PER_INCH + TOLERANCE + 1)).toBe(true);
  expect(travelFree(box, [wall], [0, 1, 0])).toBe(true);
  expect(travelFree(box, [board([0, 20, 0, 9, 21, 9]), wall], [0, 1, 0])).toBe(false);
});

test("sliding along a slope is free, over any distance", () => {
  const slope = plane(3n, 0n, 4n, 4_000_000n);
  const below = cut(solidBox(point(0, 0, 0), point(3_000_000, 1_000_000, 3_000_000)), slope);
  const above = cut(solidBox(point(0, 0, 0), point(1_000_000, 1_000_000, 2_000_000)), plane(-3n, 0n, -4n, -4_000_000n));
  expect(overlapDepth(above, below)).toBe(0);
  expect(blocks(above, below, [0.8, 0, -0.6])).toBe(false);
  expect(blocks(above, below, [-0.8, 0, 0.6])).toBe(false);
  expect(blocks(above, below, [0.6, 0, 0.8])).toBe(false);
  expect(blocks(above, below, [1, 0, 0])).toBe(false);
  expect(blocks(above, below, [0, 0, -1])).toBe(true);
  expect(blocks(above, below, [0.6, 0, -0.8])).toBe(true);
});

test("on an oblique way only what lies in the corridor is in the way", () => {
  // A box of 1 in carried along (4, 3, 0): its corridor is 1.4 wide, from 4y − 3x = −3 to 4 (in inches).
  const box = board([0, 0, 0, 1, 1, 1]);
  const along: Vec = [0.8, 0.6, 0];
  const post = (x: number, y: number) => board([x, y, -1, x + 0.5, y + 0.5, 2]);
  expect(blocks(box, post(4, 3), along)).toBe(true);
  // Beside the corridor, yet inside the bounds of the way: upright boxes, parted only across the way and an edge.
  expect(blocks(box, post(2, 3), along)).toBe(false);
  expect(blocks(box, post(5, 2.25), along)).toBe(false);
  // The corner nearest to the corridor is on its border, then 1/64 in inside.
  expect(blocks(box, post(4.5, 4.75), along)).toBe(false);
  expect(blocks(box, post(4.5, 4.75 - 1 / 64), along)).toBe(true);
});

test("travel agrees with small steps", () => {
  const at = fc.integer({ min: -9, max: 9 });
  const size = fc.integer({ min: 3, max: 9 });
  const S = 40_000;
  // A box with a groove or a slope, sizes in steps of 2.5 mm.
  const anyBody = fc
    .record({
      low: fc.tuple(at, at, at),
      extent: fc.tuple(size, size, size),
      axis: fc.constantFrom(0, 1, 2),
      kind: fc.constantFrom("plain", "groove", "slope"),
    })
    .map(({ low: [x, y, z], extent: [w, d, h], axis, kind }): Solid => {
      const box = solidBox(point(x * S, y * S, z * S), point((x + w) * S, (y + d) * S, (z + h) * S));
      if (kind === "groove") {
        const [p, q] = [
          [x + 1, y + 1, z + 2],
          [x + w - 1, y + d - 1, z + h + 1],
        ] as [number[], number[]];
        p[axis === 2 ? 0 : axis] = -100;
        q[axis === 2 ? 0 : axis] = 100;
        return subtractBox(
          box,
          point(...(p.map((v) => v * S) as [number, number, number])),
          point(...(q.map((v) => v * S) as [number, number, number])),
        );
      }
      if (kind === "slope")
        return cut(
          box,
          plane(2n, 1n, BigInt(axis), BigInt(S * (2 * x + y + axis * z + Math.round((2 * w + d + axis * h) * 0.7)))),
        );
      return box;
    });
  const anyDirection = fc.constantFrom<Vec>(...SIX, [0.6, 0.8, 0], [0, -0.6, 0.8], [2 / 3, -1 / 3, 2 / 3]);
  let [hits, misses] = [0, 0];
  fc.assert(
    fc.property(
      anyBody,
      anyBody,
      anyDirection,
      fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined }),
      (moving, still, along, way) => {
        const length = way === undefined ? 60 * S : way * S;
        // Steps of a fifth of the grid; the deepest overlap on the way.
        let deepest = 0;
        for (let t = 0; t <= length; t += S / 5) {
          const shift = along.map((c) => rational(Math.round(c * t))) as [
            ReturnType<typeof rational>,
            ReturnType<typeof rational>,
            ReturnType<typeof rational>,
          ];
          deepest = Math.max(deepest, overlapDepth(translate(moving, shift), still));
        }
        const found = blocks(moving, still, along, way === undefined ? undefined : length);
        // Rounded steps may graze by a unit; what is found only between two steps is shallow.
        if (deepest > TOLERANCE + 2) expect(found).toBe(true);
        if (!found) expect(deepest).toBeLessThanOrEqual(TOLERANCE + 2);
        if (found && deepest === 0) expect(overlapOnFineSteps(moving, still, along, length)).toBeGreaterThan(0);
        if (found) hits++;
        else misses++;
      },
    ),
    { numRuns: 300, seed: 7 },
  );
  expect(Math.min(hits, misses)).toBeGreaterThan(30);

  function overlapOnFineSteps(moving: Solid, still: Solid, along: Vec, length: number): number {
    let deepest = 0;
    for (let t = 0; t <= length && deepest === 0; t += S / 100) {
      const [x, y, z] = along.map((c) => Math.round(c * t));
      deepest = overlapDepth(translate(moving, point(x ?? 0, y ?? 0, z ?? 0)), still);
    }
    return deepest;
  }
});
