import { expect, test } from "vitest";
import { withoutSpecksIn } from "../../../src/render/drawing/step/specks.ts";

type Run = Parameters<typeof withoutSpecksIn>[0][number];
const LEAST = 100_000;
/** So many points of a quarter circle of this radius, joined up. */
const quarter = (radius: number, count: number): readonly Run[] => {
  const at = (i: number) => {
    const turn = (i / count) * (Math.PI / 2);
    return [radius * Math.cos(turn), radius * Math.sin(turn)] as const;
  };
  return Array.from({ length: count }, (_, i): Run => [at(i), at(i + 1)]);
};

test("a curve keeps all of its lines, though each of them is shorter than a speck", () => {
  // A quarter circle is 1.57 radii long: 40 lines of 0.79 of a speck each.
  const curve = quarter(20 * LEAST, 40);
  expect(withoutSpecksIn(curve, LEAST)).toEqual(curve);
});

test("a short line by itself is a speck, and so is a curve no larger than one", () => {
  const long: Run = [
    [0, 0],
    [2 * LEAST, 0],
  ];
  const speck: Run = [
    [9 * LEAST, 9 * LEAST],
    [9.5 * LEAST, 9 * LEAST],
  ];
  expect(withoutSpecksIn([speck, long], LEAST)).toEqual([long]);
  expect(withoutSpecksIn(quarter(LEAST, 4), LEAST)).toEqual([]);
});
