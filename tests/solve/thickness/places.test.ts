import { expect, test } from "vitest";
import { toMillimetres } from "../../../src/units/index.ts";
import { built, solveText } from "../../examples/compiled.ts";

const movingIn = (name: string) =>
  (built(name).changing ?? []).flatMap(({ moving }) =>
    moving.map(({ mark, size, from, near, far }) => ({ mark, size, from: toMillimetres(from), near, far })),
  );

test("what is bored for rails that are flush with the top of a leg goes with that end where the plywood above makes the leg longer", () => {
  // The leg is drawn 826 long; the upper rail is 90 high, its lowest dowel 15 above its lower edge: 826 − 90 + 15.
  expect(movingIn("workbench-cart").filter(({ mark }) => mark === "A")).toEqual([
    { mark: "A", size: "length", from: 751, near: "bottom", far: "top" },
  ]);
});

test("a part that keeps its size has no such places", () => {
  const marks = movingIn("workbench-cart").map(({ mark }) => mark);
  expect(marks).not.toContain("C");
});

test("what keeps its distance from neither end is told apart: the rail in the middle of a side that another stock makes higher", () => {
  // A post between two plates of plywood, 20 high in all: it is longer where they are thinner, and the tenon's mortise in its middle is from both ends another.
  const shifting = (up: string) =>
    solveText(`plan: 1
title: Frame
units: inch
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32, between: 11/16 and 3/4 }
  wood: { wood: poplar, sold as: 4/4, planed to: 3/4, widths: 2 to 12 }
piece:
  base: { made of: ply, as: lying flat, left: 0, across: 20, front: 0, deep: 6, bottom: 0 }
  top: { like: base, top: 20 }
  post: { made of: wood, as: upright, facing: left, left: 0, front: 0, deep: 6, bottom: base.top, top: top.bottom }
  rail: { made of: wood, as: on edge, facing: front, left: post.right, across: 10, front: 2, bottom: ${up}, up: 3 }
joints:
  - { join: post, to: [base, top], with: screws }
  - { join: rail, to: post, with: mortise and tenon }
`).build?.changing?.map((each) => each.shifting.length > 0);
  expect(shifting("post.bottom + 4")).toEqual([false]);
  expect(shifting("4")).toEqual([true]);
});
