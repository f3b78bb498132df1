import { expect, test } from "vitest";
import { toNumber } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

test("two kinds of wooden buttons are told apart by where they go", () => {
  const build = built("dining-bench");
  const text = textOfStep(stepWith(build, /^Join the slab/u));
  const made = stepWith(build, /^Make the wooden buttons/u);
  expect(text).toMatch(
    new RegExp(
      `into the slab \\(A\\) at two long aprons \\(C\\), six in each joint\\. .*?Each takes a button 1, from step ${made.number}\\.`,
      "u",
    ),
  );
  expect(text).toMatch(/into the slab \(A\) at two short aprons \(E\), two in each joint\. .*?Each takes a button 2,/u);
  // How they are made is told in a step of its own, after their grooves are cut, and no wood is bought for them.
  const how = textOfStep(made);
  expect(how).toMatch(
    /Button 1, for two long aprons \(C\): 12, 1 5\/8 in long with the tongue, which is 3\/8 in long/u,
  );
  expect(how).toMatch(
    /Button 2, for two short aprons \(E\): 4, 1 9\/16 in long with the tongue, which is 5\/16 in long/u,
  );
  expect(how).toMatch(
    /saw away 11\/32 in from the top and 3\/32 in from below, so that a tongue 5\/16 in thick is left/u,
  );
  // #8 is 0.164 in thick (ASME B18.6.1): the next 64th that is wider is 11/64. No table of holes has it, so the tools name it.
  expect(how).toContain("bore a hole 11/64 in across, a little wider than the screw");
  const grooved = build.steps.filter(({ actions }) =>
    actions.some(
      (action) =>
        action.do === "machine" &&
        action.features.some((i) => {
          const feature = build.parts.find(({ id }) => id === action.part)?.features[i];
          return feature?.kind === "groove";
        }),
    ),
  );
  expect(grooved.length).toBeGreaterThan(0);
  expect(Math.max(...grooved.map(({ number }) => number))).toBeLessThan(made.number);
  const drills = build.tools.find(({ tool }) => tool.startsWith("Drill bits:"));
  expect(plain(`${drills?.tool} ${drills?.why}`)).toMatch(/11\/64.* in wooden buttons/u);
  const bought = build.purchases.filter(({ item }) => item.startsWith("wooden button"));
  expect(bought.map(({ note }) => note)).toEqual([
    expect.stringContaining("made of hardwood offcuts"),
    expect.stringContaining("made of hardwood offcuts"),
  ]);
  expect(text).toContain("between its face and the shoulder of each button");
  const rows = build.fastenerTable.filter((row) => row.with.some((each) => each.startsWith("wooden button")));
  expect(rows.flatMap(({ ways }) => ways.map(({ at, into }) => `${at.join()} ${into}`)).toSorted()).toEqual([
    "C A",
    "E A",
  ]);
});

test("places of buttons are measured along the edge that they are at, not from the long points of its ends", () => {
  const text = textOfStep(stepWith(built("loan-desk"), /^Add the panel/u));
  // The keepers stand 2 1/2 in from the ends of what touches.
  expect(text).toContain(
    "On each of two long aprons (C): 6 at even distances, the outer ones 2 1/2 in from its ends, along its edge on the panel (E)",
  );
});

test("buttons are kept by kind while the top is off for finishing, and are put back before the screws are driven", () => {
  const build = built("loan-desk");
  expect(textOfStep(stepWith(build, /^Take off the panel/u))).toContain(
    "put buttons and screws back into their bag, each kind by itself",
  );
  expect(textOfStep(stepWith(build, /^Put the panel.* on again/u))).toMatch(
    /Set a button 1 under each hole along two long aprons \(C\).*Set a button 2 under each hole along two short aprons \(D\)/u,
  );
});

test("a button lies with its top against what it holds and its tongue in the groove", () => {
  const build = built("loan-desk");
  const own = build.fasteners.flatMap(({ button, into }) => (button ? [{ button, into }] : []));
  expect(own.length).toBeGreaterThan(0);
  for (const { button, into } of own) {
    const top = build.parts.find(({ id }) => id === into);
    expect(Math.abs(button.solid.high[2] - (top?.solid.low[2] ?? Number.NaN))).toBeLessThan(160);
    // Tongue and body are two boxes: together as long and as thick as it is told.
    const wide = [0, 1].map((i) => (button.solid.high[i] ?? 0) - (button.solid.low[i] ?? 0)).toSorted((a, b) => a - b);
    expect(wide).toEqual([toNumber(button.wide), toNumber(button.long)]);
    expect(button.solid.high[2] - button.solid.low[2]).toBe(toNumber(button.thick));
  }
});
