import { describe, expect, test } from "vitest";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { OFF, wallFixing } from "../../../src/render/drawing/step/wall/fixing.ts";
import { strapOf } from "../../../src/render/drawing/step/wall/strap.ts";
import { ACCENT } from "../../../src/render/palette.ts";
import { UNITS_PER_INCH } from "../../../src/units/index.ts";
import { said, solveText, textOf } from "../../examples/compiled.ts";
import { pen } from "./fixture.ts";
import { clashes, outside, paths, pointsOf, struck, words } from "./look.ts";

const frame = { x: 0, y: 0, width: 243, height: 180 };

/** A case of boards 30 in wide, 12 in deep and 40 in high, with this fitting. */
const caseWith = (fitting: string): string => `plan: 1
title: Case
units: inch
outside: { width: 30, depth: 12, height: 40 }
stock: { boards: { wood: red oak, sold as: 4/4, planed to: 3/4 } }
piece:
  left: { made of: boards, as: upright, facing: left, left: outside.left, front: outside.front, deep: outside.depth, bottom: 0, top: outside.top }
  right: { mirror of: left, about: across }
  top: { made of: boards, as: lying flat, grain: across, between: [left, right], front: outside.front, deep: outside.depth, top: outside.top }
  rail: { made of: boards, as: on edge, between: [left, right], back: outside.back, up: 4, top: top.bottom }
joints:
  - { join: [top, rail], to: [left, right], with: screws }
fittings:
  - ${fitting}
`;

function wallStep(text: string) {
  const { build, findings } = solveText(text);
  const step = build?.steps.find((each) => wallFixing(build, each) !== null);
  const fixing = build && step && wallFixing(build, step);
  if (!build || !step || !fixing) throw new Error(said(findings).join("\n"));
  return { build, step, fixing, items: stepPicture(build, step, { frame, pen }).items };
}

describe("the picture of a step that ties the piece to a wall", () => {
  test.each([
    ["on top", "{ fit: wall strap, to: top, face: top, deep: top.back - 1 }"],
    ["on the back", "{ fit: wall strap, to: rail, face: back }"],
  ])("a strap %s: the wall, a stud, both brackets, and the strap between them", (_, fitting) => {
    const { items, fixing } = wallStep(caseWith(fitting));
    const told = words(items);
    for (const word of ["wall", "stud", "strap", "screw"]) expect(told).toContain(word);
    expect(told.filter((word) => word === "bracket")).toHaveLength(2);
    expect(outside(items, frame)).toEqual([]);
    expect(clashes(items)).toEqual([]);
    expect(struck(items)).toEqual([]);
    // Drawn in the room, and cut.
    expect(paths(items).filter(({ stroke }) => stroke?.ink === ACCENT)).toHaveLength(2);
    // 12 in deep, from the front at 0.
    expect(fixing.wall).toBeCloseTo(12 * UNITS_PER_INCH + OFF, 3);
    expect(fixing.floor).toBeCloseTo(0, 3);
  });

  test("the bracket on the wall touches it, is as large, and no lower than the one on the piece", () => {
    for (const fitting of ["{ fit: wall strap, to: top, face: top }", "{ fit: wall strap, to: rail, face: back }"]) {
      const { fixing } = wallStep(caseWith(fitting));
      const own = fixing.one.hardware[0].solid;
      const strap = strapOf(fixing, fixing.one, 40 * UNITS_PER_INCH);
      expect(strap?.bracket.solid.high[1]).toBeCloseTo(fixing.wall, 3);
      expect(strap?.bracket.solid.low[2]).toBeGreaterThanOrEqual(own.low[2] - 1);
      const volumeOf = ({ low, high }: typeof own) =>
        [0, 1, 2].reduce((so, i) => so * ((high[i] ?? 0) - (low[i] ?? 0)), 1);
      expect((strap ? volumeOf(strap.bracket.solid) : 0) / volumeOf(own)).toBeCloseTo(1, 6);
      expect(strap?.run.at(-1)).toEqual(strap?.screwed);
    }
  });

  test("a piece is screwed to the wall that its back touches, the screw as long as it is, no floor below", () => {
    const { items, fixing } = wallStep(caseWith("{ fit: wall screw, to: rail, face: front }"));
    expect(fixing.wall).toBeCloseTo(12 * UNITS_PER_INCH, 3);
    expect(fixing.floor).toBeNull();
    const told = words(items);
    for (const word of ["wall", "stud", "screw"]) expect(told).toContain(word);
    // A usual wall screw is 3 in long, the rail is 3/4 in thick: both to one scale.
    const level = paths(items)
      .filter(({ stroke }) => stroke?.width === 1.2)
      .flatMap((path) => pointsOf(path).map(([x]) => x));
    const screw = Math.max(...level) - Math.min(...level);
    const cut = paths(items).filter(({ stroke, fill }) => stroke?.width === 0.7 && !fill);
    const rail = cut.flatMap(pointsOf).filter(([x]) => x > 0);
    const back = Math.max(...rail.map(([x]) => x));
    const front = Math.min(...level);
    expect(screw / (back - front)).toBeCloseTo(4, 1);
  });

  test("a solid wall has no studs, and its cleat shows the outline of what is hung there later", () => {
    const { items, fixing } = wallStep(textOf("key-cabinet"));
    expect(fixing.studs).toBeNull();
    const told = words(items);
    expect(told).toContain("masonry");
    expect(told).not.toContain("stud");
    expect(paths(items).some(({ stroke }) => stroke?.dash?.length === 4)).toBe(true);
  });
});
