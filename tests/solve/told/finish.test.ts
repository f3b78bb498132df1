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
