import { describe, expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { soundDesign } from "../../solve/design/plan.ts";

/** A drawer on a shelf between two sides, with a front of its own. */
const drawer = (join: string): string => `plan: 1
title: Drawer for planes
units: inch
outside: { width: 14, depth: 20, height: 9 }
stock:
  panel: { wood: maple, sold as: 5/4, planed to: 1, widths: 8 to 30 }
  walls: { wood: maple, sold as: 4/4, planed to: 5/8, widths: 3 to 10 }
  floor: { sold as: 1/4 hardboard, measures: 1/4 }
piece:
  left-panel: { made of: panel, as: on edge, grain: deep, facing: left, left: 0, front: 0, back: outside.back, bottom: 0, top: outside.top }
  right-panel: { mirror of: left-panel, about: across }
  shelf: { made of: panel, boards: 3, as: lying flat, grain: across, between: [left-panel, right-panel], front: 0, back: outside.back, top: 2 }
  bay: { kind: space, left: left-panel.right, right: right-panel.left, bottom: 2, top: outside.top, front: 0, back: outside.back }
  box:
    kind: drawer
    in: bay
    made of: walls
    bottom: floor
    runs on: shelf
    front: { made of: walls, is the box front: yes }
    join: ${join}
joints:
  - { join: shelf, to: [left-panel, right-panel], with: dowels }
`;

describe("the front of a drawer that runs on a shelf", () => {
  const below = (join: string): number => {
    const { parts } = soundDesign(drawer(join));
    const [front, side] = ["box.box-front", "box.left-side"].map((id) => {
      const body = parts.find((part) => part.id === id)?.body;
      return body ? toInches(body.low[2]) : Number.NaN;
    }) as [number, number];
    return front - side;
  };
  test("stays clear of the shelf below, 1/16 in, as beside it", () => expect(below("rabbet")).toBe(1 / 16));
  test("but is level with the sides where tails want it", () => expect(below("dovetail")).toBe(0));
});
