import { describe, expect, test } from "vitest";
import { marksTowards, spread } from "../../../src/solve/thickness/range.ts";
import { type Length, printLength } from "../../../src/units/index.ts";
import { inches, millimetres } from "../../../src/units/length.ts";
import { auditOf, recordOf, said, solveText } from "../../examples/compiled.ts";
import { seedCase } from "./plans.ts";

const print = (lengths: readonly Length[]): string =>
  lengths.map((each) => printLength(each, { units: "inch" }).text).join(", ");
const told = (text: string) =>
  said(solveText(text).findings.filter(({ severity }) => severity !== "advice")).map((each) =>
    each.replace(/^\d+: /, ""),
  );

describe("the thicknesses of a range", () => {
  const range = (low: Length, drawn: Length, high: Length) => ({ stock: "ply", low, drawn, high });
  const [step, tenth] = [inches(1, 64), millimetres(1, 10)];
  test("that are printed are five at most, among them the ends and that of the plan", () => {
    expect(print(spread(range(inches(11, 16), inches(23, 32), inches(3, 4)), step))).toBe(
      "11/16, 45/64, 23/32, 47/64, 3/4",
    );
    expect(print(spread(range(inches(11, 16), inches(3, 4), inches(3, 4)), step))).toBe(
      "11/16, 45/64, 23/32, 47/64, 3/4",
    );
    expect(print(spread(range(inches(1, 4), inches(3, 4), inches(1)), step))).toBe("1/4, 3/8, 1/2, 3/4, 1");
    expect(print(spread(range(inches(23, 32), inches(23, 32), inches(47, 64)), step))).toBe("23/32, 47/64");
    expect(spread(range(millimetres(172, 10), millimetres(18), millimetres(181, 10)), tenth)).toHaveLength(5);
  });
  test("that are tried are the marks from the plan's own to an end, which need not be a mark", () => {
    expect(print(marksTowards(inches(23, 32), inches(3, 4), step))).toBe("47/64, 3/4");
    expect(print(marksTowards(inches(23, 32), inches(68, 100), step))).toBe("45/64, 11/16, 17/25");
  });
});

describe("slopes", () => {
  const lines = (text: string) => {
    const { build, findings } = solveText(text);
    if (!build) throw new Error(said(findings).join("\n"));
    return new Map(build.cutList.map(({ parts, slope }) => [parts[0], Object.fromEntries(slope ?? [])]));
  };
  // The sides are as long as the case is high. What stands between them is 30 − 2t long; the shelf's dadoes add what does not change.
  test("of a case of plywood with dadoes", () => {
    const slopes = lines(seedCase());
    expect(slopes.get("left-side")).toEqual({ ply: { thickness: 1, width: 0, length: 0 } });
    expect(slopes.get("floor-panel")).toEqual({ ply: { thickness: 1, width: 0, length: -2 } });
    expect(slopes.get("shelf")).toEqual({ ply: { thickness: 1, width: 0, length: -2 } });
  });
  // A divider in the middle, and a shelf beside it, in inches to 1/16: (30 − 3t) / 2 long, though what is printed goes in steps.
  // The divider stands between floor and lid: 20 − 2t. A back of another sheet lies behind everything: the sides are 12 − u wide.
  test("through several parts and stocks, without what rounding adds", () => {
    const text = seedCase()
      .replace("piece:", "  thin: { sold as: 1/4 birch plywood, measures: 7/32, between: 3/16 and 1/4 }\npiece:")
      .replace(
        "bottom: 0, top: 20 }",
        "bottom: 0, top: 20 }\n  back-panel: { made of: thin, as: upright, facing: front, left: 0, right: 30, back: 12, bottom: 0, top: 20 }\n  divider: { made of: ply, as: upright, facing: left, at: middle, front: 1, back: 11, between: [floor-panel, lid-panel] }",
      )
      .replace("front: 0, back: 12, bottom: 0, top: 20 }", "front: 0, back: back-panel.front, bottom: 0, top: 20 }")
      .replaceAll("front: 0, back: 12, bottom: 0 }", "front: 0, back: back-panel.front, bottom: 0 }")
      .replace("between: [left-side, right-side], front: 1", "between: [left-side, divider], front: 1")
      .replace(
        "join: shelf, to: [left-side, right-side], with: dado, deep: 1/4",
        "join: [left-side, divider], to: shelf, with: screws",
      )
      .replace(
        "joints:",
        "joints:\n  - { join: [floor-panel, lid-panel], to: divider, with: screws }\n  - { join: back-panel, to: [left-side, right-side, floor-panel, lid-panel], with: screws }",
      );
    const slopes = lines(text);
    expect(slopes.get("shelf")?.ply).toEqual({ thickness: 1, width: 0, length: -1.5 });
    expect(slopes.get("divider")?.ply).toEqual({ thickness: 1, width: 0, length: -2 });
    expect(slopes.get("divider")?.thin).toEqual({ thickness: 0, width: 0, length: 0 });
    expect(slopes.get("left-side")?.thin).toEqual({ thickness: 0, width: -1, length: 0 });
    expect(slopes.get("back-panel")?.thin).toEqual({ thickness: 1, width: 0, length: 0 });
  });
  test("are in the record of each part, and none where no stock has a range", () => {
    const parts = (text: string) => {
      const { build } = solveText(text);
      if (!build) throw new Error("no build");
      expect(auditOf(text, build)).toEqual([]);
      return JSON.parse(recordOf(text, build)).parts as { id: string; slope: unknown }[];
    };
    expect(parts(seedCase()).find(({ id }) => id === "right-side")?.slope).toEqual({
      ply: { thickness: 1, width: 0, length: 0 },
    });
    expect(parts(seedCase("")).map(({ slope }) => slope)).toEqual([{}, {}, {}, {}, {}]);
  });
});

// 30 − 2t, to the nearest 1/16, halves up: 28 5/8 at 11/16, 28 19/32 at 45/64, 28 9/16, 28 17/32, 28 1/2 at 3/4. The shelf: 1/2 longer.
test("the table has the lines that change, as they are printed", () => {
  const { build } = solveText(seedCase());
  const [ply] = build?.changing ?? [];
  const mark = (part: string) => build?.cutList.find(({ parts }) => parts.includes(part))?.mark;
  expect(ply?.rows.map(({ mark: of, size, sizes }) => `${of} ${size} ${print(sizes)}`).toSorted()).toEqual(
    [
      `${mark("floor-panel")} length 28 5/8, 28 9/16, 28 9/16, 28 1/2, 28 1/2`,
      `${mark("shelf")} length 29 1/8, 29 1/16, 29 1/16, 29, 29`,
    ].toSorted(),
  );
});

describe("what goes wrong within the range only", () => {
  test("is nothing where everything holds", () => {
    expect(told(seedCase())).toEqual([]);
  });
  // A dado of 5/16 in goes right through what is not thicker. From 23/32 down, 5/16 is the first mark where that is so.
  test("is told once, with the thickness from which on it is so", () => {
    const text = seedCase(", between: 1/4 and 3/4").replace("deep: 1/4", "deep: 5/16");
    const { build, findings } = solveText(text);
    expect(build).toBeUndefined();
    const found = findings.filter(({ rule }) => rule === "housing-too-deep");
    expect(found.map(({ where }) => where)).toEqual([[{ stock: "ply", measures: "5/16 in or less" }]]);
    expect(found[0]?.message).toMatch(/^where ply measures 5\/16 in or less, the housing is 5\/16 in deep/);
  });
  // The upper shelf ends 1 1/2 = 96/64 above the underside of the lower: 46 + 46 and 49 + 46 fit in, 49 + 49 do not.
  test("is also found where only two stocks together are too thick", () => {
    const text = seedCase(", between: 11/16 and 49/64")
      .replace("piece:", "  pale: { sold as: 3/4 maple plywood, measures: 23/32, between: 11/16 and 49/64 }\npiece:")
      .replace(
        "joints:",
        "  upper: { like: shelf, made of: pale, top: 11 1/2 }\njoints:\n  - { join: [left-side, right-side], to: upper, with: screws }",
      );
    const { build, findings } = solveText(text);
    expect(build).toBeUndefined();
    const errors = findings.filter(({ severity }) => severity === "error");
    expect(errors.map(({ rule, where }) => [rule, where])).toEqual([
      [
        "parts-overlap",
        [
          { stock: "ply", measures: "49/64 in" },
          { stock: "pale", measures: "49/64 in" },
        ],
      ],
    ]);
  });
  // Whoever measured has one thickness: what goes wrong at another is not his.
  test("is nothing to the reader who measured", () => {
    const text = seedCase(", between: 1/4 and 3/4");
    expect(solveText(text, {}, {}, { ply: "23/32" }).build?.changing).toBeUndefined();
    expect(said(solveText(text, {}, {}, { ply: "23/32" }).findings).filter((each) => each.includes("error"))).toEqual(
      [],
    );
  });
});

// Brute force: the plan drawn for that thickness, and for 1/64 in less.
test("a check that does not hold over the whole range says from which thickness on it does", () => {
  const text = seedCase(", between: 3/8 and 3/4").replace("bottom: 10 }", "bottom: 10, carries: 10 kg }");
  const sags = (measured?: string) =>
    solveText(text, {}, {}, measured ? { ply: measured } : {}).build?.checks.find(({ rule }) => rule === "shelf-sags");
  const from = (sags()?.holdsFrom ?? 0) / 25.4;
  expect(from * 64).toBe(Math.round(from * 64));
  expect(from).toBeGreaterThan(3 / 8);
  expect(from).toBeLessThan(23 / 32);
  expect(sags(`${from * 64}/64`)?.verdict).toBe("holds");
  expect(sags(`${from * 64 - 1}/64`)?.verdict).toBe("warns");
  expect(told(text).map((each) => each.slice(0, 40))).toContainEqual(expect.stringContaining("shelf-sags"));
});
