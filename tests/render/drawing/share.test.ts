import { expect, test } from "vitest";
import type { VisibleFace } from "../../../src/geometry/types.ts";
import type { Fit } from "../../../src/render/drawing/fit.ts";
import { shareOf } from "../../../src/render/drawing/step/share.ts";

const fit: Fit = { scale: 1, page: ([x, y]) => [x, y], spot: () => [0, 0] };
/** Left of x = 10, all of it. */
const half: VisibleFace = {
  id: "side",
  normal: [0, 0, 1],
  polygons: [
    [
      [-100, -100],
      [10, -100],
      [10, 100],
      [-100, 100],
    ],
  ],
} as unknown as VisibleFace;

test("half a circle round a point of the edge is covered, all of one within, nothing of another part", () => {
  const near = shareOf("side", [half], fit, [10.1, 0], 5);
  expect(near).toBeGreaterThan(0.35);
  expect(near).toBeLessThan(0.55);
  expect(shareOf("side", [half], fit, [-20, 3], 5)).toBe(1);
  expect(shareOf("side", [half], fit, [40, 3], 5)).toBe(0);
  expect(shareOf("shelf", [half], fit, [-20, 3], 5)).toBe(0);
});
