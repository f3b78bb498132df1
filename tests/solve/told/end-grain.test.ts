import { describe, expect, it } from "vitest";
import { solveText } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

const PLAN = `plan: 1
title: Step
units: mm
outside: { width: 420, depth: 200, height: 300 }
stock:
  ash: { wood: white ash, sold as: 30 mm rough, planed to: 22, widths: 200 to 260 }
piece:
  top: { made of: ash, as: lying flat, grain: across, left: outside.left, right: outside.right, front: outside.front, back: outside.back, top: outside.top }
  left-side: { made of: ash, as: upright, facing: left, left: 30, front: outside.front, back: outside.back, up from floor: 0, under: top }
  right-side: { mirror of: left-side, about: across }
  rail: { made of: ash, as: on edge, grain: across, wide: 80, between: [left-side, right-side], under: top, back: outside.back - 20 }
joints:
  - { join: rail, to: [left-side, right-side], with: mortise and tenon }
  - { join: top, to: [left-side, right-side], with: dowels }
`;

describe("glue between dowels", () => {
  // Common practice, no source: end grain is what drinks glue. The sides stand with theirs under the face of the top.
  it("is rubbed into the ends that meet, also where the other part is joined to them", () => {
    const { build, findings } = solveText(PLAN);
    if (!build) throw new Error(findings.map(({ message }) => message).join("\n"));
    const rubbed = build.steps.flatMap(({ text }) => text.map(plain).filter((each) => each.startsWith("Rub a little")));
    expect(rubbed).toEqual([
      expect.stringMatching(/^Rub a little into the top ends of (?:two|the left) sides?.* too: end grain drinks it/u),
    ]);
  });
});
