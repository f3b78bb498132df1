import { expect, test } from "vitest";
import { stepTitle } from "../../../src/render/pages/step-title.ts";
import type { Step } from "../../../src/solve/build.ts";
import { textsOf } from "../boxes.ts";

const step = { number: 24, title: "Cut the dados in the legs (A)", copies: 4, bench: 140 } as Step;
const told = (first: boolean): string =>
  textsOf(stepTitle(step, first, 270).paint(0, 0))
    .map(({ text }) => text.replaceAll(/\s/gu, " "))
    .join(" ");

test("the time of a step stands where it begins, not where it goes on", () => {
  expect(told(true)).toContain("make 4 · 2 h 20 min");
  expect(told(false)).toContain("(continued)");
  expect(told(false)).not.toMatch(/make|\bh\b|min/u);
});
