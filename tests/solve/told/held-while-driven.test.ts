/** What holds the work while it is driven into, and heads that lie under something later. Common practice, no source, unless it says otherwise. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

const told = (plan: string, title: RegExp): string => textOfStep(stepWith(built(plan), title));

test("a head that a part comes to lie on is sunk, and told by its place", () => {
  // The rail is 3/4 in thick and flush with the front: of nails 1/2 in and 1 1/2 in from there it covers the first.
  expect(told("old-plans/bookcase", /^Nail the bottom board \(K\) and the center piece/u)).toContain(
    "Sink the head 1/2 in from the front edge of the bottom board (K) with a nail set 1/32 in below the surface: the bottom rail (L) comes to lie on it.",
  );
  expect(told("old-plans/bookcase", /^Add the upper backing/u)).not.toContain("Sink");
});

// The backs are nailed to the bottoms 11 in behind the supports, over which they go in and out; the two outer brads lie on the runners.
test("a head that slides over what carries a drawer is sunk as well, and the reason names both", () => {
  expect(told("old-plans/library-table", /^Nail on the drawer bottom/u)).toContain(
    "Sink the heads of those into the box back (O) with a nail set 1/32 in below the surface: the two drawer runners (M) come to lie on some of them, and they slide over the drawer support (L).",
  );
});

test("work that stands and is nailed level from one side is set against a wall", () => {
  const text = told("old-plans/bookcase", /^Add the upper backing/u);
  expect(text).toContain("Set the work with its front against a wall");
  expect(text.indexOf("against a wall")).toBeLessThan(text.indexOf("Drive 4 nails"));
  // What is nailed from above is not pushed away.
  expect(told("old-plans/cedar-chest", /^Nail the side \(A\)/u)).not.toContain("against a wall");
});

test("props under what hangs over have their height, and an end stands on its feet beside the blocks", () => {
  // By hand: the legs stand 600 - 2 x 40 = 520 mm deep; the rails are 40 mm thick, 15 mm from the back of legs of 70 mm. On its front their underside
  // is 520 - 15 - 40 = 465 mm up.
  expect(told("workbench-cart", /^Bolt on two rails/u)).toContain(
    "set props 465 mm high under the far end of the back upper rail (D) and the back lower rail (E)",
  );
  // The lower rails are 180 mm from the floor.
  expect(told("workbench-cart", /^Add the left end/u)).toContain(
    "on blocks 180 mm high, beside the leg (A) and the leg (B): they reach so far below what is there, and stand on the bench while they are put on.",
  );
});

test("two boards that would fall over on the edge of one have blocks, also where they are raised for others", () => {
  // The shelf is 6 in deep and stands on its front edge; the back lies behind it, 6 in up.
  expect(told("old-plans/wall-shelf", /^Glue in the left side/u)).toContain(
    "Put blocks 6 in higher than the others under the lower back (E): on the lower shelf (A) alone the work would fall over.",
  );
});

test("rails with inside corners are sanded before, in one glue-up and in several", () => {
  const all = (name: string): string => built(name).steps.map(textOfStep).join(" ");
  expect(all("old-plans/wall-shelf")).toContain("sand the front face of the lower back (E) with");
  expect(told("old-plans/wall-shelf", /^Glue in the left side/u)).toContain(
    "sand the front face of the upper back (F) with 120, then 180 grit: the corners beside what stands past it are badly",
  );
  expect(all("workbench-cart")).toContain(
    "the left and right faces of the upper end rail (F) and the left and right faces of the lower end rail (G) with",
  );
});

test("the studs are found before the place of the piece is chosen, and that before holes are bored", () => {
  const text = told("old-plans/wall-shelf", /to the wall$/u);
  const places = ["find the studs", "choose the place", "Take 2 wall screws", "Fix them to", "bore its holes"].map(
    (each) => text.indexOf(each),
  );
  expect(places[0]).toBeGreaterThan(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
});

test("heads with little room are told by where they are, also those at buttons", () => {
  // Buttons 4 in from the ends of a rail of 37 in, and in its middle.
  const text = told("old-plans/library-table", /^Add the top board/u);
  expect(text).toContain("behind the heads 4 in and 33 in from the left end of the two top rails (C)");
  expect(text).toContain("behind the heads 18 1/2 in from the left end of the two top rails (C)");
});

test("a right-angle driver in line comes before a long bit that leans; where that has to lean it is told", () => {
  // 300 mm behind its head the screw passes 9 mm before the brace: the drill, 60 mm across, does not go in line there.
  const shelf = told("workbench-cart", /^Screw on the shelf/u);
  expect(shelf).toContain("380 mm from the left end of the shelf (J): use a right-angle driver there");
  const leaning = built("old-plans/bookcase").steps.filter(({ actions }) =>
    actions.some((action) => action.do === "drive" && action.tool === "long" && action.axis !== null),
  );
  expect(leaning.length).toBeGreaterThan(0);
  for (const step of leaning) expect(textOfStep(step)).toContain("Hold it leaning a little, 5° at most");
});
