import { describe, expect, test } from "vitest";
import type { Extent } from "../../../src/render/drawing/fit.ts";
import type { Segment } from "../../../src/render/drawing/plate.ts";
import { windowOn } from "../../../src/render/drawing/step/close-up.ts";
import { BODY, CORNER, isShape } from "../../../src/render/drawing/step/recognised.ts";

const line = (x1: number, y1: number, x2: number, y2: number): Segment => [
  [x1, y1],
  [x2, y2],
];

describe("what is drawn larger shows a shape", () => {
  const along = [line(0, 0, 30, 0), line(30, 2, 0, 2), line(0, 5, 30, 5)];
  test("lines that only run on to both sides are none", () => {
    expect(isShape(along, CORNER, 5)).toBe(false);
  });
  test("two directions are a corner, three a body", () => {
    const corner = [...along, line(0, 0, 0, 10)];
    expect(isShape(corner, CORNER, 5)).toBe(true);
    expect(isShape(corner, BODY, 5)).toBe(false);
    expect(isShape([...corner, line(0, 0, 8, 6)], BODY, 5)).toBe(true);
  });
  test("specks of a direction do not count", () => {
    expect(isShape([...along, line(0, 0, 0, 3)], CORNER, 5)).toBe(false);
  });
});

describe("a picture of the surroundings", () => {
  const focus = { low: [50, 50], high: [52, 52] } as const;
  const whole = { low: [0, 0], high: [100, 100] } as const;
  const frame = { x: 0, y: 0, width: 100, height: 100 };
  const shown = (tells: (extent: Extent) => boolean) => windowOn(focus, whole, frame, { scale: 1, largest: 10, tells });

  test("is as large as it may be where one knows the place", () => {
    // Six times as large as in the whole at most.
    expect(shown(() => true)?.scale).toBe(6);
  });
  test("shows more of what is around it until one does, and is left out where one never does", () => {
    const wide = shown(({ low, high }) => high[0] - low[0] > 30);
    expect(wide?.scale).toBeLessThan(100 / 30);
    expect(wide?.scale).toBeGreaterThan((100 / 30) * 0.89);
    expect(shown(() => false)).toBeNull();
  });
});
