/** A small piece that compiles without a finding: the stock of the examples in the catalogue. */
const STEP = `plan: 1
title: Step for the tool shelves
units: inch
outside: { width: 24, depth: 3 1/2, height: 12 }
sizes:
  long: 24
stock:
  lumber: { sold as: 2x4, wood: spruce }
piece:
  tread: { made of: lumber, as: lying flat, left: 0, right: long, front: 0, top: 12 }
  left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }
  right-leg: { like: left-leg, right: long }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws }
`;

/** A text of an example, and what stands there instead. */
export type Change = readonly [string, string];

/** A plan with pieces of its text replaced. Throws when a text is not in it: the catalogue would be wrong. */
export const withChanges = (plan: string, changes: readonly Change[]): string =>
  changes.reduce((source, [from, to]) => {
    if (!source.includes(from)) throw new Error(`the example has no text ${JSON.stringify(from)}`);
    return source.replace(from, () => to);
  }, plan);

/** The step with pieces of its text replaced. */
export function stepExample(...changes: readonly Change[]): string {
  return withChanges(STEP, changes);
}

const SHELF =
  "  shelf: { made of: panel, as: lying flat, grain: across, between: [left-leg, right-leg], front: 0, back: 3 1/2, bottom: 4 }";

/** The step with a shelf of plywood between its legs, with pieces of its text replaced. */
export function shelfExample(...changes: readonly Change[]): string {
  return stepExample(
    ["stock:", "stock:\n  panel: { sold as: 3/4 birch plywood, measures: 23/32 }"],
    ["joints:", `${SHELF}\njoints:\n  - { join: [left-leg, right-leg], to: shelf, with: screws }`],
    ...changes,
  );
}
