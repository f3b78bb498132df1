/** A board 10 high, 8 deep and 1 thick, let 3/8 in into a top that lies over all of it, with the shapes of some words. */
export const letInBoard = (shapes: string, joint = ""): string => `plan: 1
title: Board
units: inch
stock:
  wood: { wood: cherry, sold as: 5/4, planed to: 1, widths: 4 to 12 }
piece:
  top: { made of: wood, as: lying flat, grain: across, left: -2, right: 4, front: -1, back: 9, bottom: 10 }
  board: { made of: wood, as: upright, facing: left, left: 0, front: 0, back: 8, bottom: 0, under: top, ${shapes} }
joints:
  - { join: board, to: top, with: dado, deep: 3/8${joint} }
`;
