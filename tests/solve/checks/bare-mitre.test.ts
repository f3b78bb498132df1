import { expect, test } from "vitest";
import type { Step } from "../../../src/solve/build.ts";
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
  expect(text).toContain("Check that it is square");
  expect(text).not.toMatch(/\bkeys?\b|saw a slot/u);
  expect(text).not.toContain("heads go in");
});

// White glue: 24 h to its full strength (label instructions of PVA glues). That grain runs across the mitre is common practice, no source.
test("keys are made from an offcut and let in the next day, trimmed when they are dry, before the door is hung", () => {
  const build = built("old-plans/medicine-cabinet");
  const [glued, keyed, trimmed, hung] = [
    /^Build the door/u,
    /^Key the corners/u,
    /^Trim the keys/u,
    /^Hang the door/u,
  ].map((title) => stepWith(build, title)) as [Step, Step, Step, Step];
  expect(build.steps.filter(({ title }) => title.startsWith("Key the corners"))).toHaveLength(1);
  expect(keyed.start - glued.end).toBeGreaterThanOrEqual(24 * 60);
  expect(trimmed.start - keyed.end).toBeGreaterThanOrEqual(60);
  expect(hung.start).toBeGreaterThanOrEqual(trimmed.end);
  const text = textOfStep(keyed);
  expect(text).toContain("From an offcut of white oak saw four triangles 1/8 in thick");
  expect(text).toContain("a little over 2 in on the two sides at it, the grain along their long side");
  // A triangle with legs of 2 in is 2 / √2 = 1.414 in high: 1 7/16 to the sixteenth above.
  expect(text).toContain("Saw a slot 1/8 in wide and 1 7/16 in deep across the outside of each corner");
  expect(text.indexOf("From an offcut")).toBeLessThan(text.indexOf("Glue in 4 keys"));
  const driven = build.steps.flatMap((step) =>
    step.actions.flatMap((each) => (each.do === "drive" ? each.fasteners.map((id) => ({ id, in: step.number })) : [])),
  );
  const keys = build.fasteners.filter(({ kind }) => kind === "key").map(({ id }) => id);
  expect(driven.filter(({ id }) => keys.includes(id)).map((each) => each.in)).toEqual(Array(4).fill(keyed.number));
});

test("keys are not bought", () => {
  const { purchases } = built("old-plans/medicine-cabinet");
  expect(purchases.some(({ section }) => section === "fasteners")).toBe(true);
  expect(purchases.filter(({ item }) => /^key\b/iu.test(item))).toEqual([]);
});
