/** What cuts are for; sizes by hand from the plans. */
import { expect, test } from "vitest";
import { built, solveText } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

const table = (title: RegExp): string => textOfStep(stepWith(built("old-plans/library-table"), title));
const closet = (title: RegExp): string => textOfStep(stepWith(built("old-plans/china-closet"), title));

test("a dado that nothing goes into is room for what stands over it", () => {
  expect(table(/^Cut the dados in the lower brace/u)).toContain(
    "They give the left end piece (F) and the right end piece (G), which stand over them, room to swell: leave them open.",
  );
});

// Posts 2 in deep, 1/2 in of which stands behind the board: 1 1/2 in of a notch of 1 3/4.
test("room in a notch across the grain is told with what it is for", () => {
  const text = closet(/^Cut the notches in the bottom\/top board/u);
  expect(text).toContain("They are for the left end front post (A) and the right end front post (C). Cut two");
  expect(text).toContain(
    "with 1/4 in of room in front of them in which the bottom/top board (J) swells: leave that open.",
  );
});

// The top overhangs the posts by 1/4 in, and its notches are 2 3/8 deep: 1/8 in behind the front posts, as much in front of those behind.
test("room on different sides is beside what is in the notches", () => {
  expect(table(/^Cut the notches in the top board/u)).toContain(
    "They are for four legs (A), with 1/8 in of room beside them in which the top board (B) swells: leave that open.",
  );
});

// The rabbet of a door is 1/16 in wider than its pane: no wood swells into that.
test("glass has its play, and no room to swell", () => {
  expect(closet(/^Cut the joints in the outer door stile/u)).toMatch(/It is for the pane \(AB\)\. /u);
});

// A rail in a notch of a sheet has room, but no sheet swells.
test("room beside a sheet is none to swell in", () => {
  const { build } = solveText(`plan: 1
title: Shelf
units: inch
stock:
  sheet: { sold as: 3/4 birch plywood, measures: 23/32, sheet: 4 x 8 ft }
  stick: { wood: white oak, sold as: 5/4, planed to: { thick: 1, wide: 1 } }
piece:
  shelf: { made of: sheet, as: lying flat, grain: across, left: 0, right: 24, front: 0, back: 12, top: 10,
    notch: { at: left front, wide: 1, deep: 1 1/8 } }
  post: { made of: stick, as: upright, left: 0, front: 0, bottom: 0, top: 12 }
joints:
  - { join: post, to: shelf, with: screws }
`);
  const text = (build?.steps ?? []).map(textOfStep).join(" ");
  expect(text).toContain("It is for the post");
  expect(text).not.toContain("swell");
});

test("the room of a panel in its frame is told where it goes in", () => {
  expect(textOfStep(stepWith(built("old-plans/medicine-cabinet"), /^Add the back panel/u))).toContain(
    "so that it can move: 1/8 in of room stays at each of its edges along the grain, for it to swell.",
  );
});
