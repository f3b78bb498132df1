/** Letters and crosses of holes that stand close to each other. */
import { expect, test } from "vitest";
import type { Vec } from "../../../src/geometry/types.ts";
import { letters } from "../../../src/render/drawing/part/bore-letters.ts";
import type { Bore } from "../../../src/render/drawing/part/bores.ts";
import { clusters, nearest } from "../../../src/render/drawing/part/near-holes.ts";
import { Plate } from "../../../src/render/drawing/plate.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { rational } from "../../../src/units/index.ts";
import { boredBoard } from "./fixture/bored-board.ts";
import { bored } from "./fixture/making.ts";
import { pen } from "./fixture.ts";
import { paths, segmentsOf, texts } from "./look.ts";

const drawn = (holes: readonly Hole[]) => {
  const made = boredBoard(holes);
  return { ...made, inch: made.points * 406_400 };
};
const lettersIn = ({ items }: ReturnType<typeof drawn>) => texts(items).filter(({ font }) => font === "italic");

/** Where the part begins on the page: its 0 stands over it, a third of its size aside. */
const startOf = ({ items }: ReturnType<typeof drawn>): number =>
  Math.min(...texts(items).flatMap(({ turn, x }) => (turn === 90 ? [x - 3.3] : [])));

test("four holes within the width of a letter have one letter, and holes farther apart one each", () => {
  const apart = drawn([bored(4, 3), bored(20, 3)]);
  expect(lettersIn(apart).map(({ text }) => text)).toEqual(["a", "a"]);
  const close = drawn([10, 10.125, 10.375, 10.5].map((x) => bored(x, 3)));
  expect(lettersIn(close).map(({ text }) => text)).toEqual(["a"]);
  expect(close.near / close.inch).toBeCloseTo(0.125, 3);
});

test("the crosses of holes that lie close do not meet", () => {
  const at = [10, 10.5, 11];
  const made = drawn(at.map((x) => bored(x, 3)));
  const from = startOf(made) + 9.5 * made.inch;
  const level = paths(made.items)
    .filter(({ stroke, fill }) => stroke && !stroke.dash && !fill)
    .flatMap(segmentsOf)
    .filter(
      ([x1, y1, x2, y2]) =>
        Math.abs(y1 - y2) < 0.01 && Math.min(x1, x2) > from && Math.max(x1, x2) < from + 2 * made.inch,
    )
    .toSorted(([a], [b]) => a - b);
  expect(level).toHaveLength(at.length);
  for (const [i, [, , end]] of level.slice(0, -1).entries()) expect(end).toBeLessThan(level[i + 1]?.[0] ?? 0);
});

test("a letter does not stand between its hole and that of another letter, but farther off it", () => {
  const shown = { spot: ([x, y]: Vec) => [x, y] as const, towards: [0, 0, 1] as const, scale: 0 };
  const hole = (x: number, y: number): Hole => ({ ...bored(0, 0), at: at(x, y), through: true });
  const at = (x: number, y: number): Hole["at"] => [rational(x), rational(y), rational(0)];
  const bore = (letter: string, holes: readonly Hole[]): Bore => ({ letter, holes, on: "face", side: "top face" });
  const plate = new Plate({ x: -200, y: -200, width: 400, height: 400 });
  const items = letters([bore("a", [hole(0, 0)]), bore("b", [hole(13, 0), hole(0, 13), hole(0, -13)])], shown, {
    ...{ plate, pen, columns: [] },
  });
  const [a] = texts(items).filter(({ text }) => text === "a");
  const [x, y] = [(a?.x ?? 0) + (a?.width ?? 0) / 2, (a?.y ?? 0) - 3.5];
  const far = ([u, v]: readonly [number, number]): number => Math.hypot(x - u, y - v);
  const others = [[13, 0] as const, [0, 13] as const, [0, -13] as const].map(far);
  expect(Math.min(...others) - far([0, 0])).toBeGreaterThan(3);
});

test("sets of what is near each other are found whatever the order, and the nearest is another one", () => {
  const line = [0, 30, 8, 16, 60].map((x) => [x, 0] as const);
  const sets = clusters(line, (spot) => spot, 10).map((set) => set.map(([x]) => x).toSorted((a, b) => a - b));
  expect(sets).toEqual([[0, 8, 16], [30], [60]]);
  expect(nearest([0, 0], line)).toBe(8);
});

/** Where the numbers above and below a part begin: two feet where there are some of each. */
test("a place of the edge that is as near to one of the face as nobody could tell stands below the edge", () => {
  const place = (n: number) => rational(Math.round(n * 406_400));
  const intoEdge = (x: number): Hole => ({
    ...bored(0, 0),
    ...{ at: [place(x), place(0), place(0.375)], direction: [0, 1, 0], through: false },
  });
  const feet = (x: number): number => {
    const turned = texts(drawn([bored(10, 3), intoEdge(x)]).items).filter(({ turn }) => turn === 90);
    return new Set(turned.map(({ y }) => Math.round(y))).size;
  };
  expect(feet(14)).toBe(1);
  expect(feet(10.25)).toBe(2);
});
