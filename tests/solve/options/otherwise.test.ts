import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { toInches } from "../../../src/units/length.ts";
import { said, solveText } from "../../examples/compiled.ts";
import { overlaps, wordsOf } from "../../render/boxes.ts";

/** A tread on two legs or three, of one of two woods. */
const step = (prices: string): string => `plan: 1
title: Step
units: inch
sizes:
  long: { value: 24, from: 20, to: 30, ask: "How long?" }
choices:
  wood: { ask: "Which wood?", options: { spruce: spruce, pine: pine } }
  legs: { options: { two: two legs, three: three legs } }
stock:
  lumber: { sold as: 2x4, wood: { by: wood, spruce: spruce, pine: pine }, ${prices} }
piece:
  tread: { made of: lumber, as: lying flat, left: 0, right: long, front: 0, top: 12 }
  left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }
  right-leg: { like: left-leg, right: long }
  middle-leg: { when: legs is three, like: left-leg, left: long / 2 }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws }
  - { when: legs is three, join: tread, to: middle-leg, with: screws }
`;

function solved(prices: string) {
  const { build, findings } = solveText(step(prices));
  if (!build) throw new Error(said(findings).join("\n"));
  return build;
}

test("every other option is compared with what was chosen, by what it changes alone", () => {
  const build = solved("price: 5");
  const other = (option: string) => build.otherwise?.find((each) => each.option === option);
  expect(build.otherwise?.map(({ choice, option }) => [choice, option])).toEqual([
    ["wood", "pine"],
    ["legs", "three"],
  ]);
  expect(other("pine")).toMatchObject({ parts: 0, bench: 0 });
  expect(other("pine")?.buys.map(({ here, there }) => [here > 0, there > 0])).toEqual(
    expect.arrayContaining([
      [true, false],
      [false, true],
    ]),
  );
  // A leg of 2×4 12 less 1 1/2 long, in spruce: its share of the mass is that of one leg that is there.
  const leg = build.parts.find(({ id }) => id === "left-leg");
  expect(other("three")?.parts).toBe(1);
  expect(other("three")?.mass).toBeCloseTo(leg?.mass ?? 0, 9);
  expect(other("three")?.bench).toBeGreaterThan(0);
});

test("options that come to the same under another choice are compared too", () => {
  const { build } = solveText(step("price: 5"), {}, { legs: "three", wood: "pine" });
  expect(build?.otherwise?.map(({ option, parts }) => [option, parts])).toEqual([
    ["spruce", 0],
    ["two", -1],
  ]);
});

test("sizes that may be asked for are told with their range, on one page with the options", () => {
  const build = solved("price: 5");
  expect(build.freeSizes?.map(({ name, low, high }) => [name, toInches(low), toInches(high)])).toEqual([
    ["long", 20, 30],
  ]);
  const asked = solveText(step("price: 5"), { long: "28" }).build?.freeSizes?.[0]?.value;
  expect(asked && toInches(asked)).toBe(28);
  const pages = render(build, { paper: "letter", date: "2025-03-01", version: "0" }).value?.pages ?? [];
  const page = pages.find((each) => wordsOf(each).includes("Sizes that you may change"));
  expect(page && wordsOf(page)).toContain("If you had chosen otherwise");
  expect(page && wordsOf(page).replaceAll(/\s+/gu, " ")).toContain("three legs");
  expect(pages.flatMap(overlaps)).toEqual([]);
});
