/** What a machine has to take, and what nobody planes off by hand. Common practice, no source. */
import { expect, test } from "vitest";
import { isMuchOff } from "../../../src/solve/build/steps/much-off.ts";
import { inches, millimetres } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "../told/examples.ts";

const closet = built("old-plans/china-closet");

// Two boards 8 1/8 in wide when jointed are 16 1/4 in; two of 7 3/4 in are 15 1/2 in.
test("a panel is as wide as it was glued up when it goes through a machine", () => {
  const flat = (title: RegExp): string => textOfStep(stepWith(closet, title));
  expect(flat(/^Flatten two bottom\/top boards \(J\)/u)).toContain("in a shop whose machine takes 16 1/4 in.");
  expect(flat(/^Flatten the shelf \(N\)/u)).toContain("in a shop whose machine takes 15 1/2 in.");
});

test.each([
  ["1 in to 3/4 in: a quarter", inches(1), inches(3, 4), false],
  ["1 1/4 in to 7/8 in: less than a third", inches(5, 4), inches(7, 8), false],
  ["1 in to 1/2 in", inches(1), inches(1, 2), true],
  ["1/2 in to 1/4 in: no more than 1/4 in", inches(1, 2), inches(1, 4), false],
])("much off: %s", (_, sawn, planed, much) => {
  expect(isMuchOff({ design: { units: "inch" } } as never, sawn, planed)).toBe(much);
});

test("much off: 26 mm to 19 mm is not, to 8 mm it is", () => {
  const work = { design: { units: "mm" } } as never;
  expect(isMuchOff(work, millimetres(26), millimetres(19))).toBe(false);
  expect(isMuchOff(work, millimetres(26), millimetres(8))).toBe(true);
});

// Backs and blocks of 1 in end at 1/2 in; panels of 1 in at 1/4 in.
test("what loses more than a third of its thickness is resawn or planed by machine", () => {
  expect(textOfStep(stepWith(closet, /^Plane the rough pieces$/u))).toContain(
    "More than a third of the thickness of U, V, W and AC goes off. Without a planer have them resawn",
  );
  const boards = (title: RegExp): string => textOfStep(stepWith(built("index-cabinet"), title));
  expect(boards(/^Plane the boards for two door panels \(X\)/u)).toContain("3/4 in of wood are too much to take off");
  expect(textOfStep(stepWith(closet, /^Plane the boards for the shelf \(N\)/u))).toContain(
    "With hand planes leave that face as it is.",
  );
});
