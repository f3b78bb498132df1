/** What has to go in, pass or be reached with the finish on it and at the size that it has then. */
import { expect, test } from "vitest";
import { filmOf } from "../../../src/solve/build/finishing/products.ts";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const said = (name: string, title: RegExp): string => textOfStep(stepWith(built(name), title));

test("a panel that floats is tried in its grooves before it has its coats", () => {
  const text = said("index-cabinet", /^Finish two door panels \(X\)/u);
  expect(text).toMatch(/^Two door panels \(X\) go into their grooves without glue/u);
  expect(text).toContain("slides easily with a sheet of paper on both faces: three coats will take up that room.");
  expect(said("index-cabinet", /^Finish the piece/u)).not.toContain("sheet of paper");
});

test("a film is as thick as paper after three coats, and what soaks in leaves none", () => {
  // Copy paper of 80 g/m2 is about 0.1 mm thick; the film: common practice, no source.
  expect(filmOf({ product: "varnish", coats: 3 })).toBeCloseTo(0.1, 9);
  expect(filmOf({ product: "hard wax oil", coats: 3 })).toBe(0);
});

test("where fewer coats do inside, the step names the parts, and less of the finish is counted", () => {
  const { finishing = [], cutList } = built("index-cabinet");
  const text = said("index-cabinet", /^Finish the piece/u);
  const [, all = "", faces = ""] =
    /Inside two coats do where it is shut in: all of ([^;]*); of (.*?) what looks/u.exec(text) ?? [];
  const marks = (words: string): readonly string[] => words.match(/\b[A-Z]\b/gu) ?? [];
  const markOf = (id: string): string => cutList.find(({ parts }) => parts.includes(id))?.mark ?? "";
  // The loose shelves lie behind the doors; of the sides of the case only what looks inwards is there.
  expect(marks(all)).toContain(cutList.find(({ name }) => name === "Loose shelf")?.mark);
  expect(marks(faces)).toEqual(expect.arrayContaining(["cabinet.left-side", "cabinet.right-side"].map(markOf)));
  // Doors and the fronts of drawers are seen.
  for (const id of ["face-frame.lower-door.left-panel", "face-frame.lower-door.right-panel"]) {
    expect(marks(all)).not.toContain(markOf(id));
    expect(marks(faces)).not.toContain(markOf(id));
  }
  const [finish] = finishing;
  expect(finish?.insideArea).toBeGreaterThan(0);
  expect(finish?.insideArea).toBeLessThan(finish?.area ?? 0);
});

test("a line over the edge of a board that may be narrower than drawn begins at what it is nailed into", () => {
  expect(said("old-plans/cedar-chest", /^Nail on the bottom board/u)).toContain(
    "over two sides (A) 7/16 in from their outside; over the left end (D) and the right end (E) 7/16 in from its left and right ends",
  );
});

test("a shelf that is flush in front and comes against a brace behind is measured from the one to the other", () => {
  expect(said("workbench-cart", /^Cut the shelf \(J\)/u)).toContain(
    "Width: the room is expected to be 468 mm. Measure from the front of the front lower rail (C) to the brace (H), and cut it 1 mm less, 467 mm then: its back edge",
  );
});

/**
 * The closing edge of the bookcase's doors lies 13 7/8 + 1/32 in from the pin, its back corner 3/4 + 3/8 + 1/8 in behind it, and the gap is 1/16 in.
 * √(13.906² + 1.25²) = 13.962. A bevel of 2° takes 0.75 · tan 2° = 0.026 in off at the back: 13.936, 0.033 in of room, less 0.008 in for two
 * films. With 3°, 0.039 in, it swings to 13.923: 0.046 less 0.008 in, more than 1/32.
 */
test("a closing edge that clears by less than 1/32 in with its finish on is bevelled before the door is hung", () => {
  const text = said("old-plans/bookcase", /^Hang the left door/u);
  expect(text).toMatch(
    /^Plane the right edge of the door stile \(E\), where the door closes, to a bevel of 3°: its back corner 3\/64 in farther in/u,
  );
  // 2.3 mm of room: none is told.
  expect(said("old-plans/china-closet", /^Hang the left door/u)).not.toContain("bevel");
});

test("a catch whose place the plan gives tells how far it has to reach from there, and a knob how far it stands out", () => {
  // The shelf ends 1/2 in behind the door, and the screws go in 1/4 in behind its edge.
  const decides = (name: string, kind: string) =>
    built(name)
      .hardware.find(({ item }) => item.kind === kind)
      ?.item.decides.map((each) => plain(`${each.name} ${each.value}`));
  expect(decides("old-plans/china-closet", "catch")).toContain("from its screws to the shut door 3/4 in");
  // Where the catch goes where such catches go, its name says nothing of it.
  const named = built("old-plans/bookcase").hardware.find(({ item }) => item.kind === "catch");
  expect(named?.item.label).not.toContain("screws");
  expect(decides("old-plans/bookcase", "knob")).toContain("out 1 1/4 in");
  expect(decides("old-plans/china-closet", "knob")?.join()).not.toContain("out ");
});

test("an edge that is rounded stays square where others end against it", () => {
  // The rail is 4 in high, and the board on it 3/4 in.
  expect(said("old-plans/bookcase", /^Shape the left side/u)).toContain(
    "Leave the edge square where the bottom rail (L) and the bottom board (K) come against it, over 4 3/4 in from its bottom end",
  );
});
