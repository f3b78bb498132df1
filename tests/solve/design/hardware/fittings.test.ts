import { describe, expect, it } from "vitest";
import { UNITS_PER_MM } from "../../../../src/units/length.ts";
import { toNumber } from "../../../../src/units/rational.ts";
import { solveText } from "../../../examples/compiled.ts";

const step = (fitting: string, hardware = "pull: { kind: knob, across: 1 1/2, screw: 2 }"): string => `plan: 1
title: Step with a knob
units: inch
stock:
  lumber: { sold as: 2x4, wood: spruce }
hardware:
  ${hardware}
piece:
  tread: { made of: lumber, as: lying flat, left: 0, right: 24, front: 0, top: 12 }
  left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }
  right-leg: { like: left-leg, right: 24 }
joints:
  - { join: tread, to: [left-leg, right-leg], with: screws }
fittings:
  - ${fitting}
`;

const mm = (value: Parameters<typeof toNumber>[0]): number => toNumber(value) / UNITS_PER_MM;

describe("what is fixed to a part", () => {
  it("stands on the face named, where its places say, with a hole right through", () => {
    const { build } = solveText(step("{ fit: pull, to: right-leg, face: right, up: right-leg.top - 3 }"));
    const [knob] = build?.hardware ?? [];
    expect(knob?.carriedBy).toBe("right-leg");
    // The leg ends at 12 − 1 1/2; its middle is 3 1/2 / 2 from the front.
    expect(knob?.at.map(mm)).toEqual([609.6, 44.45, 190.5]);
    const hole = build?.holes.find((each) => each.for === knob?.id);
    expect(hole && [hole.kind, hole.through, mm(hole.stages[0]?.depth as never)]).toEqual(["knob", true, 38.1]);
    expect(build?.purchases.filter(({ section }) => section === "hardware").map(({ quantity }) => quantity)).toEqual([
      1,
    ]);
  });
  it("is fitted for good once, in a step of its own", () => {
    const { build } = solveText(step("{ fit: pull, to: tread, face: top }"));
    const fits = build?.steps.flatMap(({ actions }) => actions.filter((action) => action.do === "fit"));
    expect(fits).toEqual([{ do: "fit", hardware: ["tread.pull.1"], to: ["tread"] }]);
  });
  it("must be in the plan's hardware, or a kind of it", () => {
    expect(solveText(step("{ fit: pul, to: tread }")).findings.map(({ rule }) => rule)).toContain("unknown-hardware");
    expect(solveText(step("{ fit: bumper, to: tread }")).build?.hardware).toHaveLength(1);
  });
});
