import { describe, expect, test } from "vitest";
import { overlapDepth, translate } from "../../../src/geometry/index.ts";
import type { Vec } from "../../../src/geometry/types.ts";
import { times } from "../../../src/geometry/vec.ts";
import { movesOf } from "../../../src/render/drawing/exploded/moves.ts";
import { clearing, outwards, type Shifts, spread } from "../../../src/render/drawing/exploded/spread.ts";
import type { Build } from "../../../src/solve/build.ts";
import { rational } from "../../../src/units/index.ts";
import { bench, bookcase } from "./fixture.ts";

const INCH = 406_400;
const moved = (build: Build, shifts: Shifts) =>
  build.parts.map(({ id, solid }) => {
    const [x, y, z] = (shifts.get(id) ?? [0, 0, 0]).map((v) => rational(Math.round(v)));
    return { id, solid: translate(solid, [x ?? rational(0), y ?? rational(0), z ?? rational(0)]) };
  });

describe.each([
  ["bench", bench()],
  ["bookcase", bookcase()],
])("taking a %s apart", (_, build) => {
  test.each([
    ["along its moves", movesOf(build)],
    ["outwards", outwards(build.parts)],
  ])("%s, no part stays in another", (_, moves) => {
    const all = moved(build, spread(build.parts, moves, 2 * INCH));
    all.forEach((a, i) => {
      for (const b of all.slice(i + 1))
        expect([a.id, b.id, overlapDepth(a.solid, b.solid) > 160]).toEqual([a.id, b.id, false]);
    });
  });

  test("what moved together stays together", () => {
    const shifts = spread(build.parts, movesOf(build).slice(-1), 2 * INCH);
    const moving = movesOf(build).at(-1)?.parts ?? [];
    const first = shifts.get(moving[0] ?? "");
    for (const id of moving) expect(shifts.get(id)).toEqual(first);
  });
});

test("tenons leave their mortises: a short apron goes by the tenon and the gap", () => {
  const build = bench();
  const [move] = movesOf(build);
  expect(move?.parts).toEqual(["left-end.apron"]);
  const shift = spread(build.parts, move ? [move] : [], 2 * INCH).get("left-end.apron") as Vec;
  // The tenon is an inch long.
  expect(shift.map((x) => x / INCH + 0)).toEqual([0, 3, 0]);
});

test("gaps are stretched along each axis by itself", () => {
  const build = bench();
  const [move] = movesOf(build);
  const by = (stretch: Vec) =>
    (spread(build.parts, move ? [move] : [], 2 * INCH, stretch).get("left-end.apron") as Vec)[1] / INCH;
  expect([by([1, 1, 1]), by([1, 3, 1]), by([3, 1, 3])]).toEqual([3, 7, 3]);
});

test("written actions count before what a picture shows, for every copy", () => {
  const build = bench();
  const [first] = build.steps;
  if (!first) throw new Error("the bench has steps");
  const add = (parts: string[], to: string[]) =>
    ({ do: "add", parts, to, how: "straight", legs: [{ along: [0, -1, 0], distance: null }] }) as const;
  const actions = [
    add(["left-end.apron"], ["left-end.front-leg"]),
    add(["right-end.apron"], ["right-end.front-leg"]),
    add(["left-end.front-leg"], ["back-apron"]),
  ];
  const moves = movesOf({ steps: [{ ...first, actions }] });
  expect(moves.map(({ parts }) => [...parts].sort())).toEqual([
    ["left-end.apron"],
    ["right-end.apron"],
    ["left-end.apron", "left-end.front-leg"],
  ]);
});

describe("what leaves at a slant", () => {
  const slant: Vec = [0, Math.SQRT1_2, -Math.SQRT1_2];
  const box = (low: Vec, high: Vec) => ({ low: times(low, INCH), high: times(high, INCH) });
  const cleat = box([0, 4, 20], [16, 5, 23]);
  const far = (low: Vec, high: Vec): number => clearing([cleat], [box(low, high)], slant) / INCH;

  // Backwards and down at 45°: it is behind what reaches back to 5 in when it is 1 in lower.
  test("is not cleared of what it never meets: beside its way, or left behind before it comes so low", () => {
    expect(far([17, 0, 0], [18, 9, 24])).toBe(0);
    expect(far([0, 0, 0], [17, 3, 24])).toBe(0);
    expect(far([0, 0, 0], [17, 5, 1])).toBe(0);
  });

  // It meets what lies half an inch below, and is behind that 1 1/2 in farther back: the way is √2 times as long.
  test("goes as far as it has to where something is in its way", () => {
    expect(far([0, 0, 19], [17, 5.5, 19.5])).toBeCloseTo(1.5 * Math.SQRT2);
  });
});
