import { expect, test } from "vitest";
import { orderOfWork } from "../../../src/solve/build/order/index.ts";
import type { Arrangement } from "../../../src/solve/design.ts";
import { arrangement, fastener, joint, part, piece, type Triple } from "./pieces.ts";
import { faults } from "./replay.ts";

/** A post with an arm on its left and one on its right, each held by one screw, as high as given. */
const post = part("post", [
  [0, 0, 0],
  [40, 40, 100],
]);
const left = part("left", [
  [-20, 0, 0],
  [0, 40, 100],
]);
const right = part("right", [
  [40, 0, 0],
  [60, 40, 100],
]);
const screw = (arm: string, head: Triple): Arrangement =>
  arrangement(
    fastener({
      id: `${arm}.${head[2]}`,
      at: head,
      direction: [arm === "left" ? 1 : -1, 0, 0],
      through: arm,
      into: "post",
      length: 45,
    }),
  );
const arm = (id: string, heights: readonly number[]) =>
  joint(id, "post", {
    method: "screws",
    glue: false,
    arrangements: heights.map((z) => screw(id, [id === "left" ? -20 : 60, 20, z])),
  });

test("the arm that goes on last has the first choice; what would meet its screw is struck out", () => {
  const design = piece([post, left, right], [arm("left", [50, 80]), arm("right", [50, 20])]);
  const { value } = orderOfWork(design);
  expect(value && faults(design, value)).toEqual([]);
  expect(value?.fasteners.map(({ id }) => id)).toEqual(["left.80", "right.50"]);
  expect(value?.holes.map((hole) => hole.for)).toEqual(["left.80", "right.50"]);
});

test("screws whose holes pass each other stay where they are wanted", () => {
  const design = piece([post, left, right], [arm("left", [50, 80]), arm("right", [54, 20])]);
  expect(orderOfWork(design).value?.fasteners.map(({ id }) => id)).toEqual(["left.50", "right.54"]);
});

test("no place left is a finding", () => {
  const design = piece([post, left, right], [arm("left", [50]), arm("right", [50])]);
  expect(orderOfWork(design).findings.map(({ rule, message }) => [rule, message])).toEqual([
    [
      "no-possible-order",
      "the fasteners between `left` and `post` have no place where their holes keep clear of others",
    ],
  ]);
});

test("a hole that the maker drew comes first among the holes, and keeps screws away", () => {
  const drawn = { ...screw("left", [-20, 20, 50]).holes[0], for: null, kind: "cable" } as const;
  const bored = { ...post, holes: [drawn] } as typeof post;
  const { value } = orderOfWork(piece([bored, left], [arm("left", [50, 80])]));
  expect(value?.holes.map((hole) => hole.for)).toEqual([null, "left.80"]);
});

test("where the first place cannot be reached the next is taken", () => {
  // A shelf on the post, just in front of the upper place and far from the lower one.
  const shelf = part("shelf", [
    [-120, 0, 100],
    [40, 40, 110],
  ]);
  const roofed = piece([post, shelf, left], [joint("shelf", "post"), arm("left", [90, 40])]);
  const { value } = orderOfWork(roofed);
  expect(value && faults(roofed, value)).toEqual([]);
  expect(value?.fasteners.map(({ id }) => id)).toEqual(["left.90"]);
  const glued = piece([post, shelf, left], [joint("shelf", "post"), joint("shelf", "left"), arm("left", [90, 40])]);
  expect(orderOfWork(glued).value?.fasteners.length).toBe(1);
});
