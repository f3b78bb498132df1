import { expect, test } from "vitest";
import { assembliesOf } from "../../../src/render/drawing/exploded/assemblies.ts";
import type { BuiltMotion } from "../../../src/solve/build.ts";
import { part } from "./fixture/making.ts";

const made = (id: string, mark: string) => part(id, mark, mark, "board", { body: [0, 0, 0, 1, 1, 1] });
const moves = (name: string, ids: readonly string[]): BuiltMotion => ({
  ...{ name, kind: "slide", joints: [], moves: [...ids, `${name}.knob`], range: 1, poses: [], needs: [] },
});
const drawer = (n: number) => ["front", "back", "side", "bottom"].map((what) => `drawer-${n}.${what}`);

test("a case of 14 parts and three drawers of four are two pictures; a door of one board stays with the case", () => {
  const standing = [...Array.from({ length: 13 }, (_, i) => made(`case.${i}`, "A")), made("door", "B")];
  const drawers = [1, 2, 3].flatMap((n) => drawer(n).map((id, i) => made(id, "CDEF"[i] as string)));
  const motions = [...[1, 2, 3].map((n) => moves(`drawer-${n}`, drawer(n))), moves("door", ["door"])];
  const found = assembliesOf({ parts: [...standing, ...drawers], motions });
  expect(found.map(({ parts, count }) => [parts.size, count])).toEqual([
    [14, 1],
    [4, 3],
  ]);
  expect(found[0]?.parts.has("door")).toBe(true);
  // Of 25 parts all are in one picture.
  const few = assembliesOf({ parts: [...standing.slice(1), ...drawers], motions });
  expect(few.map(({ parts, count }) => [parts.size, count])).toEqual([[25, 1]]);
});

/** A door of two stiles, one 3 wide and one 2, and a rail between them, its hinged stile at the left or at the right. */
const door = (name: string, x: number, hinged: "left" | "right", marks: readonly [string, string, string]) => {
  const [first, second] = hinged === "left" ? [3, 2] : [2, 3];
  const stile = (id: string, mark: string, from: number, to: number) =>
    part(`${name}.${id}`, mark, mark, "board", { body: [from, 0, 0, to, 1, 40] });
  const [own, other] = [stile("one", marks[0], x, x + first), stile("two", marks[1], x + 12 - second, x + 12)];
  const rail = part(`${name}.rail`, marks[2], marks[2], "board", { body: [x + first, 0, 0, x + 12 - second, 1, 4] });
  return { parts: [own, other, rail], motion: moves(name, [own.id, other.id, rail.id]) };
};

test("a door that is another's mirror image but for marks is not drawn: it is told whose place they stand in", () => {
  const standing = Array.from({ length: 20 }, (_, i) => made(`case.${i}`, "A"));
  const found = (...doors: ReturnType<typeof door>[]) =>
    assembliesOf({
      parts: [...standing, ...doors.flatMap(({ parts }) => parts)],
      motions: doors.map(({ motion }) => motion),
    }).map(({ parts, others }) => [parts.size, others]);
  const left = door("left", 0, "left", ["B", "C", "D"]);
  expect(found(left, door("right", 20, "right", ["C", "E", "D"]))).toEqual([
    [20, []],
    [3, [{ mirrored: true, marks: [["E", "B"]] }]],
  ]);
  expect(found(left, door("right", 20, "left", ["F", "C", "D"]))).toEqual([
    [20, []],
    [3, [{ mirrored: false, marks: [["F", "B"]] }]],
  ]);
  // Its stiles are as wide, but it is wider.
  const wider = door("wide", 20, "left", ["F", "C", "D"]);
  const apart = {
    ...wider,
    parts: [...wider.parts.slice(0, 2), part("wide.rail", "D", "D", "board", { body: [23, 0, 0, 30, 1, 5] })],
  };
  expect(found(left, apart).map(([, others]) => others)).toEqual([[], [], []]);
});
