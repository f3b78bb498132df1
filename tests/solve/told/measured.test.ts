/** Where what is cut to fit is measured. Common practice, no source. */
import { expect, test } from "vitest";
import { isGluedCase } from "../../../src/solve/build/steps/words/cut-alike.ts";
import { built } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

const closet = (title: RegExp): string => textOfStep(stepWith(built("old-plans/china-closet"), title));

// Front posts and back posts stand apart by the same 38 in on paper only.
test("what is between two pairs of posts is measured between both", () => {
  expect(closet(/^Cut the shelf/u)).toContain(
    "Measure from the left end front post (A) to the right end front post (C) and from the left end back post (B) to the right end back post (D); cut to the smaller.",
  );
  expect(plain(stepWith(built("old-plans/library-table"), /^Cut two drawer supports/u).text[0] ?? "")).toContain(
    "Measure from the left end piece (F) to the right end piece (G), at the front and at the back; cut to the smaller.",
  );
});

// Sides in dados of bottom and top, proved square: three rails between them are of one length.
test("alike parts of a glued case are measured once and cut alike", () => {
  const text = textOfStep(stepWith(built("key-cabinet"), /^Cut three key rails/u));
  expect(text).toContain("where the lowest and where the highest of them goes; cut all three to the smaller.");
  expect(text).toContain("Cut the others like it.");
  expect(text).not.toContain("Measure for each of them");
});

// The ends of the table are screwed to its shelves, each for itself: nothing keeps them as far apart in front as behind.
test("parts between two that nothing glued keeps apart are measured each for itself", () => {
  const table = built("old-plans/library-table");
  expect(isGluedCase(table.design, ["left-end", "right-end"])).toBe(false);
  expect(isGluedCase(built("key-cabinet").design, ["cabinet.left-side", "cabinet.right-side"])).toBe(true);
  expect(textOfStep(stepWith(table, /^Cut two drawer supports/u))).toContain("Measure for each of them");
});
