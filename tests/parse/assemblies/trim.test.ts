import { describe, expect, test } from "vitest";
import { cutLists, partsOf, sound } from "./opened.ts";

/** A cabinet with strips before its raw edges. MDF measures what it is called (common practice, no source). */
const edged = (says: string, width = "30", height = "34 1/2"): string => `plan: 1
title: Cabinet for returned tools
units: inch
outside: { width: ${width}, depth: 16, height: ${height} }
stock:
  sheet: { sold as: 3/4 mdf }
  strip: { wood: cherry, sold as: 4/4, planed to: 1/2, widths: 3 to 8 }
piece:
  cabinet: { kind: case, made of: sheet, front: 1/2 }
  edging: { kind: trim, made of: strip, round: cabinet, wide: 3/4, ${says} }
`;

/** Strips round a counter top. */
const counter = (says: string, width = "30"): string => `plan: 1
title: Counter top
units: inch
outside: { width: ${width}, depth: 20, height: 3/4 }
stock:
  sheet: { sold as: 3/4 mdf }
  strip: { wood: cherry, sold as: 4/4, planed to: 1/2, widths: 3 to 8 }
piece:
  plate: { made of: sheet, as: lying flat, grain: across, left: 1/2, right: outside.right - 1/2, front: 1/2, back: outside.back, top: outside.top }
  edging: { kind: trim, made of: strip, round: plate, along: top edges, wide: 3/4, ${says} }
`;

describe("trim", () => {
  test("mitred before the front edges of a case", () => {
    const text = edged("corners: mitred");
    expect(partsOf(text)).toMatchObject({
      "edging.left-strip": "1/2 × 3/4 × 34 1/2",
      "edging.top-strip": "1/2 × 3/4 × 30",
      "cabinet.left-side": "3/4 × 15 1/2 × 34 1/2",
    });
    expect(sound(text).joints.filter(({ method }) => method === "mitre")).toHaveLength(4);
  });
  test("butted, without a strip at the top", () => {
    const parts = partsOf(edged("corners: butted, edges: [left, right, bottom]"));
    // 30 - 2 × 3/4
    expect(parts).toMatchObject({ "edging.bottom-strip": "1/2 × 3/4 × 28 1/2" });
    expect(parts).not.toHaveProperty("edging.top-strip");
  });
  test("round the top edges of a plate", () => {
    expect(partsOf(counter("corners: mitred"))).toMatchObject({
      "edging.front-strip": "1/2 × 3/4 × 30",
      "edging.left-strip": "1/2 × 3/4 × 20",
      plate: "3/4 × 19 1/2 × 29",
    });
    expect(partsOf(counter("corners: butted"))).toMatchObject({
      "edging.front-strip": "1/2 × 3/4 × 30",
      "edging.left-strip": "1/2 × 3/4 × 19 1/2",
    });
  });
  test.each([
    ["corners: butted", "24", "30"],
    ["corners: mitred", "40 3/8", "36"],
  ])("keeps its promises at other sizes, and opened: %s", (says, width, height) => {
    for (const text of [edged(says, width, height), counter(says, width)]) {
      const [own, opened] = cutLists(text);
      expect(opened).toEqual(own);
    }
  });
});
