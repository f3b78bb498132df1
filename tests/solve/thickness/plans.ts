/** Cases of plywood for the seed packets of a tool library, whose sheets do not all measure the same. */

/** 30 × 12 × 20 outside. The shelf stands in dadoes 1/4 deep; floor and lid are screwed between the sides. */
export const seedCase = (stock = ", between: 11/16 and 3/4", more = ""): string => `plan: 1
title: Case for seed packets
units: inch
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32${stock} }
piece:
  left-side: { made of: ply, as: upright, facing: left, left: 0, front: 0, back: 12, bottom: 0, top: 20 }
  right-side: { like: left-side, right: 30 }
  floor-panel: { made of: ply, as: lying flat, grain: across, between: [left-side, right-side], front: 0, back: 12, bottom: 0 }
  lid-panel: { like: floor-panel, top: 20 }
  shelf: { made of: ply, as: lying flat, grain: across, between: [left-side, right-side], front: 1, back: 11, bottom: 10 }
joints:
  - { join: [left-side, right-side], to: [floor-panel, lid-panel], with: screws }
  - { join: shelf, to: [left-side, right-side], with: dado, deep: 1/4 }
${more}`;
