import { expect, test } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { textOfStep } from "./examples.ts";

test("slots whose bores for the heads differ are told with the bore of each", () => {
  const { build } = solveText(`plan: 1
title: Platform
units: mm
stock:
  wood: { wood: beech, sold as: 50 mm rough, planed to: 40, widths: 120 to 200 }
  beam: { wood: beech, sold as: 80 mm rough, planed to: 70, widths: 100 to 180 }
piece:
  deck: { made of: wood, as: lying flat, grain: across, boards: 6, left: 0, right: 900, front: 0, back: 850, bottom: 80 }
  left-beam: { made of: beam, as: on edge, grain: deep, left: 100, front: 75, back: 775, bottom: 0, under: deck }
  right-beam: { like: left-beam, left: 730 }
joints:
  - { join: deck, to: [left-beam, right-beam], with: slotted screws, count: 4, counterbore: 50 }
`);
  const holes = build?.holes.filter(({ kind, part }) => kind === "slot" && part === "left-beam") ?? [];
  // The outer two move farther than the inner two.
  expect(holes.map(({ stages }) => Number(stages[0]?.diameter.n) / 16_000)).toEqual([28, 20, 20, 28]);
  const text = (build?.steps ?? []).map(textOfStep).join(" ");
  expect(text).toMatch(/after a bore 50 mm deep for the heads, as wide as each asks:/u);
  expect(text.match(/16\.5 mm long, its bore 28 mm wide, /gu)).toHaveLength(2);
  expect(text.match(/8\.5 mm long, its bore 20 mm wide, /gu)).toHaveLength(2);
});
