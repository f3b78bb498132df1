/** What is set into dados stands in them: a board that has them in its underside lies upside down. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "./examples.ts";

test("dividers stand in the dados of the top panel, and the case is then laid on its back", () => {
  const build = built("index-cabinet");
  const begun = stepWith(build, /^Build the cabinet/u);
  const text = textOfStep(begun);
  expect(text).toContain("Put it together upside down, as drawn.");
  expect(text.indexOf("upside down")).toBeLessThan(text.indexOf("Set two dividers (H) into the dados"));
  expect(textOfStep(stepWith(build, /^Glue in the cabinet left side/u))).toContain(
    "Lay the work down on its back on battens.",
  );
});

test("dados that lie open already stay uppermost", () => {
  const text = textOfStep(stepWith(built("manuals-bookcase"), /the divider \(C\)/u));
  expect(text).not.toContain("upside down");
});
