import { expect, test } from "vitest";
import { keptOff } from "../../../src/solve/build/finishing/kept-off.ts";
import { built, solveText, textOf } from "../../examples/compiled.ts";
import { plain, stepWith, textOfStep } from "./examples.ts";

test("a loose panel has as many coats all round, and no inside", () => {
  const text = textOfStep(stepWith(built("index-cabinet"), /^Finish two door panels/u));
  expect(text).toContain("Give both faces as many coats");
  expect(text).not.toContain("Inside");
  expect(textOfStep(stepWith(built("index-cabinet"), /^Finish .* with /u))).toContain(
    "Inside two coats do where it is shut in:",
  );
});

test("what is kept free of finish is open when that goes on: tenons are not, once they are glued in", () => {
  const text = textOf("dining-bench").replace(
    "both faces alike: seat",
    'both faces alike: seat, keep off: "tenons, mortises and the stamp"',
  );
  const { build } = solveText(text);
  if (!build) throw new Error("did not compile");
  const coats = build.steps.filter(({ title }) => title.startsWith("Finish")).map(textOfStep);
  expect(coats.length).toBeGreaterThan(0);
  for (const each of coats) {
    expect(each).toContain("Keep it off: the stamp.");
    expect(each).not.toMatch(/tenon|mortise/u);
  }
  const free = plain((build.finishSchedule?.free ?? []).join("; "));
  expect(free).toContain("the stamp");
  expect(free).not.toMatch(/tenon|mortise/u);
});

test("of a loose part with a tenon the tenon is kept free", () => {
  const { design } = built("dining-bench");
  const parts = design.parts.filter(({ features }) => features.some(({ kind }) => kind === "tenon"));
  const there = { parts, joints: design.joints, holes: [] };
  expect(keptOff("tenons and pin holes", { ...there, glued: false })).toBe("tenons");
  expect(keptOff("tenons and pin holes", { ...there, glued: true })).toBeNull();
});

test("a varnish of drying oil dries over night and its rags are warned of; one thinned with water dries in hours", () => {
  // Labels of oil varnishes: recoat after 24 h, and a warning of rags; of water-borne ones: 2 to 4 h. From memory, no source.
  const coats = (product: string) => {
    const { build } = solveText(textOf("dining-bench").replace("hard oil", product));
    if (!build) throw new Error("did not compile");
    return stepWith(build, /^Finish .* with /u);
  };
  for (const product of ["varnish", "oil varnish", "alkyd enamel"]) {
    const oily = coats(product);
    expect(textOfStep(oily)).toContain("Let each coat dry a day");
    expect(oily.cautions.join(" ")).toContain("heat by themselves");
  }
  for (const product of ["water-borne varnish", "acrylic clear coat", "nitrocellulose lacquer"]) {
    const quick = coats(product);
    expect(textOfStep(quick)).toContain("Let each coat dry 3 hours");
    expect(quick.cautions.join(" ")).not.toContain("heat by themselves");
  }
});

test("where no finish is said, faces that are shut in stay bare", () => {
  const told = (name: string): string => textOfStep(stepWith(built(name), /^Sand the (?:rest of the )?piece/u));
  expect(told("old-plans/cedar-chest")).toContain("leave the faces inside that are shut in bare");
  // Nothing is shut in by a shelf.
  expect(told("old-plans/wall-shelf")).not.toContain("shut in");
});

test("faces that had coats on both sides before are no longer told to stay bare", () => {
  const text = textOfStep(stepWith(built("old-plans/medicine-cabinet"), /^Sand the rest of the piece/u));
  expect(text).toContain("bare, but for those of what has coats on both faces, or put shellac on them");
});

test("a top is taken off when the drawers below it are out", () => {
  expect(textOfStep(stepWith(built("overalls-chest"), /^Take off the five/u))).toContain(
    "The slab (N) comes off last: draw its screws from below and lift it off.",
  );
});

// Common practice, no source: what is thinned with water raises the grain; oil does not.
test("the step itself says that the grain is raised, and which holes of pins are stopped", () => {
  const finish = (name: string) => {
    const step = built(name)
      .steps.filter(({ kind }) => kind === "finish")
      .at(-1);
    return plain(step?.text.join(" ") ?? "");
  };
  expect(finish("manuals-bookcase")).toMatch(
    /damp rag.* sand once more.*Stop the holes of the shelf pins with bits of dowel or with tape/u,
  );
  expect(finish("spice-cabinet")).toMatch(/The shelf pins stay in.*Stop the holes that are left/u);
  expect(finish("rope-chest")).not.toMatch(/damp rag|shelf pins/u);
  const tools = built("manuals-bookcase").tools.map(({ tool }) => tool);
  expect(tools).toEqual(expect.arrayContaining(["Damp rag", "Masking tape"]));
});

/** A chest with a lid of one board, or of a board with a strip under it. */
const chest = (strip: boolean): string => `plan: 1
title: Box with a lid
units: inch
outside: { width: 20, depth: 12, height: 10 }
stock:
  wood: { sold as: 3/4 MDF }
hardware:
  hinge: { kind: butt hinge, long: 2 }
piece:
  front-side: { made of: wood, as: on edge, facing: front, left: 0, right: 20, front: 0, bottom: 0, up: 9 1/4 }
  back-side: { mirror of: front-side, about: deep }
  left-end: { made of: wood, as: on edge, facing: left, left: 0, between: [front-side, back-side], bottom: 0, up: 9 1/4 }
  right-end: { mirror of: left-end, about: across }
  bottom-panel: { made of: wood, as: lying flat, grain: across, between: [left-end, right-end], deep: between front-side and back-side, bottom: 0 }
  lid:
    board: { made of: wood, as: lying flat, grain: across, left: 0, right: 20, front: 0, back: 12, on: front-side }
${strip ? "    strip: { made of: wood, as: lying flat, grain: across, left: 4, right: 16, front: 5, back: 7, under: lid.board }" : ""}
joints:
  - { join: [front-side, back-side], to: [left-end, right-end], with: screws, glue: yes }
  - { join: [front-side, back-side, left-end, right-end], to: bottom-panel, with: glue }
  - { join: lid.board, to: back-side, with: butt hinges, hardware: hinge, opens: top, count: 2 }
${strip ? "  - { join: lid.strip, to: lid.board, with: glue }" : ""}
finish: { with: hard wax oil, coats: 2 }
`;

// Common practice, no source: what dries on one face only warps; a lid is aired by being opened.
test("a lid over faces that stay bare has its coats on both faces, by its name or its mark", () => {
  const told = (strip: boolean): string => {
    const { build } = solveText(chest(strip));
    if (!build) throw new Error("did not compile");
    return textOfStep(stepWith(build, /^Finish the (?:rest of the )?piece/u));
  };
  expect(told(true)).toContain(". The lid has its coats on both faces all the same, also on the one that looks inside");
  expect(told(false)).toMatch(/\. [A-Z] has its coats on both faces all the same, also on the one that looks inside/u);
  expect(told(false)).toMatch(/Bare inside, as far as they are shut in: .*top face of/u);
});
