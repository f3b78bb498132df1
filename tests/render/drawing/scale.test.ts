import { describe, expect, test } from "vitest";
import { FRONT, ISOMETRIC, viewFrom } from "../../../src/geometry/picture/index.ts";
import { axisScale } from "../../../src/render/drawing/piece-view.ts";
import { closeScales, usualScale, usualScales, wholeOf } from "../../../src/render/drawing/scale.ts";

describe("scales", () => {
  test("metric ones are those of ISO 5455 and the halves between", () => {
    const texts = usualScales("mm").map(({ text }) => text);
    for (const text of ["1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100"]) expect(texts).toContain(text);
  });
  test("between them no scale is more than half as large again as the next; parts have the usual ones alone", () => {
    for (const units of ["mm", "inch"] as const) {
      const points = closeScales(units).map((scale) => scale.points);
      points.slice(2, -3).forEach((each, i) => {
        expect(each / (points[i + 3] ?? each)).toBeLessThanOrEqual(1.51);
      });
      expect(closeScales(units).map(({ text }) => text)).toEqual(
        expect.arrayContaining(usualScales(units).map(({ text }) => text)),
      );
      expect(usualScales(units).length).toBeLessThan(points.length);
    }
  });
  test("a drawing shrinks a step or two so that all its numbers find places, and no more", () => {
    const scales = usualScales("inch");
    const lossless = (from: string) => (scale: (typeof scales)[number]) =>
      Number(scale.text.slice(2)) < 8 ? [] : [{ scale, lost: Number(scale.text.slice(2)) >= Number(from) ? 0 : 1 }];
    expect(wholeOf(scales, lossless("8"))?.scale.text).toBe("1:8");
    expect(wholeOf(scales, lossless("10"))?.scale.text).toBe("1:10");
    expect(wholeOf(scales, lossless("32"))?.scale.text).toBe("1:8");
    expect(wholeOf(scales, () => [])).toBeNull();
  });
  test("an inch at 1:8 is nine points", () => {
    const scale = usualScales("inch").find(({ text }) => text === "1:8");
    expect((scale?.points ?? 0) * 406_400).toBeCloseTo(9, 12);
  });
  test("the largest that fits, however small", () => {
    expect(usualScale("inch", ({ points }) => points * 406_400 <= 6).text).toBe("1:12");
    const tiny = usualScale("mm", ({ points }) => points * 406_400 <= 0.05);
    expect(tiny.points * 406_400).toBeLessThanOrEqual(0.05);
  });
  test("along the axes an isometric drawing is true to scale, an oblique one has none", () => {
    expect(axisScale(ISOMETRIC)).toBeCloseTo(Math.sqrt(2 / 3), 12);
    expect(axisScale(FRONT)).toBe(1);
    expect(axisScale(viewFrom("askew", [3, -2, 1]))).toBeNull();
  });
});
