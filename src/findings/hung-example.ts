import { type Change, withChanges } from "./example.ts";

/** A case with a fixed shelf behind a door on cup hinges that compiles without a finding. */
const CABINET = `plan: 1
title: Cabinet for the glues
units: inch
outside: { width: 18, depth: 12, height: 30 }
stock:
  panel: { sold as: 3/4 birch plywood, measures: 23/32 }
hardware:
  hinge: { kind: cup hinge, overlay: 1/2 }
  knob: { kind: knob, screw: 1 }
piece:
  cabinet:
    kind: case
    made of: panel
    front: panel.thickness
    join: dado
    openings:
      across:
        - { name: bay, shelves: { at: [12] }, door: { made of: panel, lies: overlay, overlay: 1/2, hinges: hinge, pull: knob } }
`;

/** The cabinet with pieces of its text replaced. */
export function hungExample(...changes: readonly Change[]): string {
  return withChanges(CABINET, changes);
}
