/** What fills a room goes in when both sides of it stand. Common practice, no source. */
import { expect, test } from "vitest";
import { fillersOf } from "../../../src/solve/build/order/fillers.ts";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "../told/examples.ts";

const fillersIn = (name: string): readonly string[] => {
  const { design } = built(name);
  return fillersOf(design).map(({ part }) => design.parts[part]?.id ?? "");
};

// The ends of the table are screwed against its shelves, which are fast in the posts: the supports between the ends place nothing.
test("a part between two that are stopped on their far sides is a filler", () => {
  expect(fillersIn("old-plans/library-table")).toEqual(["supports.front-support", "supports.back-support"]);
});

// The ends of the chest space its sides, whose base goes on afterwards; the shelf of the stand lies between rails that no slat stops.
test("what spaces its sides is none", () => {
  expect([...fillersIn("old-plans/cedar-chest"), ...fillersIn("old-plans/plant-stand")]).toEqual([]);
});

test("both supports are measured when both ends stand, and are cut and screwed on alike", () => {
  const table = built("old-plans/library-table");
  const text = textOfStep(stepWith(table, /^Cut two drawer supports \(L\) to fit/u));
  expect(text).toContain(
    "Measure from the left end piece (F) to the right end piece (G), at the front and at the back",
  );
  const numberOf = (title: string): number => table.steps.findIndex((step) => plain(step.title).startsWith(title));
  expect(numberOf("Screw on the right end piece")).toBeLessThan(numberOf("Cut two drawer supports"));
  expect(numberOf("Screw on two drawer supports")).toBeGreaterThan(numberOf("Cut two drawer supports"));
});

// The posts stand 5 1/4 in from the ends, over the outer screws of each pair, and beside the inner ones.
test("each tool for heads with little room is told with the heads that want it", () => {
  const text = textOfStep(stepWith(built("old-plans/library-table"), /^Screw on two drawer supports/u));
  expect(text).toContain("behind the heads 1 1/4 in and 27 3/4 in from the front end");
  expect(text).toMatch(/1 1\/4 in and 27 3\/4 in [^:]*: use a right-angle driver there, for their pilot holes too\./u);
  expect(text).toMatch(/2 1\/4 in and 26 3\/4 in [^:]*: use a bit 12 in long there,/u);
});
