import { expect, test } from "vitest";
import { inches, millimetres } from "../../src/units/length.ts";
import { sayMade } from "../../src/units/say-made.ts";

const said = (length: Parameters<typeof sayMade>[0], units: "inch" | "mm") =>
  sayMade(length, units).replaceAll("\u2044", "/").replaceAll("\u202f", " ");

test("what is made in millimetres is told in them, and no odd fraction of an inch is ever told", () => {
  expect(said(inches(3, 32), "inch")).toBe("3/32 in");
  expect(said(millimetres(11), "inch")).toBe("11 mm");
  expect(said(millimetres(25, 2), "inch")).toBe("12.5 mm");
  // A third of an inch, by hand: 21.33 of 64 parts.
  expect(said(inches(1, 3), "inch")).toBe("21/64 in");
  expect(said(millimetres(25, 2), "mm")).toBe("12.5 mm");
});
