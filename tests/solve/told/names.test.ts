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

test("an opening between two parts of one mark tells which of them it is measured from", () => {
  expect(textOfStep(stepWith(built("old-plans/medicine-cabinet"), /^Cut the parts of the door/u))).toContain(
    "Measure from the lower front long rail (G) to the upper front long rail (G)",
  );
});

test("several slabs that are cut later are told as several", () => {
  expect(textOfStep(stepWith(built("old-plans/china-closet"), /^Flatten two bottom\/top boards/u))).toContain(
    "Straighten one edge of each. They are cut to size in step",
  );
});

test("a leg at a corner of one frame is no leg of a front frame, and like assemblies have like titles", () => {
  const { steps } = built("dining-bench");
  const text = steps.map(textOfStep).join("\n");
  expect(text).toContain("are those of the front left leg as it stands in the piece");
  expect(text).not.toContain("front frame");
  const titles = steps.map(({ title }) => plain(title)).filter((title) => /two legs \(B\)|frame|assembly/u.test(title));
  expect(titles).toEqual([
    "Glue up two legs (B) and the short apron (E), at the left",
    "Glue up two legs (B) and the short apron (E), at the right",
    "Add the assembly from step 14",
    "Add the assembly from step 16",
    "Join the slab (A) and the frame",
  ]);
});
