import { type Change, withChanges } from "./example.ts";

/** A solid top on two battens, screwed so that it can move: a small piece that compiles without a finding. */
const TOP = `plan: 1
title: Top for the sorting table
units: inch
outside: { width: 30, depth: 16, height: 2 1/4 }
stock:
  slab: { wood: white oak, sold as: 4/4, planed to: 3/4, widths: 6 to 18 }
  battens: { wood: white oak, sold as: 8/4, planed to: { thick: 1 1/2, wide: 2 } }
piece:
  panel: { made of: slab, as: lying flat, grain: across, left: 0, right: 30, front: 0, back: 16, top: outside.top }
  left-batten: { made of: battens, as: lying flat, grain: deep, left: 2, front: 1, back: 15, under: panel }
  right-batten: { mirror of: left-batten, about: across }
joints:
  - { join: panel, to: [left-batten, right-batten], with: slotted screws }
`;

/** The top with pieces of its text replaced. */
export function topExample(...changes: readonly Change[]): string {
  return withChanges(TOP, changes);
}
