/** The end of a part in a view of its own, where equal spaces would run together. */
import { expect, test } from "vitest";
import { partDrawing } from "../../../src/render/drawing/part/part-drawing.ts";
import type { BuiltPart } from "../../../src/solve/build.ts";
import { at, inch, part } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { clashes, outside, words } from "./look.ts";

const frame = { x: 60, y: 64, width: 510, height: 230 };

/** 12 in long, with tenons half as thick as it is, and half of it gone in the middle: its edges lie at quarters of its thickness. */
const bar = (thick: number): BuiltPart => {
  const quarter = thick / 4;
  const made = part("bar", "P", "Lattice bar", "board", {
    body: [0, 0, 0, 12, thick, thick],
    cuts: [
      [0, 0, 0, 0.75, quarter, thick],
      [0, 3 * quarter, 0, 0.75, thick, thick],
      [6, 0, 0, 6.5, 2 * quarter, thick],
    ],
  });
  const tenon = {
    kind: "tenon",
    for: null,
    origin: at(0.75, quarter, 0),
    along: [0, 0, 1],
    across: [0, 1, 0],
  } as const;
  return {
    ...made,
    features: [{ ...tenon, size: [inch(thick), inch(2 * quarter), inch(0.75)], into: [1, 0, 0] }],
  };
};
const drawn = (thick: number) => {
  const made = partDrawing({ ...bench(), parts: [bar(thick)], holes: [] }, bar(thick), { frame, pen });
  if (made === null) throw new Error("its numbers do not go in");
  return made;
};

// At 1:4 an eighth is 2 1/4 points on paper, at 1:1 nine.
test("eighths that would be one blot are told one by one at a scale of their own", () => {
  const made = drawn(0.5);
  const told = words(made.items);
  expect(made.scale).toBe("1:4");
  expect(told.join(" ")).not.toContain("×");
  expect(told.filter((word) => ["1⁄8", "1⁄4", "3⁄8"].includes(word.replace(/^\s/, "")))).toHaveLength(3);
  expect(told).toContain("Left end, scale 1:1");
  expect(clashes(made.items)).toEqual([]);
  expect(outside(made.items, frame)).toEqual([]);
});

test("where its spaces are clear at the scale of the part, they are told together", () => {
  const told = words(drawn(2).items);
  expect(told.join(" ")).toContain("4\u202f×\u202f1⁄2");
  expect(told.some((word) => word.includes("end, scale"))).toBe(false);
});
