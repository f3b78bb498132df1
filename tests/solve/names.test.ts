import { expect, test } from "vitest";
import { toldApart } from "../../src/solve/build/cut-list/name.ts";
import { bodyWords } from "../../src/solve/build/steps/words/bodies.ts";
import { inches } from "../../src/units/length.ts";

const line = (long: number, ...ids: readonly string[]) => ({
  parts: ids.map((id) => ({ id, called: null })),
  length: inches(long),
});

test("lines of the same name are told apart by what their parts belong to", () => {
  expect(toldApart([line(30, "cabinet.left-side"), line(14, "frame.drawer-bay-drawer.left-side")])).toEqual([
    "Cabinet left side",
    "Drawer left side",
  ]);
});
test("else by their lengths, with what they are of where their name alone says nothing", () => {
  const boards = [
    line(30, "plinth.front-board", "plinth.back-board"),
    line(14, "plinth.left-board", "plinth.right-board"),
  ];
  expect(toldApart(boards)).toEqual(["Long plinth board", "Short plinth board"]);
});

test("parts of several names that are alike are called by what each is, and by what they are of", () => {
  expect(toldApart([line(7, "plinth.left-board", "plinth.right-board", "plinth.bearer.1")])).toEqual([
    "Plinth end board and bearer",
  ]);
  expect(toldApart([line(30, "plinth.front-board", "plinth.back-board")])).toEqual(["Plinth board"]);
});

test.each([
  ["frame.drawer-bay-drawer", "drawer"],
  ["case.upper-drawer-bay-drawer", "upper drawer"],
  ["case.drawer-2-drawer", "drawer 2"],
  ["case.middle-bay-drawer", "middle bay drawer"],
])("the body of %s is called %s", (group, words) => {
  expect(bodyWords([`${group}.left-side`, `${group}.box-front`])).toBe(words);
});
test("the leaves of a pair in the door bay are the left and the right door", () => {
  expect(bodyWords(["frame.door-bay-door.left-slab", "frame.door-bay-door.left-strip"])).toBe("left door");
});
