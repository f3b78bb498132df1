/** Nails have no holes that would show their places. By hand from the plans. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

// Two sides 34 in long, ends between them: nails 4 in apart from 1 in on; 14 1/4 in between the sides leave 7/8 + 1 in.
// 16 in of width, less 1 7/8 at both edges: 12 1/4 in three spaces.
test("rows of one panel are told by what they go into", () => {
  expect(textOfStep(stepWith(built("old-plans/cedar-chest"), /^Nail on the bottom board/u))).toContain(
    "into two sides (A) about 4 in, the outer ones 1 in from its ends; into the left end (D) and the right end (E) evenly about 4 1/16 in, the outer ones 1 7/8 in from its edges",
  );
});

// Cleats 1 1/4 in wide at both ends of the rail, two nails 5/16 in from either edge of each.
test("a few nails near one end are told one by one from there", () => {
  expect(textOfStep(stepWith(built("old-plans/bookcase"), /^Nail .*the bottom rail \(L\)/u))).toContain(
    "two in each joint: into the bottom cleat (R) 5/16 in and 15/16 in from the left end of the bottom rail (L); into the right bottom cleat (S) 5/16 in and 15/16 in from the right end of the bottom rail (L).",
  );
});

// Two between the rabbet and the front, both near the front: their places alone.
test("where places are told, no distance apart is", () => {
  expect(textOfStep(stepWith(built("old-plans/bookcase"), /^Nail the bottom board \(K\)/u))).toContain(
    "into the center piece (C), 1/2 in and 1 1/2 in from its front edge",
  );
});

// The walls are 3/4 in thick and the ledge of the rabbet 1/4: the row over the middle of the ledge starts 1/8 in from the face inside.
test("nails that start near a face of the edge they go into are leant away from it, and press the panel on without clamps", () => {
  const told = textOfStep(stepWith(built("rope-chest"), /^Build the chest/u));
  expect(told).toContain(
    "Lean them a little, the points towards the middle of the wood: they start only 1/8 in from its face",
  );
  expect(told).toMatch(/Set the bottom panel \(K\) into the rabbets in [^.]*right side \(D\)\. /u);
  const back = textOfStep(stepWith(built("manuals-bookcase"), /^Nail on the back panel/u));
  expect(back).toContain(
    "Lean those that go into the left side (A), the right side (B), the bottom panel (D) and the top panel (E) a little",
  );
});
