/** What is told at the wall, on the way, and of days; common practice, no source. */
import { expect, test } from "vitest";
import { adviceOn } from "../../../src/solve/build/advice/index.ts";
import { printLength } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { plain, textOfStep } from "./examples.ts";

const room = (name: string): string => {
  const build = built(name);
  const print = (length: Parameters<typeof printLength>[0]): string =>
    `${printLength(length, { units: build.design.units }).text} in`;
  return plain(
    adviceOn(build, print)
      .room.map(({ text }) => text)
      .join(" "),
  );
};

test("wall screws go into studs with a pilot hole, and no other page says otherwise", () => {
  const shelf = built("old-plans/wall-shelf");
  const hung = shelf.steps.map(textOfStep).find((text) => text.includes("find the studs"));
  expect(hung).toContain("through each a 1/8 in pilot hole as deep as its screw reaches into the stud; then drive");
  expect(shelf.tools.map(({ tool }) => plain(tool)).join(" ")).toMatch(/Drill bits[^;]*1\/8 in/u);
  expect(room("old-plans/wall-shelf")).not.toContain("anchor");
  // What the maker accepts of the studs of his own wall is told of the checks, not to who finds others.
  const known = shelf.design.accepted?.find(({ rule }) => rule === "only-one-stud")?.because ?? "";
  expect(known.length).toBeGreaterThan(20);
  expect(hung).not.toContain(plain(known).slice(1));
});

test("what makes a piece no smaller is not taken off for the way; one sentence says whether it goes through a doorway", () => {
  expect(room("old-plans/bookcase")).not.toContain("taken off, which is made to come off again");
  const table = room("old-plans/library-table");
  expect(table).toContain("does not go straight through a doorway");
  expect(table).toContain("Its legs go through a doorway first");
});

test("days on which only another coat is put on name the step of that coat", () => {
  const { days } = built("old-plans/bookcase").timeline;
  const coats = days.filter(({ steps, again }) => steps === null && again.length > 0);
  expect(coats.length).toBeGreaterThan(1);
  const finishing = built("old-plans/bookcase")
    .steps.filter(({ kind }) => kind === "finish")
    .map(({ number }) => number);
  for (const { again } of coats) for (const number of again) expect(finishing).toContain(number);
});
