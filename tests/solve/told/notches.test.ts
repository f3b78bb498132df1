/** Notches right through a board; sizes by hand from the plans. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

// The corners of shelves 3/4 in thick are cut off 1 1/4 in both ways for the posts: the thickness is no length of the notch.
test("a notch through the thickness is told by its two measures on the face", () => {
  const text = textOfStep(stepWith(built("old-plans/library-table"), /^Cut the notches in the shelves/u));
  expect(text).toContain(
    "Cut two notches 1 1/4 in along the length and 1 1/4 in across it, right through the thickness:",
  );
});

test("a notched part lies with its notch round what it meets", () => {
  const text = textOfStep(stepWith(built("old-plans/library-table"), /^Glue in four shelves/u));
  expect(text).toContain("9 3/4 in from the top of the left front leg (A), its notch round it.");
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

// The doors look the same as they are glued up: the left stile of the one stands where the left stile of the other stood, not where the mirror shows it.
test("what stands in the place of a part is told as the mirror shows it, or not as mirrored", () => {
  const heads = (name: string): readonly string[] =>
    built(name).steps.flatMap(({ kind, text }) =>
      kind === "glue-up" ? text.map(plain).filter((each) => each.startsWith("As step")) : [],
    );
  const bookcase = heads("old-plans/bookcase").find((text) => text.includes("(G) in place of the door stile (E)"));
  expect(bookcase).toMatch(/^As step \d+, with the door stile \(F\) in place of the door stile \(D\)/u);
  const closet = heads("old-plans/china-closet").find((text) => text.includes("right inner door stile"));
  expect(closet).toMatch(/^As step \d+, with the right inner door stile \(G\) in place of the outer door stile \(E\)/u);
});
