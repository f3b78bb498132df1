import { describe, expect, test } from "vitest";
import { inches } from "../../../src/units/length.ts";
import { auditOf, said, solveText } from "../../examples/compiled.ts";

/** 30 × 12 × 20 outside, divided in two, with the sheets drawn for 23/32. */
const divided = (hold: string, more = "across: [equal, equal]", width = "width: 30"): string => `plan: 1
title: Case for drill bits
units: inch
outside: { ${width}, depth: 12, height: 20 }
hold: ${hold}
stock:
  ply: { sold as: 3/4 birch plywood, measures: 23/32, between: 11/16 and 3/4 }
piece:
  bit-case: { kind: case, made of: ply, join: screws, openings: { ${more} } }
`;

const solved = (text: string, ply = "3/4") => {
  const { build, findings } = solveText(text, {}, {}, { ply });
  if (!build) throw new Error(said(findings).join("\n"));
  expect(auditOf(text, build)).toEqual([]);
  const line = (end: string) => build.cutList.find(({ parts }) => parts.some((part) => part.endsWith(end)));
  return { sizes: build.design.sizes, line, findings };
};

describe("sheets of 3/4 in place of 23/32", () => {
  // Nothing said, or the outside: 30 and 20, the panels 30 − 2 × 3/4.
  test("leave the outside as it was where the plan holds that", () => {
    const { sizes, line } = solved(divided("outside"));
    expect(sizes.get("width")).toEqual(inches(30));
    expect(line("bottom-panel")?.length).toEqual(inches(57, 2));
  });
  // Inside it is 30 − 2 × 23/32 = 28 9/16 wide and 20 − 2 × 23/32 = 18 9/16 high; with two sheets of 3/4 round it, 30 1/16 and 20 1/16.
  test("move the outside where it holds the inside", () => {
    const { sizes, line } = solved(divided("inside"));
    expect(sizes.get("width")).toEqual(inches(481, 16));
    expect(sizes.get("height")).toEqual(inches(321, 16));
    expect(sizes.get("depth")).toEqual(inches(12));
    expect(line("bottom-panel")?.length).toEqual(inches(457, 16));
    expect(line("divider-1")?.length).toEqual(inches(297, 16));
    expect(line("left-side")?.length).toEqual(inches(321, 16));
  });
  // An opening is (30 − 3 × 23/32) / 2 = 13 59/64 wide; two of them and three sheets of 3/4 are 27 27/32 + 2 1/4 = 30 3/32.
  test("move it by all sheets beside an opening that shares the room with another", () => {
    const { sizes } = solved(divided("opening-1"));
    expect(sizes.get("width")).toEqual(inches(963, 32));
  });
});

// 28 9/16 and two sheets of 0.703: 29.9685; thinner sheets move it in.
test("works for whatever the reader measured", () => {
  const { sizes } = solved(divided("inside"), "0.703");
  const width = sizes.get("width") ?? inches(0);
  expect(Number(width.n) / Number(width.d) / 406_400).toBeCloseTo(28.5625 + 2 * 0.703, 9);
});

test("as drawn nothing moves", () => {
  const { build } = solveText(divided("inside"));
  expect(build?.design.sizes.get("width")).toEqual(inches(30));
  // A panel between the sides is as long as the inside is wide, whatever the sheet measures; the sides get longer by two sheets.
  const slopes = new Map(
    build?.cutList.map(({ parts, slope }) => [parts[0]?.split(".").at(-1), slope?.get("ply")?.length]),
  );
  expect(slopes.get("bottom-panel")).toBe(0);
  expect(slopes.get("left-side")).toBe(2);
});

test("the range of a size moves with it", () => {
  const text = divided("inside", undefined, "width: { value: 30, from: 20, to: 30 }");
  expect(said(solved(text).findings)).toEqual([]);
});

describe("tells", () => {
  const rules = (text: string) => solveText(text).findings.map(({ rule, severity }) => `${severity} ${rule}`);
  test("what is no opening, and what there is not", () => {
    expect(rules(divided("left-side"))).toEqual(["error nothing-to-hold"]);
    expect(rules(divided("opening-9"))).toEqual(["error unknown-name"]);
  });
  test("what cannot be held, at the ends of the range", () => {
    const text = divided("inside").replace(
      "kind: case,",
      "kind: case, left: 0, right: 30, front: 0, bottom: 0, top: 20,",
    );
    expect(rules(text)).toContain("warning opening-not-held");
  });
});
