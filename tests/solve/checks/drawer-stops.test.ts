/** A button inside the back of a drawer stops it where, turned up, it reaches something that stands before it (common practice, no source). */
import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";

const cabinet = ({ top = "rails", long = "14", stop = "drawer stop" } = {}): string => `plan: 1
title: Cabinet for hand planes
units: inch
outside: { width: 18, depth: 20, height: 9 }
stock:
  panel: { sold as: 3/4 birch plywood, measures: 23/32 }
  walls: { sold as: 1/2 birch plywood, measures: 15/32 }
  floor: { sold as: 1/4 birch plywood, measures: 7/32 }
hardware:
  pull: { kind: knob, screw: 1 1/2 }
  short-stop: { kind: drawer stop, long: 3/4 }
piece:
  cabinet: { kind: case, made of: panel, join: screws, top panel: ${top}, back: { made of: floor, in: rabbet } }
  planes:
    kind: drawer
    in: cabinet.inside
    walls: { left: cabinet.left-side, right: cabinet.right-side }
    runs on: cabinet.bottom-panel
    long: ${long}
    stop: ${stop}
    made of: walls
    bottom: floor
    front: { made of: panel }
    pull: pull
`;

const told = (text: string) => solveText(text).findings.filter(({ rule }) => rule === "drawer-without-stop");

test("behind a rail it stops the drawer", () => {
  expect(solveText(cabinet()).build).toBeDefined();
  expect(told(cabinet())).toEqual([]);
});

test.each([
  [{ top: "yes" }, "cannot be turned up"],
  [{ long: "18" }, "cannot be turned up"],
  [{ stop: "short-stop" }, "catches behind nothing"],
])("with %o it does not", (change, why) => {
  expect(told(cabinet(change))[0]?.message).toContain(why);
});
