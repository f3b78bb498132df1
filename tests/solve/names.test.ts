import { expect, test } from "vitest";
import { toldApart } from "../../src/solve/build/cut-list/name.ts";
import { bodyWords } from "../../src/solve/build/steps/words/bodies.ts";
import type { Part } from "../../src/solve/design.ts";
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

test("a board alone could be any: that above and that below say so", () => {
  expect(toldApart([line(39, "bottom-board", "top-board")])).toEqual(["Bottom/top board"]);
});

/** A cube at a place from left to right. */
const at = (long: number, ...parts: readonly (readonly [id: string, x: number])[]) => ({
  parts: parts.map(([id, x]) => ({
    ...{ id, called: null },
    solid: { low: [x, 0, 0], high: [x + 1, 1, 1] } as unknown as Part["solid"],
  })),
  length: inches(long),
});

const callEach = (called: string, lines: readonly ReturnType<typeof at>[]) =>
  lines.map((of) => ({ ...of, parts: of.parts.map((part) => ({ ...part, called })) }));

test("else by where they are: mirror images, and the stiles of a pair of doors", () => {
  expect(toldApart(callEach("short cleat", [at(12, ["short-cleat", 0]), at(12, ["other-short-cleat", 30])]))).toEqual([
    "Left short cleat",
    "Right short cleat",
  ]);
  const stiles = [
    at(43, ["doors.left-left-stile", 0], ["doors.right-right-stile", 30]),
    at(43, ["doors.left-right-stile", 14]),
    at(43, ["doors.right-left-stile", 16]),
  ];
  expect(toldApart(callEach("door stile", stiles))).toEqual([
    "Outer door stile",
    "Left inner door stile",
    "Right inner door stile",
  ]);
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
