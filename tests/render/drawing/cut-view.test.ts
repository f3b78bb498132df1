import { expect, test } from "vitest";
import { viewOf } from "../../../src/render/drawing/cut-through/faces.ts";

const upOf = (axis: 0 | 1 | 2, ceiling: readonly [number, number, number]) => {
  const { name, up } = viewOf({ axis }, ceiling);
  return [name, ...up.map((c) => Math.sign(c) + 0)];
};

test("a section stands as the work does: what points to the ceiling is above", () => {
  expect(upOf(1, [0, 0, 1])).toEqual(["the front", 0, 0, 1]);
  expect(upOf(1, [0, 0, -1])).toEqual(["the front", 0, 0, -1]);
  expect(upOf(2, [-1, 0, 0])).toEqual(["the top", -1, 0, 0]);
});

test("what is level as the work lies is seen from above", () => {
  expect(upOf(0, [-1, 0, 0])).toEqual(["above", 0, 0, 1]);
  expect(upOf(2, [0, 0, 1])).toEqual(["above", 0, 1, 0]);
});
