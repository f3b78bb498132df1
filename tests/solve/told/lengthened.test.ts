import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { textOfStep } from "./examples.ts";

test("shapes of a part that is let in are told from the end that there is", () => {
  const { build } = solveText(`plan: 1
title: Board
units: inch
stock:
  wood: { wood: cherry, sold as: 5/4, planed to: 1, widths: 4 to 12 }
piece:
  top: { made of: wood, as: lying flat, grain: across, left: -2, right: 4, front: -1, back: 9, bottom: 10 }
  board:
    made of: wood
    as: upright
    facing: left
    left: 0
    front: 0
    back: 8
    bottom: 0
    under: top
    notch: { at: top front, wide: 4, deep: 3 }
    bevel: { along: top back, wide: 2, deep: 1/2 }
joints:
  - { join: board, to: top, with: dado, deep: 3/8 }
`);
  const text = (build?.steps ?? []).map(textOfStep).join(" ");
  // 4 in below the shoulder, and 3/8 in that goes into the top.
  expect(text).toContain(
    "Cut a notch 1 in long, 3 in wide and 4 3/8 in deep: in the top end, flush with the front edge.",
  );
  expect(text).toContain("draw lines 1/2 in from the top on the back, and 2 in from that face on the top");
});
