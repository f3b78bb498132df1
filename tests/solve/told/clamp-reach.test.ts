/** Where the jaws of clamps reach. Jaws of bar clamps reach 2 to 4 3/4 in from the bar. Common practice, no source. */
import { expect, test } from "vitest";
import { reachedOf } from "../../../src/solve/build/steps/clamp-reach.ts";
import type { Joint, Part } from "../../../src/solve/design.ts";
import { inches, toInches } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

/** A board 30 in square and 2 in thick, nothing else: across its thickness bars run beside it only. */
const board = {
  body: {
    low: [inches(0), inches(0), inches(0)],
    high: [inches(30), inches(2), inches(30)],
  },
} as unknown as Part;

const along = (z: number, from: number, to: number) => ({
  ...{ axis: 1 as const, joint: {} as Joint, part: "board", long: 0 },
  points: [from, (from + to) / 2, to].map((x) => [inches(x), inches(z)]),
});
const placesOf = (z: number, from: number, to: number) => {
  const { spots, beyond } = reachedOf(
    [board],
    along(z, from, to),
    () => false,
    () => [board],
  );
  return { beyond, at: spots.map(({ at }) => at.map(toInches)), cauls: spots.map(({ caul }) => caul) };
};

test("near an edge every place is reached", () => {
  expect(placesOf(2, 2, 28)).toEqual({
    ...{ beyond: "none", at: [2, 15, 28].map((x) => [x, 2]), cauls: [false, false, false] },
  });
});

test("far from all edges but at the ends a caul lies under the clamps there", () => {
  expect(placesOf(15, 2, 28)).toEqual({ beyond: "middle", at: [2, 28].map((x) => [x, 15]), cauls: [true, true] });
});

test("where no place is reached, cauls reach from edge to edge, and are clamped at their ends", () => {
  expect(placesOf(15, 8, 22)).toEqual({ beyond: "all", at: [2, 28].map((x) => [x, 15]), cauls: [true, true] });
});

// The back is on, and the rail lies 8 in below the top, far from both sides.
test("a rail in the middle of a closed case is pressed by cauls", () => {
  const text = textOfStep(stepWith(built("index-cabinet"), /^Add the face frame/u));
  expect(text).toContain("two on the middle rail (P)");
  expect(text).toContain("three on the top rail (P)");
  expect(text).toContain("No jaws reach the middle of the joints of the middle rail (P): lay stiff cauls along them");
});
