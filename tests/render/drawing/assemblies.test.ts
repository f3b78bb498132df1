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
