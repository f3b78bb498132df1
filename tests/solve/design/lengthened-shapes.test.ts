import { describe, expect, it } from "vitest";
import { volume } from "../../../src/geometry/index.ts";
import type { Design } from "../../../src/solve/design.ts";
import { UNITS_PER_INCH } from "../../../src/units/index.ts";
import { toNumber } from "../../../src/units/rational.ts";
import { letInBoard } from "./let-in-board.ts";
import { soundDesign } from "./plan.ts";

const board = (shape: string, joint = ""): Design => soundDesign(letInBoard(shape, joint));
const cubicInches = ({ parts }: Design, id: string): number =>
  toNumber(volume(parts.find((part) => part.id === id)?.solid as never)) / UNITS_PER_INCH ** 3;
const WHOLE = 8 * 10.375;

describe("shapes of a part that a joint lengthens, worked out by hand", () => {
  it.each([
    // Down to 4 below the shoulder, and what the joint adds above it.
    ["notch: { at: top front, wide: 4, deep: 3 }", WHOLE - 3 * 4.375],
    ["rabbet: { along: left back, wide: 1/2, deep: 1/4 }", WHOLE - 0.5 * 0.25 * 10.375],
    ["groove: { in: left, near: front, in from: 1, wide: 1/4, deep: 3/8 }", WHOLE - 0.25 * 0.375 * 10.375],
    // One that stops stays as it is said.
    [
      "groove: { in: left, near: front, in from: 1, wide: 1/4, deep: 3/8, from: bottom, to: top - 1 }",
      WHOLE - 0.25 * 0.375 * 9,
    ],
    // Off the corner that there is: a square of 2 less a quarter circle, within what its flats are off.
    ["corner radius: { at: top front, radius: 2 }", WHOLE - 4 * (1 - Math.PI / 4)],
    ["chamfer: { along: top front, by: 1/4 }", WHOLE - (0.25 * 0.25) / 2],
    ["cut-out: { in: left, wide: 2, high: 3, from bottom: 2 }", WHOLE - 6],
  ])("%s", (shape, expected) => {
    expect(Math.abs(cubicInches(board(shape), "board") - expected)).toBeLessThan(
      shape.includes("radius") ? 0.02 : 1e-9,
    );
  });

  it("the room is cut for what goes in, not for what was cut away", () => {
    const room = 3 / 8;
    expect(cubicInches(board("notch: { at: top front, wide: 4, deep: 3 }"), "top")).toBeCloseTo(60 - 5 * room, 9);
  });

  it("a stop within the notch changes nothing, one beyond it takes the rest", () => {
    const notched = "notch: { at: top front, wide: 4, deep: 3 }";
    const stopped = (by: string): readonly number[] => {
      const made = board(notched, `, stopped: ${by} from front`);
      return [cubicInches(made, "top"), cubicInches(made, "board")];
    };
    const [top, side] = [60 - (5 * 3) / 8, WHOLE - 3 * 4.375];
    for (const [is, expected] of [
      [stopped("1/2"), [top, side]],
      [stopped("4"), [top + 3 / 8, side - 3 / 8]],
    ] as const)
      expected.forEach((size, i) => {
        expect(is[i]).toBeCloseTo(size, 9);
      });
  });
});
