import { type Change, withChanges } from "./example.ts";

/** A case with an inset door on butt hinges that compiles without a finding. */
const CABINET = `plan: 1
title: Cabinet for finishes
units: inch
outside: { width: 18, depth: 10, height: 20 }
stock:
  panel: { sold as: 3/4 birch plywood, measures: 23/32 }
  leaf: { sold as: 3/4 MDF }
  oak: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 4 to 8 }
  strip: { wood: white oak, sold as: 4/4, planed to: 1/4, widths: 4 to 8 }
  floor: { sold as: 1/4 birch plywood, measures: 7/32 }
hardware:
  hinge: { kind: butt hinge, leaf: 1/2 }
  cup: { kind: cup hinge for an inset door }
  knob: { kind: knob }
  catch: { kind: catch, high: 3/4, screw: 1/2 }
piece:
  cabinet: { kind: case, made of: panel, join: screws, back: { made of: floor, in: rabbet } }
  finishes:
    kind: door
    in: cabinet.inside
    walls: { left: cabinet.left-side, right: cabinet.right-side }
    made of: leaf
    hinges: hinge
    pull: knob
fittings:
  - { fit: catch, to: cabinet.top-panel, face: bottom, across: 16, against: finishes.slab }
`;

/** A frame with a panel on cup hinges in place of the slab; `more` belongs to the frame. */
export const framed = (more: string): readonly Change[] => [
  [
    "    made of: leaf\n    hinges: hinge\n",
    `    frame: { made of: oak${more} }\n    panel: floor\n    hinges: { hardware: cup, with: cup hinges }\n`,
  ],
  ["against: finishes.slab", "against: finishes.right-stile"],
];

/** The cabinet with pieces of its text replaced. */
export function doorExample(...changes: readonly Change[]): string {
  return withChanges(CABINET, changes);
}
