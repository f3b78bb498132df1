import { expect, test } from "vitest";
import { toMillimetres } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";

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
