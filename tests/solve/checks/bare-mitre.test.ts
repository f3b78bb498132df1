import { expect, test } from "vitest";
import { built, solveText } from "../../examples/compiled.ts";
import { stepWith, textOfStep } from "../told/examples.ts";

/** Four rails of 3/4 in round an opening. `with`: their corners; `more`: another part and joint. */
const frame = ({ corners = "mitre", part = "", joint = "" } = {}) =>
  solveText(`plan: 1
title: Frame
units: inch
stock: { wood: { wood: oak, sold as: 4/4, planed to: 3/4 }, ply: { sold as: 1/4 birch plywood } }
piece:
  front-rail: { made of: wood, as: lying flat, grain: across, left: 0, right: 16, front: 0, deep: 2, bottom: 0 }
  back-rail: { like: front-rail, front: 10 }
  left-rail: { made of: wood, as: lying flat, grain: deep, front: 0, back: 12, left: 0, wide: 2, bottom: 0 }
  right-rail: { like: left-rail, left: 14 }
${part}joints:
  - { join: [front-rail, back-rail], to: [left-rail, right-rail], with: ${corners} }
${joint}`);

const verdicts = (solved: ReturnType<typeof frame>): readonly string[] => {
  expect(solved.findings.filter(({ severity }) => severity === "error")).toEqual([]);
  return (solved.build?.checks ?? []).flatMap(({ rule, verdict }) => (rule === "bare-mitre" ? [verdict] : []));
};

// Wood Handbook FPL-GTR-190, chapter 10, "End-Grain Joints": end grain butted and glued reaches about a quarter of the strength of the wood.
test("mitres across the ends of wood that glue alone holds are warned of", () => {
  const solved = frame();
  expect(verdicts(solved)).toEqual(["warns", "warns", "warns", "warns"]);
  expect(solved.findings.map(({ rule }) => rule)).toContain("bare-mitre");
});

test("keys, splines, and what both parts are fast to hold them; a panel that floats in grooves does not", () => {
  expect(verdicts(frame({ corners: "keyed mitre" }))).toEqual([]);
  expect(verdicts(frame({ corners: "splined mitre" }))).toEqual([]);
  const part =
    "  panel: { made of: ply, as: lying flat, grain: across, left: 0, right: 16, front: 0, back: 12, top: front-rail.bottom }\n";
  const all = "[front-rail, back-rail, left-rail, right-rail]";
  expect(verdicts(frame({ part, joint: `  - { join: panel, to: ${all}, with: brads }\n` }))).toEqual(
    Array(4).fill("holds"),
  );
  const inGroove = part
    .replace(
      /left: 0.*bottom/u,
      "between: [left-rail, right-rail], deep: between front-rail and back-rail, bottom: front-rail.bottom + 1/4",
    )
    .replace(" + 1/4 }", " + 1/4 }");
  expect(
    verdicts(frame({ part: inGroove, joint: `  - { join: panel, to: ${all}, with: groove, deep: 1/4 }\n` })),
  ).toEqual(Array(4).fill("warns"));
});

test("a mitred frame is clamped and proved before its keys are let in", () => {
  const step = stepWith(built("old-plans/medicine-cabinet"), /^Build the door/u);
  const text = textOfStep(step);
  expect((step.clamps ?? []).reduce((so, { count }) => so + count, 0)).toBe(4);
  expect(text.indexOf("Check that it is square")).toBeLessThan(text.indexOf("When the glue is dry, saw a slot"));
  expect(text).toContain("in the middle of its thickness. Glue in 4 keys");
  expect(text).not.toContain("heads go in");
});
