import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

const linesOf = (name: string, said: RegExp): readonly string[] =>
  built(name).steps.flatMap(({ text }) => text.map(plain).filter((line) => said.test(line)));

// Glue in the upper dado and rabbet would be hard when their parts come: common practice, no source.
test("only those rooms of a part get glue that are filled in the step", () => {
  expect(linesOf("old-plans/wall-shelf", /^Brush glue|^Set the upper/u)).toEqual([
    "Brush glue into the dado and the rabbet in the left side (C) that are filled now, and into no others.",
    "Brush glue into the rabbet in the left side (C) that is filled now, and into no others.",
    "Set the upper back (F) into the rabbet in the left side (C) and clamp.",
    "Brush glue into the dado in the left side (C) that is filled now, and into no others.",
    "Set the upper shelf (B) into the dado in the left side (C) and clamp.",
    "Brush glue into the dados and the rabbets in the right side (D).",
  ]);
});

test("a stile whose lowest mortise is filled later keeps it dry", () => {
  const [first, last] = linesOf("old-plans/bookcase", /^Brush glue into the mortises? of the door stile \(D\)/u);
  expect(first).toContain("the mortises of the door stile (D) that are filled now, and into no others;");
  expect(last).toContain("the mortise of the door stile (D) that is filled now, and into no others;");
});
