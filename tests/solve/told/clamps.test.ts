import { expect, test } from "vitest";
import { toInches, toMillimetres } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// The bay between side and divider is 16 29/32 in wide on the outside of the sides: the clamps end on the divider.
test("clamps that end on a part far inside are told as long as they are used, and what they press", () => {
  const step = stepWith(built("manuals-bookcase"), /^Glue in four left shelves/u);
  expect(textOfStep(step)).toContain("on the right of the divider (C).");
  expect(textOfStep(step)).not.toContain("stands out farthest");
  expect(textOfStep(step)).not.toContain("short ones");
  // From the left side to the divider, and two cauls: less than the whole case, which is 35 in wide and more.
  expect(Math.max(...(step.clamps ?? []).map(({ opening }) => toInches(opening)))).toBeLessThan(22);
});

// The cleat is 3 in high, at the middle of its bevel 2 5/8, under a panel of 23/32 in: two pads take 1 in, a block half an inch, 4.84; the cabinet is 24 in high.
test("a clamp opens over the two parts that it draws together, not over the case that they are in", () => {
  const step = stepWith(built("key-cabinet"), /^Glue in the upper cleat/u);
  const text = textOfStep(step);
  expect((step.clamps ?? []).map(({ count, opening }) => [count, Math.round(toInches(opening))])).toEqual([[3, 6]]);
  expect(text).toContain("The jaws press on the bottom of the upper cleat (I) and on the top of the top panel (D).");
  expect(text).toContain("slopes 45° where clamps press");
  expect(text).toContain("an edge that is sawn to the same bevel");
});

// The back is let in 1/4 in and is 3/8 in thick: its end is larger than what lies along the side, and nothing squeezes the side along its length.
test("what goes into a rabbet is pressed square to the larger of its faces", () => {
  const step = stepWith(built("old-plans/wall-shelf"), /^Glue in the left side/u);
  expect(textOfStep(step)).not.toContain("from top to bottom");
  expect(new Set((step.clamps ?? []).map(({ opening }) => Math.round(toInches(opening))))).toEqual(new Set([33]));
});

// The upper back is 3/8 in thick and comes by itself; the shelf lies beside it, 5/8 in below its middle: each closes its own joint.
test("a thin part presses nothing that lies beside it", () => {
  const text = textOfStep(stepWith(built("old-plans/wall-shelf"), /^Glue in the left side/u));
  expect(text).toContain("one on the upper shelf (B) and one on the upper back (F).");
});

// A face frame is stiff when it is glued: where its long stile ends on its top rail, a clamp closes both on the case.
test("what was made one before shares clamps where its joints meet", () => {
  const step = stepWith(built("index-cabinet"), /^Add the face frame/u);
  expect((step.clamps ?? []).reduce((so, { count }) => so + count, 0)).toBe(16);
});

test("of a mitred frame each part is pressed along its own length", () => {
  const text = textOfStep(stepWith(built("old-plans/medicine-cabinet"), /^Build the door/u));
  expect(text).toMatch(
    /one on the left door stile \(.\) and one on the right door stile \(.\) from top to bottom; one on each of two door rails \(.\) from left to right/u,
  );
});

// The tenon is 1 1/4 in long: 1/8 more, up to eighths, is the block.
test("a bare tenon is not pressed on: blocks stand on the shoulder beside it", () => {
  const text = textOfStep(stepWith(built("dining-bench"), /^Add the assembly from step 14/u));
  expect(text).toContain("On the right two long aprons (C) end in bare tenons 1 1/4 in long");
  expect(text).toContain("blocks at least 1 3/8 in thick on the shoulders beside the tenons");
  expect(text).not.toMatch(/aprons? \(C\) lies?/u);
});

test("what is said of two like parts is said once, of both", () => {
  const step = stepWith(built("old-plans/piano-bench"), /^Glue in two side rails/u);
  expect(step.text.filter((text) => /rails? \(D\).*bare tenons?/u.test(text))).toEqual([
    expect.stringMatching(/^On the right two side rails \(D\) end in bare tenons/u),
  ]);
  expect(new Set(step.text).size).toBe(step.text.length);
});

test("where clamps press on a slope there are wedges, and the clamps reach over what is there", () => {
  const step = stepWith(built("loan-desk"), /^Add the frame/u);
  const text = textOfStep(step);
  expect(text).toContain("slope 6° where clamps press");
  expect(text).toContain("sawn to 6° from offcuts, its thick end towards the top");
  expect(text).not.toContain("(C) lie");
  // By hand: the outer faces of the legs are 54 − 2 × 7 = 40 in apart at the top, and 2 × 2 tan 6° = 0.42 more in the middle of the apron, 2 in below;
  // two pads take 1 in, two wedges half an inch more each: 42.42, whole inches up.
  expect((step.clamps ?? []).map(({ opening }) => Math.round(toInches(opening)))).toEqual([43]);
});

test("what leans is clamped at each of its ends, where it touches", () => {
  // The foot of the brace lies 450 mm beside its head; from rail to rail it is 826 − 180 = 646 mm, and two pads of an inch, whole centimetres up.
  const step = stepWith(built("workbench-cart"), /^Glue up the back upper rail/u);
  expect(step.clamps?.map(({ count, opening }) => [count, Math.round(toMillimetres(opening))])).toEqual([[2, 690]]);
});

test("a breadboard end is clamped: its pegs do not pull, their holes are not offset", () => {
  const step = stepWith(built("loan-desk"), /^Glue up the panel \(E\) and two breadboard ends/u);
  // The top is 54 in long, and two pads are an inch: one clamp in the middle, where the glue is, and one at each end of the shoulder.
  expect(step.clamps?.map(({ count, opening }) => [count, Math.round(toInches(opening))])).toEqual([[3, 56]]);
  expect(textOfStep(step)).toContain(
    "and clamp. Turn the clamps by turns until the shoulder is tight all along, then drive the pegs, without glue but for a drop under the last 1/8 in of each",
  );
});

// A frame of four laps, each with two screws. Common practice, no source: what is screwed needs no clamp once it is.
test("laps that screws pull together are held by one clamp, one after another", () => {
  const step = stepWith(built("boot-bench"), /^Build the two ends/u);
  expect(step.clamps ?? []).toEqual([]);
  expect(textOfStep(step)).toContain("Hold each lap with a clamp");
  expect(textOfStep(step)).toContain("one clamp serves, lap after lap");
  expect(textOfStep(step)).not.toContain("Clamp each");
});
