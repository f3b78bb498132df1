/** The way in of loose shelves past the pins that they will lie on. Common practice, no source; reckoned from the sizes of the plan. */
import { expect, test } from "vitest";
import { UNITS_PER_MM } from "../../../src/units/length.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

const INCH = 25.4 * UNITS_PER_MM;
const bookcase = () => built("old-plans/bookcase");

// 28 1/2 in long between sides 28 3/4 in apart, out of which pins stand 3/4 in: an end passes them where it is 13 5/8 in from the middle.
test("a shelf that is levelled behind the piece between the doors swings in above its pins", () => {
  const step = stepWith(bookcase(), /^Add three shelves \(V\)/u);
  const text = textOfStep(step);
  const [, degrees, high = ""] =
    /slopes about (\d+)°, .*level it with its middle about ([\d /]+) in above/u.exec(text) ?? [];
  const middle = high.split(" ").reduce((so, each) => {
    const [top, bottom = "1"] = each.split("/");
    return so + Number(top) / Number(bottom);
  }, 0);
  // Its lower end begins below them, and its bottom edge passes their tips above them.
  expect(14.25 * Math.sin((Number(degrees) * Math.PI) / 180)).toBeGreaterThan(middle);
  expect(text).toContain("its lower end down between its pins, level it with its middle");
  const drop = (turned: number): number => 14.25 * Math.sin(turned) - 0.25 * (1 - Math.cos(turned));
  const tip = (turned: number): number => 14.25 * Math.cos(turned) - 0.25 * Math.sin(turned);
  const passes = Array.from({ length: 640 }, (_, i) => (i * Math.PI) / 1800).find(
    (turned) => tip(turned) < 14.375 - 0.75,
  );
  expect(drop(passes as number)).toBeLessThan(middle);
});

test("it has room behind that piece", () => {
  const { parts } = bookcase().design;
  const at = (id: string, end: "low" | "high"): number => {
    const value = parts.find((part) => part.id === id)?.body[end][1];
    return value ? Number(value.n) / Number(value.d) / INCH : Number.NaN;
  };
  expect(at("shelf.1", "low") - at("center-piece", "high")).toBeCloseTo(1 / 8, 6);
  expect(at("shelf.1", "high")).toBeCloseTo(at("backing.1", "low"), 6);
});

// The upper backing is left out until then: a gap of 4 in, 7 1/2 in above the highest shelf and less than 11 1/2.
test("one that only has to be lowered is not turned", () => {
  const step = stepWith(bookcase(), /^Add three shelves \(V\)/u);
  expect(textOfStep(step)).toMatch(
    /The highest of three shelves \(V\) does not go in straight: pass it in from the back, where it is open, about (?:8 1\/[24]|8 3\/4|9|9 1\/[24]) in above its place, and lower it there\./u,
  );
  const highest = step.actions.find((action) => action.do === "add" && action.parts.includes("shelf.3"));
  expect(highest && "legs" in highest && highest.legs.every((leg) => "along" in leg)).toBe(true);
});
