import { type Change, withChanges } from "./example.ts";

/** A shelf on pins between two sides, under a top: a small piece that compiles without a finding. */
const SHELF = `plan: 1
title: Box for the returned books
units: inch
outside: { width: 24, depth: 9 1/4, height: 20 }
stock:
  pine: { sold as: 1x10, wood: eastern white pine }
  thin: { wood: white oak, sold as: 4/4, planed to: 3/8, widths: 6 to 10 }
piece:
  left-side: { made of: pine, as: upright, facing: left, left: 0, front: 0, bottom: 0, top: outside.top }
  right-side: { mirror of: left-side, about: across }
  lid: { made of: pine, as: lying flat, between: [left-side, right-side], front: 0, top: outside.top }
  shelf: { made of: pine, as: lying flat, between: [left-side, right-side], front: 0, bottom: 8 }
joints:
  - { join: lid, to: [left-side, right-side], with: screws, from: left-side }
  - { join: shelf, to: [left-side, right-side], with: shelf pins }
`;

/** The box with pieces of its text replaced. */
export function shelfExample(...changes: readonly Change[]): string {
  return withChanges(SHELF, changes);
}
