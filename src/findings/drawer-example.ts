import { type Change, withChanges } from "./example.ts";

/** A case with a drawer on slides that compiles without a finding. */
const CABINET = `plan: 1
title: Cabinet for hand planes
units: inch
outside: { width: 18, depth: 20, height: 9 }
stock:
  panel: { sold as: 3/4 birch plywood, measures: 23/32 }
  walls: { sold as: 1/2 birch plywood, measures: 15/32 }
  floor: { sold as: 1/4 birch plywood, measures: 7/32 }
hardware:
  runs: { kind: side slide, load: 100 lb }
  pull: { kind: knob, screw: 1 1/2 }
piece:
  cabinet: { kind: case, made of: panel, join: screws, back: { made of: floor, in: rabbet } }
  planes:
    kind: drawer
    in: cabinet.inside
    walls: { left: cabinet.left-side, right: cabinet.right-side }
    slides: runs
    made of: walls
    bottom: floor
    front: { made of: panel }
    pull: pull
    carries: 12 lb
`;

/** The cabinet with pieces of its text replaced. */
export function drawerExample(...changes: readonly Change[]): string {
  return withChanges(CABINET, changes);
}
