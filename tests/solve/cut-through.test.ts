import { describe, expect, test } from "vitest";
import { cutsThrough } from "../../src/solve/build/cut-through/index.ts";
import { inches, millimetres, subtract, toNumber } from "../../src/units/index.ts";
import { built } from "../examples/compiled.ts";

const cutIn = (name: string, title: string) => {
  const build = built(name);
  const step = build.steps.find((each) => each.title === title);
  return cutsThrough(build).get(step?.number ?? 0);
};
const sizes = (name: string, title: string) => cutIn(name, title)?.sizes.map(({ says, size }) => [says, size]);

describe("what a section through a joint tells", () => {
  // A hinge 1/8 in closed in a gap of 1/16 in: (1/8 - 1/16) / 2 for each leaf. The door hangs 3/8 in back, so of a leaf of 7/8 in 1/2 in is left on it.
  test("a butt hinge whose door is set back", () => {
    expect(sizes("old-plans/bookcase", "Hang the left door")).toEqual([
      ["the gap", inches(1, 16)],
      ["how deep each seat is", inches(1, 32)],
      ["how much of the leaf lies on A", inches(7, 8)],
      ["how much of the leaf lies on D", inches(1, 2)],
      ["how far the front of D stands back from that of A", inches(3, 8)],
    ]);
  });

  test("the door on the other side is its mirror image, and is not shown again", () => {
    expect(cutIn("old-plans/bookcase", "Hang the right door")).toBeUndefined();
  });

  // As thick as the gap: no seats.
  test("a hinge that folds into its gap", () => {
    expect(sizes("key-cabinet", "Hang the door")).toEqual([
      ["the gap", inches(1, 8)],
      ["how much of each leaf lies on wood", inches(1, 2)],
    ]);
  });

  // Beads of 1/4 by 3/4 in over rabbets of 3/8 by 1/8 in, in which the pane has 1/16 in of play: half of the bead lies on 3/8 in of wood, its screws in the middle of that.
  test("a pane in its rabbet below its bead, screwed at an end and nailed in a door", () => {
    const told = (...[bead, nail, hold, pane]: string[]) => [
      [`from the edge of ${bead} on the wood to the middle of the ${nail}`, inches(3, 16)],
      // From the same stock as the frame, 3/4 in thick: the cut list has them 1/4 in wide.
      [`how thick ${bead} is: with this face it lies down, on ${hold} and ${pane}`, inches(3, 4)],
      [`how wide ${bead} is`, inches(1, 4)],
      [`how deep the rabbet in ${hold} is`, inches(1, 8)],
      [`the play of ${pane}`, inches(1, 16)],
      ["how wide the rabbet is", inches(3, 8)],
    ];
    expect(sizes("old-plans/china-closet", "Put in the long pane (AA), at\u00a0the\u00a0left")).toEqual(
      told("L", "wood screw", "K", "AA"),
    );
    expect(sizes("old-plans/china-closet", "Put in the pane (AB), at\u00a0the\u00a0left")).toEqual(
      told("M", "brad", "E", "AB"),
    );
  });

  test("its mirror image is not shown again", () => {
    const title = "Put in the long pane (AA), at\u00a0the\u00a0right";
    expect(built("old-plans/china-closet").steps.map((each) => each.title)).toContain(title);
    expect(cutIn("old-plans/china-closet", title)).toBeUndefined();
  });

  // Lid 1/2 in above the case; leaves 3/4 in, of which (1/2 - 1/4) / 2 in beside the knuckle lies over the gap.
  test("a hinge on the face", () => {
    expect(sizes("rope-chest", "Hang the lid")).toEqual([
      ["the gap", inches(1, 2)],
      ["how much of each leaf lies on wood", inches(5, 8)],
    ]);
  });

  // A bolt of 120 mm, its washer 2 mm, a leg of 70 mm: 48 mm are left. The barrel, 12 mm across, ends 2 mm before its point; the bore goes 12 mm further.
  test("a bolt and its cross dowel", () => {
    expect(sizes("workbench-cart", "Add the left end")).toEqual([
      ["from the end of D to the middle of the cross dowel", millimetres(48 - 2 - 6)],
      ["how deep the cross dowel is bored", millimetres(31)],
      ["how deep the bolt is bored into the end of D", millimetres(48 + 12)],
    ]);
  });

  // A disc of 19 mm, 3 mm thick, its middle 6 mm behind the inner face, so that it is open there; the two discs 16 mm apart, square across the grain of the top.
  test("a figure-eight fastener: its recess where that is bored, and both screws where it is screwed on", () => {
    expect(sizes("workbench-cart", "Drill the upper end rails (F)")).toEqual([
      ["from the right of F to the middle of the recess", millimetres(6)],
      ["how wide the recess is", millimetres(19)],
      ["how deep the recess is", millimetres(3)],
    ]);
    expect(sizes("workbench-cart", "Add the plywood top (I)")).toEqual([
      ["from the screw in F to the one in I, square to the face of F that the recess is open to", millimetres(16)],
    ]);
  });

  // The settings of the hinge in the plan, which names them as its maker does.
  test("a cup hinge", () => {
    expect(sizes("spice-cabinet", "Hang the left door")).toEqual([
      ["how far G covers F", millimetres(12)],
      ["from the edge of G to the cup", millimetres(4)],
      ["how deep the cup is bored", millimetres(25, 2)],
    ]);
  });

  test.each(["key-cabinet", "rope-chest", "workbench-cart", "spice-cabinet"])(
    "%s: every span is as long as its size",
    (name) => {
      for (const { sizes: all } of cutsThrough(built(name)).values())
        for (const { size, spans } of all)
          for (const { from, to, off } of spans) {
            const along = ([0, 1, 2] as const).filter((i) => off[i] === 0 && toNumber(subtract(to[i], from[i])) !== 0);
            expect(along.map((i) => Math.abs(toNumber(subtract(to[i], from[i]))))).toEqual([toNumber(size)]);
          }
    },
  );
});
