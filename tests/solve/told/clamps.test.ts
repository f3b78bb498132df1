import { expect, test } from "vitest";
import { toInches } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// The bay between side and divider is 16 29/32 in wide on the outside of the sides: the clamps end on the divider.
test("clamps that end on a part far inside are told as long as they are used", () => {
  const step = stepWith(built("manuals-bookcase"), /^Glue in four left shelves/u);
  expect(textOfStep(step)).toContain("the clamps that press on it end there");
  expect(textOfStep(step)).not.toContain("short ones");
  // From the left side to the divider, and two cauls: less than the whole case, which is 35 in wide and more.
  expect(Math.max(...(step.clamps ?? []).map(({ opening }) => toInches(opening)))).toBeLessThan(22);
});

// The tenon is 1 1/4 in long: 1/8 more, up to eighths, is the block.
test("a bare tenon is not pressed on: blocks stand on the shoulder beside it", () => {
  const text = textOfStep(stepWith(built("dining-bench"), /^Build the frame/u));
  expect(text).toContain("On the back the short apron (E) ends in a bare tenon 1 1/4 in long");
  expect(text).toContain("blocks at least 1 3/8 in thick on the shoulder beside the tenon");
  expect(text).not.toContain("the short apron (E) lies");
});

test("what is said of two like parts is said once, of both", () => {
  const step = stepWith(built("old-plans/piano-bench"), /^Glue in two side rails/u);
  expect(step.text.filter((text) => /rails? \(D\).*bare tenons?/u.test(text))).toEqual([
    expect.stringMatching(/^On the right two side rails \(D\) end in bare tenons/u),
  ]);
  expect(new Set(step.text).size).toBe(step.text.length);
});

// A frame of four laps, each with two screws. Common practice, no source: what is screwed needs no clamp once it is.
test("laps that screws pull together are held by one clamp, one after another", () => {
  const step = stepWith(built("boot-bench"), /^Build the two ends/u);
  expect(step.clamps ?? []).toEqual([]);
  expect(textOfStep(step)).toContain("Hold each lap with a clamp");
  expect(textOfStep(step)).toContain("one clamp serves, lap after lap");
  expect(textOfStep(step)).not.toContain("Clamp each");
});
