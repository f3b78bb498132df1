/** How work lies while something is joined to it: common practice, no source. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Step } from "../../../src/solve/build.ts";
import { built, solveText } from "../../examples/compiled.ts";
import { plain } from "../told/examples.ts";

const stepsOf = (name: string): readonly Step[] => built(name).steps;
const joins = (name: string, from: string, to: string): readonly Step[] => {
  const steps = stepsOf(name);
  const [first, last] = [from, to].map((title) => steps.findIndex((step) => step.title.startsWith(title))) as [
    number,
    number,
  ];
  expect(first).toBeGreaterThan(-1);
  expect(last).toBeGreaterThan(first);
  return steps.slice(first, last + 1).filter(({ kind }) => kind === "join" || kind === "glue-up");
};

// A board 28 3/4 × 14 on end grain of a post 45 3/4 high would fall over; front and post are flush.
test("what would fall over as its heads want it lies on the side on which it does not", () => {
  const [step] = stepsOf("old-plans/bookcase").filter(({ title }) =>
    title.startsWith("Nail the bottom board (K) and the center piece"),
  );
  expect(step?.up).toEqual([0, 1, 0]);
  expect(plain(step?.text[0] ?? "")).toBe("Put it together lying on its front, as drawn.");
  expect(step?.text.map(plain).join(" ")).toContain("Drive 2 nails 2 in long from the bottom");
});

// The board of 30 1/2 is 5/8 deeper in front than the post that lies on the bench.
test("what reaches below the work has room there", () => {
  const [step] = stepsOf("old-plans/bookcase").filter(({ title }) => title.startsWith("Glue in the top board (I)"));
  expect(step?.text.map(plain)).toContain(
    "Raise the work on blocks more than 5/8 in high, clear of the top board (I): it reaches so far below what is there.",
  );
});

// The lower rail lies 180 above the foot; the body of the slanted brace, not what is left of it, would reach farther down.
test("what lies aslant reaches as far down as its wood", () => {
  const [step] = stepsOf("workbench-cart").filter(({ title }) => title.startsWith("Add the left end"));
  expect(step?.text.map(plain).join(" ")).toContain(
    "Raise the work on blocks 180 mm high, beside the leg (A) and the leg (B)",
  );
});

// The base in front stands out 1 in past the box; the top of the bookcase 5/8 in past its bottom and its post.
// They are told where the work is laid down, to cut what goes on.
test("what stands out below has blocks beside it", () => {
  const told = (name: string, title: string): string =>
    (stepsOf(name).find((step) => plain(step.title).startsWith(title))?.text ?? []).map(plain).join(" ");
  expect(told("old-plans/cedar-chest", "Cut the long base (F) to fit, at the back")).toContain(
    "Lay blocks 1 in high under the side (A): the long base (F) stands out so far below.",
  );
  expect(told("old-plans/bookcase", "Cut eleven lower backings")).toContain(
    "Lay blocks 5/8 in high under the bottom board (K) and the center piece (C)",
  );
  expect(told("old-plans/cedar-chest", "Nail on the long base (F), at the front")).not.toContain("blocks");
});

// The long bases end in mitres at both ends; the short base at the left is glued in first, the work on its right end.
test("nothing bears on the points of open mitres", () => {
  const said = (title: string): string =>
    (stepsOf("old-plans/cedar-chest").find((step) => plain(step.title) === title)?.text ?? []).map(plain).join("\n");
  const left = said("Glue in the short base (I), at the left");
  expect(said("Cut the short base (I) to fit, at the left")).toContain(
    "Lay blocks at least 3 1/2 in high under the two sides (A) and the right end (E)",
  );
  expect(left).toContain("At the right two long bases (F) end in open mitres, and a jaw would crush their points");
  expect(said("Glue in the short base (I), at the right")).not.toContain("open mitres");
  expect(said("Cut the short rail (J) to fit, at the left")).toMatch(
    /^Lay battens at least 2 1\/2 in high under .*: nothing may bear on the points/mu,
  );
});

// A crest stands on the back of a top that is screwed to two sides: on its head the work would stand on the crest.
test("what reaches past the rest is clamped in, and the work rests on blocks beside it", () => {
  const { build } = solveText(`plan: 1
title: Bench for the porch of the tool library
units: inch
outside: { width: 40, depth: 12, height: 22 }
stock: { boards: { wood: pine, sold as: 4/4, planed to: 3/4, widths: 8 to 14 } }
piece:
  top: { made of: boards, as: lying flat, grain: across, left: 0, right: 40, front: 0, back: 12, top: 18 }
  left-end: { made of: boards, as: upright, facing: left, left: 4, front: 1, back: 11, bottom: 0, under: top }
  right-end: { mirror of: left-end, about: across }
  crest: { made of: boards, as: on edge, facing: back, left: 1, right: 39, back: 12, bottom: top.top, up: 4 }
joints:
  - { join: top, to: [left-end, right-end], with: screws, from: top }
  - { join: top, to: crest, with: screws, from: top }
`);
  const [crest] = (build?.steps ?? []).filter(({ title }) => title.startsWith("Screw on the crest"));
  expect(plain(crest?.text.join(" ") ?? "")).toMatch(/rests on blocks beside the crest \(\w\), more than 4 in high/u);
});

test("a whole piece is not turned for screws that its sides show as it lies", () => {
  const table = joins("old-plans/library-table", "Screw on the left end piece", "Screw on the lower brace");
  expect(new Set(table.filter(({ title }) => title.startsWith("Screw")).map(({ up }) => up.join()))).toEqual(
    new Set(["0,0,-1"]),
  );
});

// The bottom board of 28 3/4 × 14 and the top of 31 1/4 × 15 are joined by one post of 45 3/4, at their fronts, until the sides are on.
test("what hangs on one post lies down, and the other end is done as the first lies", () => {
  const lie = joins("old-plans/bookcase", "Screw on the top back board", "Screw on the right side");
  expect(lie.map(({ up }) => up[2])).toEqual(lie.map(() => 0));
  const [, cleat, side, otherCleat, otherSide] = lie;
  expect([otherCleat?.up, otherSide?.up]).toEqual([cleat?.up, side?.up]);
});

// A divider of 23/32 with a top on it, 60 in high, stands on a plinth: pushed by a tenth of its weight, its dado is pulled out.
test("a tall case is glued up on its back", () => {
  const glued = joins("manuals-bookcase", "Glue in the divider", "Glue in the left side");
  expect(glued.map(({ up }) => up)).toEqual(glued.map(() => [0, -1, 0]));
  expect(glued[0]?.text.map(plain)).toContain("Lay the work down on its back on battens.");
});

// The plinth lies with its back up when its last board is screwed on; the bottom panel is screwed to its top.
test("what was built before and begins a body is turned as it is told of", () => {
  const [bottom] = stepsOf("manuals-bookcase").filter(({ title }) => title.startsWith("Screw the bottom panel"));
  expect(bottom?.text[0]).toBe("Stand the work up.");
});

// 33 in long, 3 1/2 above the floor; a shelf of 10 between two rails.
test("what is screwed by its end, with nothing under it, lies on blocks", () => {
  const said = (name: string, title: string): string =>
    (stepsOf(name).find((step) => step.title.startsWith(title))?.text ?? []).map(plain).join(" ");
  expect(said("boot-bench", "Screw on the stretcher")).toContain(
    "It lies on nothing yet: set blocks 3 1/2 in high, or offcuts cut to that, under the stretcher (C) at the free end while it is screwed, and leave them there until the lower rail (F) holds the other end.",
  );
  expect(said("old-plans/plant-stand", "Screw on the shelf (G)")).toContain(
    "It lies on nothing yet: set blocks 5 5/8 in high, or offcuts cut to that, under the shelf (G) while it is screwed.",
  );
  // The table stands on its head: its top reaches under all of each support, which lies 5 7/8 from it.
  expect(said("old-plans/library-table", "Screw on two drawer supports (L)")).toContain(
    "set blocks 5 7/8 in high, or offcuts cut to that, on the top board (B), under the two drawer supports (L) while they are screwed",
  );
  // What is screwed flat against a side is held by hand.
  expect(said("index-cabinet", "Screw on the packing")).not.toContain("lies on nothing");
});

// The second screw of the first end would hold the bench out of square before its diagonals can be measured.
test("what a later step proves square has one screw in each joint until then", () => {
  const said = (title: string): string =>
    (stepsOf("boot-bench").find((step) => step.title.startsWith(title))?.text ?? []).map(plain).join(" ");
  expect(said("Screw on the stretcher")).toContain("Of these drive one in each joint for now;");
  expect(said("Add the right end")).toContain(
    "Then drive the others, and those that were left out of the stretcher (C): with all of them in nothing can be shifted.",
  );
});

// The sides of a drawer are nailed to its back from the left and the right; a lid of 40 in is too thin to stand on its edge.
test("what is nailed from two sides is turned for each, or backed across from the hammer", () => {
  const said = (name: string, title: string): string =>
    (stepsOf(name).find((step) => step.title.startsWith(title))?.text ?? []).map(plain).join(" ");
  expect(said("old-plans/library-table", "Build the two drawers")).toContain(
    "For those from the left and the right turn the work: the side that is nailed lies uppermost, and the one across from it on the bench.",
  );
  expect(said("old-plans/cedar-chest", "Nail on the lid board (C)")).toContain(
    "press a heavy block against the side across from the hammer, in line with its blows",
  );
});

test("a back is nailed on lying, so that the nails are driven down", () => {
  const [back] = stepsOf("manuals-bookcase").filter(({ title }) => title.startsWith("Nail on the back panel"));
  expect(back?.up).toEqual([0, 1, 0]);
  expect(back?.text.map(plain).join(" ")).toContain("brads 5/8 in long from above");
});

// A face frame of 36 × 33 on a case 15 3/4 deep, which stood.
test("a frame that covers a front is glued on from above", () => {
  const [frame] = stepsOf("index-cabinet").filter(({ title }) => title.startsWith("Add the face frame"));
  expect(frame?.up).toEqual([0, -1, 0]);
  expect(frame?.text.map(plain)).toContain("Lay the work down on its back on battens.");
});

// The recesses lie in the edges that the top covers.
test("figure-eight fasteners are screwed in before the top comes", () => {
  const [top] = stepsOf("workbench-cart").filter(({ title }) => title.startsWith("Add the plywood top"));
  const at = (words: string): number => top?.text.findIndex((each) => each.includes(words)) ?? -1;
  expect(at("into their recesses")).toBe(0);
  expect(at("on a blanket")).toBeGreaterThan(0);
});

// The spacer goes in from the back, on which the cabinet lay for its face frame.
test("nothing goes in at the side that the work lies on", () => {
  const [frame, spacer] = ["Add the face frame", "Screw on the spacer"].map((title) =>
    stepsOf("spice-cabinet").find((step) => step.title.startsWith(title)),
  );
  expect(frame?.up).toEqual([0, -1, 0]);
  expect(spacer?.up).toEqual([0, 0, 1]);
});

// Two ends of two legs and a rail, and two aprons with the bearer between them: no apron stands free with one end while the other is glued.
test("frames come together before what joins them", () => {
  const frames = stepsOf("dining-bench")
    .map(({ title }) => plain(title))
    .filter((title) => title.startsWith("Glue up") || title.startsWith("Build the frame"));
  expect(frames).toContain("Glue up two long aprons (C) and the bearer (D)");
  expect(frames.some((title) => /the leg \(B\) and the long apron/u.test(title))).toBe(false);
});

// The shoulders are said, 3/16 in: the panel's groove takes its own depth, 3/8, off the tenons, but not off their mortises.
test("where a tenon has play along its mortise, the place of its rail is told", () => {
  const door = readFileSync(new URL("../design/plans/panel-door.yaml", import.meta.url), "utf8");
  // As long as the groove of the stile is deep: its mortise has no wall there.
  const text = door.replace("long: 1 1/4, shoulder: 1/2", "long: 3/8, shoulder: 3/16");
  const lies = (solveText(text).build?.steps ?? [])
    .flatMap((step) => step.text.map(plain))
    .filter((line) => /^The (?:bottom|top) rail \(\w\) lies/u.test(line));
  expect(lies).toEqual([
    "The bottom rail (B) lies flush with the bottom of two stiles (A).",
    "The top rail (C) lies flush with the top of two stiles (A).",
  ]);
  const tight = stepsOf("dining-bench").flatMap(({ text }) =>
    text.filter((line) => /apron \(\w\) lies .* (?:top|bottom)/u.test(plain(line))),
  );
  expect(tight).toEqual([]);
});

// The left pane goes in with that side up; the doors are hung on the piece as it stands.
test("what is laid down for its glass is told to stand up again", () => {
  const steps = stepsOf("old-plans/china-closet");
  const at = (title: string): number => steps.findIndex((each) => plain(each.title).startsWith(title));
  const [left, right] = [at("Put in the long pane (AA), at the left"), at("Put in the long pane (AA), at the right")];
  expect(steps[left]?.up).toEqual([-1, 0, 0]);
  expect(steps[left]?.text.some((each) => each.startsWith("Lay the piece on a blanket"))).toBe(true);
  // The mirrored step says how it lies in the words of the first.
  expect(plain(steps[right]?.text[0] ?? "")).toMatch(/^As step \d+, mirrored/u);
  expect(steps[at("Put the left door")]?.text[0]).toBe("Stand the work up.");
});

// On its right end the chest bears on its base alone, 2 3/4 in of 18: what stands 1 in higher is propped too.
test("what would tip over on its lowest parts is propped under the next ones", () => {
  const [step] = stepsOf("old-plans/cedar-chest").filter(({ title }) =>
    /^Cut the short rail.*left/u.test(plain(title)),
  );
  expect(step?.text.map(plain).join(" ")).toContain(
    "under the two long bases (F) and the short base (I), and blocks 1 in higher under the two sides (A) and the right end (E), or it tips over",
  );
});
