/** What pulls a case over when it is opened. Masses and sizes by hand from the plans; common practice, no source. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { stepWith } from "./examples.ts";

const cautions = (name: string): readonly string[] => built(name).steps.flatMap((step) => step.cautions);

// 5 in deep: its door of 16 1/4 × 22 1/4 in weighs about a third of it, and its middle lies 8 in before the case when it is open.
test("a shallow case with a wide door is held before that is opened, where it is hung and where it is put on again", () => {
  const build = built("key-cabinet");
  for (const title of [/^Hang the door/u, /^Put the door on again/u])
    expect(stepWith(build, title).cautions).toContain(
      "With the door open a touch tips the case over to the front, until it hangs on its wall: lay it on its back, clamp it to the bench, or let a second person hold it before it is opened.",
    );
  // Not again in each step after it.
  expect(cautions("key-cabinet").filter((each) => each.includes("tips the case over"))).toHaveLength(2);
});

// Its lid lies on a box that is as deep, and opens to the back.
test("what is deep enough stands", () => {
  expect(cautions("rope-chest").filter((each) => each.includes("tips the case over"))).toEqual([]);
});

// 100 mm deep: one of its doors leaves it standing, both do not; its shelves lie loose on pins when the doors are put on again.
test("doors that are opened together pull together", () => {
  const build = built("spice-cabinet");
  const of = (title: RegExp): string =>
    stepWith(build, title)
      .cautions.filter((each) => each.includes("tips the case over"))
      .join(" ");
  expect(of(/^Hang the left door/u)).toBe("");
  expect(of(/^Hang the right door/u)).toContain(
    "With the left door and the right door open a touch tips the case over to the front",
  );
  expect(of(/^Put the left door and the right door on again/u)).not.toContain("lay it on its back");
});
