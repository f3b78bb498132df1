import { type Change, withChanges } from "./example.ts";

/** A chest with a lid that a support holds: a small piece that compiles without a finding. */
const CHEST = `plan: 1
title: Chest for the balls
units: inch
outside: { width: 30, depth: 18, height: 18 }
stock:
  panel: { sold as: 3/4 MDF, measures: 3/4 }
hardware:
  stay: { kind: lid support, holds: every angle, carries: 30 lb }
piece:
  fore: { made of: panel, as: on edge, facing: front, grain: across, left: 0, right: 30, front: 0, bottom: 0, top: 17 1/4 }
  rear: { mirror of: fore, about: deep }
  left-side: { made of: panel, as: on edge, facing: left, grain: deep, left: 0, front: 3/4, back: 17 1/4, bottom: 0, top: 17 1/4, hole: [{ in: left, from front: 4, from top: 3, diameter: 1 }, { in: left, from back: 4, from top: 3, diameter: 1 }] }
  right-side: { made of: panel, as: on edge, facing: right, grain: deep, right: 30, front: 3/4, back: 17 1/4, bottom: 0, top: 17 1/4 }
  floor-panel: { made of: panel, as: lying flat, grain: across, left: 3/4, right: 29 1/4, front: 3/4, back: 17 1/4, bottom: 1 }
  lid: { made of: panel, as: lying flat, grain: across, left: 0, right: 30, front: 0, back: 18, bottom: 17 1/4 }
joints:
  - { join: [fore, rear], to: [left-side, right-side], with: screws }
  - { join: floor-panel, to: [fore, rear], with: screws, from: fore }
  - { join: lid, to: [fore, rear, left-side, right-side], with: loose }
fittings:
  - { fit: stay, to: left-side, against: lid }
`;

/** The chest with pieces of its text replaced. */
export function chestExample(...changes: readonly Change[]): string {
  return withChanges(CHEST, changes);
}
