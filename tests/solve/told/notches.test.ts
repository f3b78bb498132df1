/** Notches right through a board; sizes by hand from the plans. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// The corners of shelves 3/4 in thick are cut off 1 1/4 in both ways for the posts: the thickness is no length of the notch.
test("a notch through the thickness is told by its two measures on the face", () => {
  const text = textOfStep(stepWith(built("old-plans/library-table"), /^Cut the notches in the shelves/u));
  expect(text).toContain(
    "Cut two notches 1 1/4 in along the length and 1 1/4 in across it, right through the thickness:",
  );
});

test("a notched part lies with its notch round what it meets", () => {
  const text = textOfStep(stepWith(built("old-plans/library-table"), /^Glue in four shelves/u));
  expect(text).toContain("9 3/4 in from the top of the left front post (A), its notch round it.");
});

// A board 2 1/2 in from each end and 2 3/8 in wide.
test("along the length comes first", () => {
  const text = textOfStep(stepWith(built("old-plans/library-table"), /^Cut the notches in the top board/u));
  expect(text).toContain("Cut four notches 2 1/2 in along the length and 2 3/8 in across it");
});

// The stop is left level when it is screwed on, with the drawers out: level, it lets a drawer fall.
test("drawer stops are turned up when the drawers go in for good", () => {
  const text = textOfStep(stepWith(built("old-plans/library-table"), /^Put the two drawers on again/u));
  expect(text).toContain("When each drawer is half way in, turn its stop up, and pull: the drawer must not come out.");
});

test("work that is stood up to be measured is drawn standing", () => {
  const step = stepWith(built("old-plans/china-closet"), /^Cut the bottom\/top board \(J\) to fit, at the bottom/u);
  expect(step.text[0]).toBe("Stand the work up.");
  expect(step.up).toEqual([0, 0, 1]);
});

// Both stiles come from the right: the second frame is no mirror image of the first as it is put together.
test("a frame to which the other stile comes from the same side is not called mirrored", () => {
  const { steps } = built("old-plans/bookcase");
  const glued = steps.filter(({ text }) =>
    /^As step \d+.*with the door stile \(G\) in place of the door stile \(E\)/u.test(text[0] ?? ""),
  );
  const [only] = glued.filter(({ shows }) => shows.fresh.length === 1);
  expect(only?.text[0]).not.toContain("mirrored");
});
