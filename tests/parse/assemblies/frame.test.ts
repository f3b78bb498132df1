import { describe, expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { solveText } from "../../examples/compiled.ts";
import { cutLists, partsOf, sound } from "./opened.ts";

/** A frame for the opening hours of the tool library. */
const notice = (says: string, outside = "width: 20, depth: 3/4, height: 28"): string => `plan: 1
title: Frame for the opening hours
units: inch
outside: { ${outside} }
stock:
  cherry: { wood: cherry, sold as: 4/4, planed to: 3/4, widths: 3 to 8 }
  thin: { sold as: 1/4 hardboard }
piece:
  notice: { kind: frame, made of: cherry, ${says} }
`;
const FLAT = "width: 20, depth: 28, height: 3/4";
const SIDEWAYS = "width: 3/4, depth: 20, height: 28";

describe("a frame", () => {
  test("with mortises and tenons and a panel", () => {
    const text = notice("wide: 2 1/2, panel: { made of: thin, play: 1/16 }");
    expect(sound(text).joints.filter(({ method }) => method === "mortise and tenon")).toHaveLength(4);
    // Between the stiles 20 - 5 = 15, between the rails 28 - 5 = 23; grooves 1/4 deep less 1/16 at each edge.
    expect(partsOf(text)).toMatchObject({
      "notice.left-stile": "3/4 × 2 1/2 × 28",
      "notice.panel": "1/4 × 15 3/8 × 23 3/8",
    });
  });
  test("with dowels, its rails wider than its stiles", () => {
    expect(partsOf(notice("wide: 2, rails: { wide: 3 }, join: dowels"))).toMatchObject({
      "notice.right-stile": "3/4 × 2 × 28",
      "notice.bottom-rail": "3/4 × 3 × 16",
    });
  });
  test.each(["half lap", "bridle", "keyed mitre"])("lying flat, crossing in the corners: %s", (method) => {
    expect(partsOf(notice(`as: lying flat, wide: 2, join: ${method}`, FLAT))).toMatchObject({
      "notice.left-stile": "3/4 × 2 × 28",
      "notice.front-rail": "3/4 × 2 × 20",
    });
  });
  test("facing a side", () => {
    expect(partsOf(notice("facing: right, wide: 2, join: dowels", SIDEWAYS))).toMatchObject({
      "notice.front-stile": "3/4 × 2 × 28",
      "notice.top-rail": "3/4 × 2 × 16",
    });
  });
  test("as thick as its stock, wherever it is said to lie", () => {
    const { build, findings } = solveText(
      notice("as: lying flat, top: 20, wide: 2, join: dowels", "width: 20, depth: 28, height: 20"),
    );
    // What is below it is another matter here.
    expect(findings.map(({ rule }) => rule)).toEqual(["outside-missed"]);
    const heights = build?.design.parts.map(({ body }) => [toInches(body.low[2]), toInches(body.high[2])]);
    expect(heights).toEqual(Array(4).fill([19.25, 20]));
  });
  test.each([
    ["wide: 2 1/2, panel: thin", "width: 12 3/8, depth: 3/4, height: 17"],
    ["wide: 2, join: half lap", "width: 31, depth: 3/4, height: 22"],
    ["as: lying flat, wide: 2, panel: { made of: thin, play: 1/16 }", "width: 24, depth: 15, height: 3/4"],
    ["facing: left, wide: 3, join: dowels", "width: 3/4, depth: 30, height: 36"],
  ])("keeps its promises at other sizes, and opened: %s", (says, outside) => {
    const [own, opened] = cutLists(notice(says, outside));
    expect(opened).toEqual(own);
  });
});
