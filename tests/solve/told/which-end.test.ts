/** Parts that look the same both ways are brought to their place by the holes that are nearer to one end. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

// Holes of the slides lie 45/64 in from the front of a packing 14 1/4 in long, and 3 15/32 in from its back.
test("a packing that is turned round tells which end goes to the front", () => {
  const build = built("index-cabinet");
  expect(textOfStep(stepWith(build, /^Screw on the packing \(G\), at the left/u))).toContain(
    "Turn the packing (G) so that the end with a hole for the side slide nearer to it comes to the front.",
  );
  expect(textOfStep(stepWith(build, /^Screw on two packings \(G\), at the left/u))).toContain(
    "Turn each of two packings (G) so that the end with a hole for the side slide nearer to it comes to the front.",
  );
});

// One row lies 20 mm in from the front, the other 9 mm in from the back.
test("of holes along both edges it is told where the nearest to an edge lie", () => {
  const text = textOfStep(stepWith(built("workbench-cart"), /^Screw on the shelf \(J\)/u));
  expect(text).toContain("Turn the shelf (J) so that the edge with screw holes nearer to it comes to the back.");
});

// The screws lie 1/64 in nearer to its top than to its bottom: nobody sees that.
test("holes nearly as far from both ends tell none, others do", () => {
  const text = textOfStep(stepWith(built("overalls-chest"), /^Screw on the back panel \(C\)/u));
  expect(text).not.toMatch(/screw holes? [^.]*nearer to it/u);
  expect(text).toContain(
    "Turn the back panel (C) so that the end with the holes for the wall strap nearer to it comes to the top.",
  );
});

// The slats of the bench are bored at even distances from both ends and both edges.
test("what may go either way is told no end", () => {
  const texts = built("boot-bench").steps.map(textOfStep);
  expect(texts.filter((text) => text.includes("nearer to"))).toEqual([]);
});

test("a line to nail along tells which bead, and over which rail", () => {
  const text = plain(textOfStep(stepWith(built("old-plans/china-closet"), /^Put in the pane .*at the left/u)));
  expect(text).toContain(
    "Draw lines on the bottom glass bead of the left door (Q) to nail along: over the bottom door rail of the left door (P) 3/16 in from its bottom edge.",
  );
});

test("what is cut for the leaves of hinges is called so in the cut list and for the tools too", () => {
  const build = built("old-plans/china-closet");
  const notes = build.cutList.map((line) => plain(line.notes.join("; ")));
  expect(notes.filter((note) => /5 mortises|7 mortises/u.test(note))).toEqual([]);
  expect(notes.some((note) => note.includes("2 mortises, 3 seats for hinge leaves"))).toBe(true);
  expect(build.tools.some(({ tool, why }) => tool === "Chisels" && why.includes("seats for hinge leaves"))).toBe(true);
});
