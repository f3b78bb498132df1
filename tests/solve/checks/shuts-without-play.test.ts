/** Lids whose rims go past the case. Places by hand from the plan in the text. */
import { expect, test } from "vitest";
import { solveCopy, textOf } from "../../examples/compiled.ts";

const CHEST = textOf("old-plans/cedar-chest");
const told = (text: string): readonly string[] =>
  solveCopy(text, {})
    .findings.filter(({ rule }) => rule === "shuts-without-play")
    .map(({ message }) => message);

// The strips round the lid leave 36 - 2 in between them, and the sides are 34 in long: their ends lie 1/8 in beside the strips, unless they are rounded so far.
test("a rim that goes past the ends of the sides wants room, or edges that are rounded", () => {
  const square = CHEST.replace(/,\s*round-over: \[[^\]]*\]/u, "");
  expect(square).not.toBe(CHEST);
  expect(told(CHEST)).toEqual([]);
  expect(told(square)[0]).toMatch(/^left-strip rubs on front-side/u);
});
