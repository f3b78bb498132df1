import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const chest = () => built("old-plans/cedar-chest");
const inches = (text: string): number => {
  const [, whole = "0", top = "0", bottom = "1"] = /(\d+)(?: (\d+)\/(\d+))? in/u.exec(text) ?? [];
  return Number(whole) + Number(top) / Number(bottom);
};

test("blocks are as high as the jaws need that go under the work", () => {
  // The long bases stand out 1 in below, and a jaw takes 2 in beside the wood and a pad (common practice, no source).
  // It is laid down to cut what is glued in.
  const text = textOfStep(stepWith(chest(), /^Cut the short base.*left/u));
  const [said = ""] = /blocks at least [\d /]+ in high under the two sides/u.exec(text) ?? [];
  expect(inches(said)).toBeGreaterThanOrEqual(1 + 2);
  expect(text).toContain("the jaws of the clamps go under them");
  expect(text).toContain("Nothing may bear on the points of open mitres.");
});

test("work that lies on the bench itself is raised for them too, but only where clamps stand upright", () => {
  const text = textOfStep(stepWith(built("rope-chest"), /^Build the chest/u));
  expect(text).not.toContain("their jaws go under it");
  expect(textOfStep(stepWith(chest(), /^Glue in the short rail.*right/u))).toMatch(
    /Raise the work on blocks at least 2 1\/2 in high, or let it stand out over the edge of the bench where clamps press/u,
  );
});

test("battens under what is mitred are as high", () => {
  expect(textOfStep(stepWith(chest(), /^Cut the short rail.*left/u))).toMatch(
    /Lay battens at least 2 1\/2 in high under .*, and jaws go under the work\./u,
  );
});

test("what is nailed between others a little above the bench lies on blocks meanwhile", () => {
  // The frame is 1 in high and flush above with a board of 7/8 in; it is raised itself for the hammer.
  expect(textOfStep(stepWith(chest(), /^Nail on the lid board/u))).toContain(
    "It lies on nothing yet: set blocks 1/8 in higher than those under the work under the lid board (C) while it is nailed.",
  );
});

test("a rail that lies wholly on what it is nailed to has a line to nail along as well", () => {
  // 2 in wide, nailed in its middle.
  for (const title of [/^Nail on the long rail/u, /^Nail on the hinge rail/u, /^Glue in the short rail.*left/u])
    expect(textOfStep(stepWith(chest(), title))).toMatch(
      /Draw lines on the [a-z ]+ \([A-Z]\) to nail along: over the .+? 1 in from its bottom edge\./u,
    );
});

const closet = (title: RegExp): string => textOfStep(stepWith(built("old-plans/china-closet"), title));

test("a shelf that lies on blocks at its front alone is propped behind while it is screwed from the back", () => {
  // The blocks are 1 in deep, the shelf 15 3/16.
  expect(closet(/^Screw on the shelf \(N\)/u)).toContain(
    "It lies on the two shelf blocks (AC) alone, and would tip: set blocks 14 in high, or offcuts cut to that, on the bottom/top board (J), under the shelf (N) at the back while it is screwed.",
  );
});

test("a board that is only measured for stands no work on its head, and is clamped in while that stands", () => {
  expect(closet(/^Cut the bottom\/top board .* at the bottom/u)).toMatch(/^Stand the work up\. Length/u);
  expect(closet(/^Screw on the bottom\/top board .* at the bottom/u)).toMatch(
    /^Set the bottom\/top board .* clamp it there, and turn the work upside down with it\./u,
  );
});

test("a spacer is told where a part is placed, before it is nailed", () => {
  expect(closet(/^Nail on the right back board/u)).toMatch(
    /Place the right back board .*Leave 1\/8 in between the right back board .*: jig 1 is as thick\. .*Draw lines .*Drive/u,
  );
});

test("a long piece that is driven into from behind what it lies against lies on blocks", () => {
  // The table stands on its head, the piece 5 7/8 in above its top.
  expect(textOfStep(stepWith(built("old-plans/library-table"), /^Screw on the drawer runner.*left/u))).toContain(
    "set blocks 5 7/8 in high, or offcuts cut to that, on the top board (B), under the drawer runner (M) while it is screwed",
  );
});

test("what lies on rails is set on them, also where it is slid in from the front", () => {
  expect(textOfStep(stepWith(built("workbench-cart"), /^Screw on the shelf/u))).toContain(
    "Set the shelf (J) on the rail (C) and the back lower rail (E).",
  );
});

test("what hangs is placed before its hinges are driven", () => {
  const text = textOfStep(stepWith(chest(), /^Hang the lid/u));
  expect(text.indexOf("Place the back strip (L)")).toBeLessThan(text.indexOf("Screw the hinges"));
  expect(text).toContain("Place the back strip (L) flush with the left and the right");
});

// The top is 15 in deep, the sides 14: on its front the work rests on the top, and the sides are 1 in above the bench.
test("sides that take nails a little above the bench have blocks under them", () => {
  const text = textOfStep(stepWith(built("old-plans/bookcase"), /^Cut eleven lower backings/u));
  expect(text).toContain("Lay blocks 1 in high under the left side (A) and the right side (B) too");
  expect(text.indexOf("Lay blocks 1 in")).toBeLessThan(text.indexOf("Length: expected"));
  // Those of the chest are carried by its box.
  expect(textOfStep(stepWith(chest(), /^Nail on the lid board/u))).not.toContain("they take the blows");
});

// The legs splay 6°: laid on their feet, the middle of an apron 2 in below the top of 29 is 27 tan 6° = 2 13/16 in up; a jaw takes 2 in, a pad and a wedge 1/2 in each.
test("a wedge under the jaw counts", () => {
  for (const title of [/^Glue in two long aprons/u, /^Add the frame from step/u])
    expect(textOfStep(stepWith(built("loan-desk"), title))).toContain(
      "Raise the work on blocks at least 1/2 in high, or let it stand out over the edge of the bench where clamps press",
    );
});

// The back boards are thin, the shelves lie loose on blocks before them, and the screws come from behind.
test("what is screwed from behind what it lies against is pressed on, but not what is clamped or has something behind it", () => {
  expect(closet(/^Screw on the shelf \(N\)/u)).toContain(
    "The drill pushes the shelf (N) and the upper shelf (O) off the left back board (U), the three inner back boards (V) and the right back board (W): have a second person press them against these from the other side, or clamp them there, until the first screws hold.",
  );
  const pushed = (name: string): number =>
    built(name).steps.filter((step) => textOfStep(step).includes("The drill pushes")).length;
  // Fronts of drawers are clamped to their boxes before they are screwed.
  expect(pushed("workbench-cart")).toBe(0);
});

test("a board that several cleats bear is screwed on when all of them are there", () => {
  const titles = built("old-plans/china-closet").steps.map(({ title }) => plain(title));
  const board = titles.findIndex((title) => /^Screw on the bottom\/top board .* at the bottom/u.test(title));
  for (const cleat of ["long cleat (X)", "left short cleat (Y)", "right short cleat (Z)"])
    expect(titles.slice(0, board)).toContain(`Screw on the ${cleat}, at the bottom`);
  expect(closet(/^Screw on the bottom\/top board .* at the bottom/u)).toContain(
    "on the long cleat (X), the left short cleat (Y) and the right short cleat (Z)",
  );
});

// The top is 1 in deeper than the sides in front, 5/8 in more than the bottom: 1 − 3/8 (examples/old-plans/bookcase.yaml).
test("work that is laid down to cut what goes on it is laid on its blocks then, and lies on them when that goes on", () => {
  const [cut, put] = [/^Cut eleven lower backings/u, /^Add eleven lower backings/u].map((title) =>
    textOfStep(stepWith(built("old-plans/bookcase"), title)),
  ) as [string, string];
  expect(cut).toMatch(/Lay the work down, its back side up\.\s+Lay blocks 5\/8 in high under the bottom board \(K\)/u);
  expect(cut).toContain("Lay blocks 1 in high under the left side (A) and the right side (B) too");
  expect(put).toContain("The work lies on its blocks still.");
  expect(put).not.toContain("Lay blocks");
});
