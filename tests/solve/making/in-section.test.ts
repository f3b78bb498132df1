/** What is bought in the section that it has in the piece: there is nothing to plane. */
import { expect, test } from "vitest";
import { solvedOnce, textOf } from "../../examples/compiled.ts";
import { blanksOf, plain } from "./plans.ts";

test("a strip that is bought in its section is only cut to length, also where other wood is left larger", () => {
  const { build } = solvedOnce(textOf("old-plans/cedar-chest"))();
  if (!build) throw new Error("did not compile");
  expect(blanksOf(build, "front-strip")).toEqual(["1 × 1 × 36 1/2 cut later"]);
  // The rails beside it come from rough boards, 1/2 in over both ways.
  expect(blanksOf(build, "lock-rail")).toEqual(["1 1/4 × 2 1/2 × 36 1/2 rough"]);
  const milled = build.steps.filter(({ kind, shows }) => kind === "mill" && shows.fresh.includes("front-strip"));
  expect(milled).toEqual([]);
  expect(build.steps.map(({ title }) => plain(title))).toContain("Cut the long strip (K) to fit");
});
