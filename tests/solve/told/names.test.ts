import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const text = (title: RegExp): string => textOfStep(stepWith(built("index-cabinet"), title));

test("parts of one mark are told apart by where they are in the piece, not by running numbers", () => {
  expect(text(/^Drill the rails/u)).toContain("The other, the middle rail, is marked from");
  expect(text(/^Drill the rails/u)).toContain("the top end of the left short face frame stile (W)");
  expect(text(/^Drill the rails/u)).toContain("the top end of the right short face frame stile (W)");
  expect(text(/^Drill the long face frame stiles/u)).toContain("The middle rail (P) lies");
  const all = built("index-cabinet").steps.map(textOfStep).join(" ");
  expect(all).not.toMatch(/\b(?:rail|stile) \d/u);
});

test("one of several drawers is told by its place: the names of openings stand on no page", () => {
  expect(text(/^Drill the packings/u)).toContain("those of the left packing of the left drawer as it stands");
  expect(
    built("index-cabinet")
      .steps.map(({ title }) => plain(title))
      .join(" "),
  ).not.toContain("tools drawer");
});
