import { describe, expect, test } from "vitest";
import { said, solveText } from "../../examples/compiled.ts";
import { partsOf } from "./opened.ts";

/** A case of 420 × 190 × 600 in oak of 18. */
const cabinet = (more: string) => `plan: 1
title: Cabinet for gauges
units: mm
outside: { width: 420, depth: 190, height: 600 }
stock:
  oak: { sold as: 27 mm rough, wood: european oak, planed to: 18, widths: 120 to 250 }
  thin: { sold as: 6 mm birch plywood, measures: 6 }
piece:
  cabinet: { kind: case, made of: oak, ${more} }
`;

describe("top and bottom of a case", () => {
  test.each(["dovetail", "box joint", "keyed mitre"])("run to the outer corners with a %s", (method) => {
    const parts = partsOf(cabinet(`top and bottom: ${method}`));
    expect([parts["cabinet.left-side"], parts["cabinet.top-panel"], parts["cabinet.bottom-panel"]]).toEqual([
      "18 × 190 × 600",
      "18 × 190 × 420",
      "18 × 190 × 420",
    ]);
  });
  test("are let in where nothing crosses: 420 - 2 × 18 + 2 × 6", () => {
    expect(partsOf(cabinet("join: { with: dado, deep: 6 }"))["cabinet.top-panel"]).toBe("18 × 190 × 396");
  });
  test("a bottom that is raised meets no corner", () => {
    const { findings } = solveText(cabinet("top and bottom: dovetail, bottom panel: { up: 30 }"));
    expect(said(findings).join()).toMatch(/bottom-panel and cabinet.left-side do not cross at a corner/);
  });
});
