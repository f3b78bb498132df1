/** What waits in its sheet is larger there than its part: by an eighth of an inch, and by what thicker or thinner stock may ask for. */
import { expect, test } from "vitest";
import { solveText, textOf } from "../../examples/compiled.ts";
import { plain } from "./plans.ts";

const told = (name: string): readonly string[] =>
  (solveText(textOf(name)).build?.steps ?? []).flatMap(({ text }) =>
    text.map(plain).filter((each) => each.includes("out by the layouts first")),
  );

test.each([
  // The layouts have 11 1/16 × 16 15/16 for a shelf of 10 7/8 × 16 3/4.
  [
    "manuals-bookcase",
    [
      "Saw it out by the layouts first: there it is 3/16 in over in length and width.",
      "Saw them out by the layouts first: there they are 3/16 in over in length and width. Then bring them to size.",
    ],
  ],
  // 12 5/8 × 18 5/8 for a panel of 12 7/16 × 18 7/16; the frame round it is sawn with the rough pieces.
  [
    "key-cabinet",
    [
      "Saw the door panel (F) out by the layouts first: there it is 3/16 in over in length and width. Then bring all to size.",
    ],
  ],
  // 14 1/4 × 34 5/8 for a shelf of 14 1/8 × 34 7/16; of the drawers' parts 8 3/16 or 8 1/4 for 8, 5 5/8 for 5 1/2.
  [
    "index-cabinet",
    [
      "Saw it out by the layouts first: there it is 3/16 in over in length and width.",
      "Saw them out by the layouts first: there they are 3/16 in over in length and 1/8 in in width. Then bring them to size.",
      "Saw them out by the layouts first: there they are at least 1/8 in over in length and width. Then bring them to size.",
    ],
  ],
])("%s tells what its layouts leave", (name, expected) => {
  expect(told(name)).toEqual(expected);
});
