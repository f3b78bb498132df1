import { describe, expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { solveText } from "../../examples/compiled.ts";
import { cutLists, partsOf, sound } from "./opened.ts";

/** A low cabinet for the returned tools, on a base. MDF measures what it is called (common practice, no source). */
const cabinet = (footing: string, width = "30", height = "34 1/2"): string => `plan: 1
title: Cabinet for returned tools
units: inch
outside: { width: ${width}, depth: 16, height: ${height} }
stock:
  ply: { sold as: 3/4 mdf }
  posts: { sold as: 4x4, wood: spruce }
piece:
  cabinet: { kind: case, made of: ply, on: footing }
  footing: { kind: base, ${footing} }
`;

const FLUSH = "in at the sides: 0, in at the back: 0";

describe("a base under a case", () => {
  test("stays in at the sides and the back, clear of the joints above it, and leaves room for a skirting", () => {
    const text = cabinet("made of: ply, up: 4").replace("on: footing", "on: footing, back: thin");
    // 30 - 2 × 3/4; 16 - 1 - 2 × 3/4.
    expect(partsOf(text.replace("piece:", "  thin: { sold as: 1/4 hardboard }\npiece:"))).toMatchObject({
      "footing.front-board": "3/4 × 4 × 28 1/2",
      "footing.left-board": "3/4 × 4 × 13 1/2",
    });
  });
  test("as a toe-kick, front and back over the sides", () => {
    const parts = partsOf(cabinet(`made of: ply, up: 4, form: toe-kick, bearers: 1, ${FLUSH}`));
    // Deep: 16 - 3 = 13; the sides between two boards of 3/4: 13 - 1 1/2 = 11 1/2.
    expect(parts).toMatchObject({
      "footing.front-board": "3/4 × 4 × 30",
      "footing.back-board": "3/4 × 4 × 30",
      "footing.left-board": "3/4 × 4 × 11 1/2",
      "footing.right-board": "3/4 × 4 × 11 1/2",
      "footing.bearer.1": "3/4 × 4 × 11 1/2",
      // The case stands on it: 34 1/2 - 4.
      "cabinet.left-side": "3/4 × 16 × 30 1/2",
    });
  });
  test("between the sides, set back all round", () => {
    const parts = partsOf(
      cabinet("made of: ply, up: 3 1/2, corners: between, in at the sides: 1/2, in at the front: 2, in at the back: 1"),
    );
    // Across: 30 - 2 × 1/2 - 2 × 3/4 = 27 1/2; deep: 16 - 2 - 1 = 13.
    expect(parts).toMatchObject({
      "footing.front-board": "3/4 × 3 1/2 × 27 1/2",
      "footing.left-board": "3/4 × 3 1/2 × 13",
    });
  });
  test("as wide as the case that stands on it says", () => {
    const text = cabinet(`made of: ply, up: 4, ${FLUSH}`).replace(
      "made of: ply, on",
      "made of: ply, left: 6, across: 20, on",
    );
    const { build } = solveText(text);
    const front = build?.design.parts.find(({ id }) => id === "footing.front-board");
    expect(front && [toInches(front.body.low[0]), toInches(front.body.high[0])]).toEqual([6, 26]);
  });
  test("mitred in front", () => {
    const text = cabinet(`made of: ply, up: 4, corners: mitred in front, ${FLUSH}`);
    expect(partsOf(text)).toMatchObject({
      "footing.front-board": "3/4 × 4 × 30",
      "footing.back-board": "3/4 × 4 × 28 1/2",
      "footing.left-board": "3/4 × 4 × 16",
    });
    expect(sound(text).joints.map(({ method }) => method)).toContain("mitre");
  });
  test("as feet", () => {
    const parts = partsOf(cabinet("made of: posts, up: 3, form: feet, in at the front: 1, in at the sides: 1"));
    // A 4x4 measures 3 1/2 (American Softwood Lumber Standard, PS 20).
    expect(parts).toMatchObject({
      "footing.front-left-foot": "3 1/2 × 3 1/2 × 3",
      "footing.back-right-foot": "3 1/2 × 3 1/2 × 3",
    });
  });
  test.each([
    ["made of: ply, up: 4, form: toe-kick, bearers: 1", "23 3/8", "31"],
    ["made of: ply, up: 4, form: toe-kick, bearers: 2", "44", "36"],
    ["made of: ply, up: 2 3/4, corners: mitred", "36", "20"],
    ["made of: posts, up: 5, form: feet", "24", "36"],
  ])("keeps its promises at other sizes, and opened: %s", (footing, width, height) => {
    const [own, opened] = cutLists(cabinet(footing, width, height));
    expect(opened).toEqual(own);
  });
  test("in millimetres", () => {
    const text = `plan: 1
title: Cabinet for returned tools
units: mm
outside: { width: 800, depth: 400, height: 900 }
stock:
  ply: { sold as: 18 mm mdf }
piece:
  cabinet: { kind: case, made of: ply, on: footing }
  footing: { kind: base, made of: ply, up: 100, form: toe-kick, ${FLUSH} }
`;
    // 400 - 75 - 2 × 18 = 289
    expect(partsOf(text)).toMatchObject({ "footing.left-board": "18 × 100 × 289" });
  });
});
