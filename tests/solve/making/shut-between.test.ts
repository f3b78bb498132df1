/** What comes between two faces that are fast by then is cut when they are (common practice, no source). */
import { describe, expect, test } from "vitest";
import { blanksOf, built, lineOf, plain, shelfCase, stepWith } from "./plans.ts";

/** A rail between the sides of a case that is glued up as a whole; further settings of the rail, and its ends. */
const withRail = (more = "", ends = "between: [cabinet.left-side, cabinet.right-side]"): string => `plan: 1
title: Case for keys
units: inch
outside: { width: 30, depth: 6, height: 20 }
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32 }
  thin: { sold as: 1/4 birch plywood, measures: 7/32 }
piece:
  cabinet:
    kind: case
    made of: ply
    back: { made of: thin, in: groove 1/4 deep, in from the back: 3/4 }
  rail: { made of: ply, as: on edge, facing: front, in front of: cabinet.back-panel, ${ends}, bottom: 14, high: 3${more} }
joints:
  - { join: rail, to: cabinet.back-panel, with: glue }
`;
/** Whether a plan says that its rail is measured for. */
const cutLater = (text: string): boolean =>
  built(text).later?.some(({ mark }) => mark === lineOf(built(text), "rail").mark) === true;

describe("a rail that fills the room between two sides which its step finds standing", () => {
  const build = built(withRail());
  const mark = (id: string): string => lineOf(build, id).mark;

  test("is measured for when they do, 30 − 2 × 23/32, and cut right before it is used", () => {
    const cut = stepWith(build, "Cut the rail");
    expect(cut.text.map(plain).join(" ")).toContain(
      `Length: expected 28 9/16 in. Measure from one side (${mark("cabinet.left-side")}) to the other, at the bottom and at the top; cut to the smaller. Width: 3 in, from the list. Cut it a little long at first`,
    );
    const use = build.steps.find(({ actions }) => actions.some((a) => a.do === "add" && a.parts.includes("rail")));
    expect(use?.number).toBe(cut.number + 1);
  });
  test("is larger in the layout, and marked so among what is cut later", () => {
    expect(blanksOf(build, "rail")).toEqual(["23/32 × 3 1/8 × 28 11/16 cut later"]);
    const [later] = build.later ?? [];
    expect([later?.mark, later?.steps[0]]).toEqual([mark("rail"), stepWith(build, "Cut the rail").number]);
    expect(later?.after).toBeLessThan(later?.steps[0] ?? 0);
  });
});

test("is cut from the list where the plan says so, or gives it play, or when it keeps the sides apart itself", () => {
  expect(cutLater(withRail(", cut: from the list"))).toBe(false);
  expect(cutLater(withRail("", "left: 23/32 + 1/32, right: 30 - 23/32"))).toBe(false);
  expect(built(shelfCase("")).later ?? []).toEqual([]);
});
