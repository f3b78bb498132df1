/** Drawers side by side have openings that are not quite alike: each is told for its own. */
import { describe, expect, test } from "vitest";
import { someAbove, theWhich, whichOf } from "../../../src/solve/build/steps/words/which.ts";
import type { Box } from "../../../src/solve/design.ts";
import { rational } from "../../../src/units/rational.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { plain, stepWith } from "./plans.ts";

const box = (x: readonly [number, number], z: readonly [number, number]): Box => ({
  low: [rational(x[0]), rational(0), rational(z[0])],
  high: [rational(x[1]), rational(1), rational(z[1])],
});

describe("of several that are called alike", () => {
  test("those side by side go by left and right, in whatever order", () => {
    expect(whichOf([box([8, 9], [0, 1]), box([0, 1], [0, 1]), box([4, 5], [0, 1])])).toEqual([
      "right",
      "left",
      "middle",
    ]);
    expect(whichOf([box([0, 1], [0, 1]), box([1, 2], [5, 6])])).toEqual(["left", "right"]);
  });

  test("those one above another from below, more than three by number, and a grid has no words", () => {
    expect(whichOf([box([0, 9], [4, 6]), box([0, 9], [0, 3])])).toEqual(["upper", "lower"]);
    const four = [0, 2, 4, 6].map((z) => box([0, 9], [z, z + 1]));
    expect(whichOf(four)?.[1]).toBe("second from below");
    expect(whichOf([box([0, 1], [0, 1]), box([2, 3], [0, 1]), box([0, 1], [2, 3])])).toBeNull();
    expect(whichOf(four.slice(0, 1))).toBeNull();
  });

  test("in words", () => {
    expect(theWhich(["left", "right"], "drawer")).toBe("the left and the right drawer");
    expect(theWhich(["second from below"], "drawer")).toBe("the second drawer from below");
    expect(someAbove([box([0, 1], [0, 1]), box([2, 3], [4, 5])])).toBe(false);
    expect(someAbove([box([0, 2], [0, 1]), box([1, 3], [4, 5])])).toBe(true);
  });
});

/**
 * The index cabinet, in 64ths of an inch: 615 between the packings of the left and the right drawer, 614 of the middle one; boxes of 548, fronts of 680.
 * A slide wants 12.9 to 13.2 mm on a side: 25.8 to 26.4 mm, 1.016 to 1.039 in, for two.
 */
describe("in the index cabinet", () => {
  const { build } = solveText(textOf("index-cabinet"));
  const steps = build?.steps ?? [];
  const said = (title: string): string => (build ? plain(stepWith(build, title).text.join(" ")) : "");

  test("what is measured between packings says for which drawer", () => {
    const all = steps.flatMap(({ text }) => text.map(plain)).filter((each) => each.startsWith("Where the "));
    expect(all.map((each) => each.replace(/ runs, .*below: (.+) everywhere\..*/u, ": $1"))).toEqual([
      "Where the left drawer: 9 39/64 in",
      "Where the middle drawer: 9 19/32 in",
      "Where the right drawer: 9 39/64 in",
    ]);
    const cut = said("Cut the parts of three drawers");
    expect(cut).toMatch(
      /For the left and the right drawer: measure from .* 9 39\/64 in is expected\. The drawer is 1 3\/64 in less/u,
    );
    expect(cut).toMatch(
      /For the middle drawer: measure from .* 9 19\/32 in is expected\. The drawer is 1 1\/32 in less/u,
    );
  });

  test("the boxes are measured against the same figures", () => {
    expect(said("Build the three drawers")).toContain(
      "for the left and the right drawer 1 3/64 in less, for both slides, than you measured between their walls (G), 8 9/16 in where that is 9 39/64 in; for the middle drawer 1 1/32 in less, 8 9/16 in where that is 9 19/32 in, as drawn.",
    );
  });

  // 615 − 548 = 67/64 = 1.047; 614 − 548 = 66/64 = 1.031; 1.047 − 1.039 = 0.008.
  test("card goes only where there is too much room", () => {
    expect(said("Put in the three drawers")).toContain(
      "On both sides together there is 1 3/64 in (1.047 in) of room for the left and the right drawer and 1 1/32 in (1.031 in) for the middle drawer; a pair of slides wants 1.016 to 1.039 in: put card 0.008 in thick in all behind the case halves of the left and the right drawer; for the rest, where it is loose",
    );
  });

  // (680 − 548) / 2 = 66/64.
  test("fronts are placed from the outside of their boxes, and none is the lowest", () => {
    const text = said("Screw on three false fronts");
    expect(text).toContain("(1 1/32 in past the drawer left side (I) and the drawer right side (J) at each)");
    expect(text).toContain("Do all that follows with one drawer and its front, then with the next: place,");
  });
});
