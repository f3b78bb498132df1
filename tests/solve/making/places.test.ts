/** Where a part goes is told from what a rule can reach. Worked out by hand from the sizes of the plans. */
import { expect, it } from "vitest";
import { solveText, textOf } from "../../examples/compiled.ts";
import { plain } from "./plans.ts";

const wordsOf = (name: string): string =>
  plain((solveText(textOf(name)).build?.steps ?? []).flatMap(({ text }) => text).join("\n"));

// The bottom lies in rabbets of 1/2 in sides and looks down: nobody sees its edges. The plinth stands 1 1/2 in within the chest.
it("from the outside of a chest, where the bottom that it stands on lies in rabbets underneath", () => {
  expect(wordsOf("rope-chest")).toContain(
    "Place the long plinth board (E) under the bottom panel (K), midway between the outside of the left side (C) and the outside of the right side (D) (1 1/2 in from each) and 1 1/2 in from the outside of the front panel (A).",
  );
});

// A shelf of 10 in between two rails, a lid board between four strips.
it("against what stands beside it, not on that", () => {
  expect(wordsOf("old-plans/plant-stand")).toContain("Place the shelf (G) against the left lower rail (F), midway");
  expect(wordsOf("old-plans/cedar-chest")).toContain(
    "Place the lid board (C) against the long strip (K), the left short strip (M) and the right short strip (M) and flush with the top of the long strip (K).",
  );
});

// The slab is 72 × 14 with legs of 2 in that stand 1 in within it at the sides; aprons are set back from the legs.
it("of a frame by its legs, where they stand out past the rail that is joined", () => {
  expect(wordsOf("dining-bench")).toMatch(
    /Place four legs \(B\) midway .* and midway between the front and the back \(1 in from each\) of the slab/u,
  );
});

// The posts stand 1/8 in out past the rails, and the top 1 1/2 in past the posts.
it("of a top by what it reaches past on both sides, not by a rail that is set back", () => {
  expect(wordsOf("old-plans/plant-stand")).toContain(
    "midway between the front and the back (1 1/2 in past two posts (A) and two posts (B) at each)",
  );
});

// The upper back lies 1/4 in deep in rabbets of the sides: its ends are 6 3/4 + 1/4 in from the screws.
it("of hardware from what covers the end of its part by then", () => {
  expect(wordsOf("old-plans/wall-shelf")).toContain(
    "1 in from the upper shelf (B) and 6 3/4 in from the left side (C), of the other",
  );
});

// The back lies in grooves of the case by then, and nobody can see its ends.
it("from what a part is let into, where its ends are inside that", () => {
  const words = wordsOf("key-cabinet");
  expect(words).toContain("against the back panel (E), the left side (A) and the right side (B)");
  expect(words).toContain("in from the bottom panel (C)");
  expect(words).not.toMatch(/key rail \(K\) [^.]* from the bottom of the back panel/u);
});

// The board reaches past the base onto the post, which is flush with that: the edge of the base is a line under it.
it("from another part that it comes on, where the edge of the first is covered", () => {
  const { build } = solveText(`plan: 1
title: Corner
units: inch
stock: { wood: { wood: poplar, sold as: 4/4, planed to: 3/4, widths: 4 to 12 } }
piece:
  post: { made of: wood, as: upright, facing: left, left: 0, front: 0, deep: 10, bottom: 0, up: 20 }
  base: { made of: wood, as: lying flat, grain: across, left: post.right, across: 20, front: 0, deep: 10, bottom: 0 }
  board: { made of: wood, as: upright, facing: back, left: 1/4, across: 8, front: post.back, bottom: 0, up: 18 }
joints:
  - { join: base, to: post, with: screws }
  - { join: board, to: [base, post], with: nails }
`);
  expect(plain((build?.steps ?? []).flatMap(({ text }) => text).join("\n"))).toMatch(
    /Place the board \(\w\) 1\/4 in from the left of the post \(\w\) and flush with the bottom of the base \(\w\)\./u,
  );
});

// The rabbets of the sides begin 2 in above the floor, and are 48 in long: eleven boards of 4 in leave 4 in.
it("of boards that lie against each other in one rabbet by the end that they begin at, and what stays open at the other", () => {
  expect(wordsOf("old-plans/bookcase")).toContain(
    "Begin at the bottom, where the rabbets end, and go on towards the top, each against the one before. At the top 4 in of the rabbets stay open.",
  );
});

it("a spacer is named where two stand beside each other, and not when the first comes", () => {
  const steps = solveText(textOf("old-plans/china-closet")).build?.steps ?? [];
  const told = (title: string): string =>
    plain(
      steps
        .filter((step) => plain(step.title) === title)
        .flatMap(({ text }) => text)
        .join("\n"),
    );
  expect(told("Nail on the left back board (U)")).toContain("Place the left back board (U)");
  expect(told("Nail on the left back board (U)")).not.toMatch(/jig 1/iu);
  expect(told("Nail on the right back board (W)")).toContain(
    "Leave 1/8 in between the right back board (W) and the inner back board (V): jig 1 is as thick.",
  );
});

// The top of the posts is 1 1/4 in higher than that of the brace, which the cleat is measured from.
it("after the names of others names the part whose edge is meant", () => {
  expect(wordsOf("old-plans/china-closet")).toContain(
    "(1/8 in from each) and 3/4 in from the top of the upper brace of the left end (S).",
  );
});
