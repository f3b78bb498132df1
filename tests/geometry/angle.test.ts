import { expect, test } from "vitest";
import { arcTangent, circlePoint } from "../../src/geometry/index.ts";

test("points on the circle agree with the library functions", () => {
  // The library is given 2πk/n rounded, up to 4π: that alone is off by up to 2e-15.
  for (let n = 1; n <= 100; n++)
    for (let k = -n; k <= 2 * n; k++) {
      const [cos, sin] = circlePoint(k, n);
      expect(Math.abs(cos - Math.cos((2 * Math.PI * k) / n))).toBeLessThan(4e-15);
      expect(Math.abs(sin - Math.sin((2 * Math.PI * k) / n))).toBeLessThan(4e-15);
      expect(Math.abs(cos * cos + sin * sin - 1)).toBeLessThan(5e-16);
    }
});

test("quarter turns are exact, and a turn of 30° to the last digit", () => {
  expect([0, 1, 2, 3, 4].map((k) => circlePoint(k, 4).map((c) => c + 0))).toEqual([
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
    [1, 0],
  ]);
  expect(circlePoint(1, 12)[1]).toBeCloseTo(0.5, 15);
  expect(circlePoint(1, 8)[0]).toBeCloseTo(Math.SQRT1_2, 15);
});

test("the arc tangent is that of the machine to 1e-15", () => {
  for (const x of [0, 1e-9, 0.05, 0.1, 0.3, 0.999, 1, 1.001, 7, 1e9])
    expect(arcTangent(x)).toBeCloseTo(Math.atan(x), 14);
});
