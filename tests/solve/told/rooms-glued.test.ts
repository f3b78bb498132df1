import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

const linesOf = (name: string, said: RegExp): readonly string[] =>
  built(name).steps.flatMap(({ text }) => text.map(plain).filter((line) => said.test(line)));

// Glue in rooms that wait for the other end would be hard when that comes: common practice, no source.
test("only those rooms of a part get glue that are filled in the step", () => {
  expect(linesOf("old-plans/china-closet", /^Brush glue into the mortises of the left end front post/u)).toEqual([
    "Brush glue into the mortises of the left end front post (A) that are filled now, and into no others; thinly on the tenons too.",
    "Brush glue into the mortises of the left end front post (A) that are filled now, and into no others; thinly on the tenons too.",
  ]);
});

// The shelves lie between the sides: the first side, what goes into it, and the other side over all of them.
test("what is closed at both ends by one set of clamps is told in the order in which it comes", () => {
  expect(linesOf("old-plans/wall-shelf", /^Brush glue|^Set the upper|^Bring/u)).toEqual([
    "Brush glue into the dados and the rabbets in the left side (C) and the right side (D).",
    "Bring the dado and the rabbet in the left side (C) over the lower shelf (A) and the lower back (E).",
    "Set the upper shelf (B) into the dado in the left side (C).",
    "Set the upper back (F) into the rabbet in the left side (C).",
    "Bring the dados and the rabbets in the right side (D) over the lower shelf (A), the upper shelf (B), the lower back (E) and the upper back (F) and clamp.",
  ]);
});
