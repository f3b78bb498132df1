import { describe, expect, test } from "vitest";
import { cutLists, partsOf } from "./opened.ts";

/** A bench for the porch of the tool library. A 2x4 measures 1 1/2 × 3 1/2 (American Softwood Lumber Standard, PS 20). */
const porch = (says = "", width = "48", height = "18"): string => `plan: 1
title: Bench for the porch
units: inch
outside: { width: ${width}, depth: 14 3/4, height: ${height} }
stock:
  lumber: { sold as: 2x4, wood: spruce }
  slabs: { wood: spruce, sold as: 5/4, planed to: 1, widths: 5 to 14 }
piece:
  porch-bench: { kind: bench, made of: lumber${says} }
`;

describe("a bench", () => {
  test("of slats on two frames, with a stretcher", () => {
    expect(partsOf(porch())).toMatchObject({
      "porch-bench.slat.4": "1 1/2 × 3 1/2 × 48",
      // 18 - 1 1/2 under the seat.
      "porch-bench.left-end.front-stile": "1 1/2 × 3 1/2 × 16 1/2",
      // 48 - 2 × 3 - 2 × 1 1/2
      "porch-bench.stretcher": "1 1/2 × 3 1/2 × 39",
    });
  });
  test("on panels, with two stretchers", () => {
    const parts = partsOf(
      porch(
        ", ends: { form: panel, made of: slabs, in from the ends: 4, set back: 1 }, stretchers: { count: 2, up: 5 }",
      ),
    );
    expect(parts).toMatchObject({
      // 14 3/4 - 2 × 1 deep; 18 - 1 1/2 high.
      "porch-bench.right-end": "1 × 12 3/4 × 16 1/2",
      // 48 - 2 × 4 - 2 × 1
      "porch-bench.stretcher.2": "1 1/2 × 3 1/2 × 38",
    });
  });
  test.each([
    ["", "36", "16"],
    [", ends: { join: dowels }, stretchers: no", "60", "19"],
    [", seat: { made of: slabs, slats: 2, wide: 7 1/4 }, ends: { join: mortise and tenon }", "42 3/8", "17"],
  ])("keeps its promises at other sizes, and opened: %s", (says, width, height) => {
    const [own, opened] = cutLists(porch(says, width, height));
    expect(opened).toEqual(own);
  });
  test("in millimetres", () => {
    const text = `plan: 1
title: Bench for the porch
units: mm
outside: { width: 1200, depth: 380, height: 450 }
stock:
  batten: { wood: spruce, sold as: 38 mm spruce batten, measures: { thick: 38, wide: 89 }, sold in: [2400] }
piece:
  porch-bench: { kind: bench, made of: batten }
`;
    // 450 - 38 = 412; 1200 - 2 × 75 - 2 × 38 = 974.
    expect(partsOf(text)).toMatchObject({
      "porch-bench.left-end.front-stile": "38 × 89 × 412",
      "porch-bench.stretcher": "38 × 89 × 974",
    });
  });
});
