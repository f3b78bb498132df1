import { describe, expect, it } from "vitest";
import type { Build } from "../../src/solve/build.ts";
import { toInches } from "../../src/units/length.ts";
import { auditOf, said, solveText, textOf } from "./compiled.ts";

const text = textOf("key-cabinet");
const built = (door: string, hinges: string): Build => {
  const { build, findings } = solveText(text, {}, { door, hinges });
  expect(said(findings)).toEqual([]);
  if (!build) throw new Error("nothing was built");
  return build;
};
const [framed, plain] = [built("panel", "butt"), built("strips", "cup")];
const size = ({ cutList }: Build, part: string): readonly number[] => {
  const line = cutList.find(({ parts }) => parts.includes(part));
  return line ? [line.thickness, line.width, line.length].map(toInches) : [];
};

/** Worked out by hand; the plywood measures 23/32, 19/32 and 7/32, as the plan says. */
describe("sizes of the key cabinet, in inches", () => {
  it.each([
    ["cabinet.left-side", [23 / 32, 5, 24], "all of the depth and height"],
    ["cabinet.top-panel", [23 / 32, 5, 17 + 1 / 16], "18 − 2 × 23/32 + 2 × 1/4 in the dados"],
    ["key-rail.1", [3 / 4, 2, 16 + 9 / 16], "18 − 2 × 23/32"],
    ["hanging.upper-cleat", [3 / 4, 3, 16 + 9 / 16], "18 − 2 × 23/32"],
    ["hanging.wall-cleat", [3 / 4, 3, 15 + 1 / 16], "16 9/16 − 2 × 3/4"],
    ["door.left-stile", [3 / 4, 2.25, 22 + 5 / 16], "24 − 2 × 23/32 − 2 × 1/8"],
    ["door.top-rail", [3 / 4, 2.25, 12 + 9 / 16], "18 − 2 × 23/32 − 2 × 1/8 − 2 × 2 1/4 + 2 × 3/8"],
    ["door.panel", [7 / 32, 12 + 7 / 16, 18 + 7 / 16], "12 9/16 − 2 × 1/16; 22 5/16 − 2 × 2 1/4 + 2 × 3/8 − 2 × 1/16"],
  ] as [string, number[], string][])("%s: %j, %s", (part, wanted) => {
    expect(size(framed, part)).toEqual(wanted);
  });
  it("a plain door: the slab as large as the leaf, and strips on it that end where others begin", () => {
    expect(size(plain, "door.slab")).toEqual([19 / 32, 16 + 5 / 16, 22 + 5 / 16]);
    expect(size(plain, "door.left-strip")).toEqual([3 / 16, 2, 22 + 5 / 16]);
    // 16 5/16 − 2 × 2.
    expect(size(plain, "door.top-strip")).toEqual([3 / 16, 2, 12 + 5 / 16]);
  });
});

describe("the door of the key cabinet", () => {
  it("turns about the front of its strips, not of its slab, and opens all the way", () => {
    const [motion] = plain.motions;
    // Flush with the front of the case, at the hinged edge: 23/32 + 1/8 from the left.
    const [x, y] = motion?.poses[0]?.rotate.about[0] ?? [];
    const units = 25.4 * 16000;
    expect([(x ?? 0) / units, (y ?? Number.NaN) / units]).toEqual([expect.closeTo(23 / 32 + 1 / 8), expect.closeTo(0)]);
    expect(motion).toMatchObject({ kind: "swing", range: 110 });
  });
  it("has cups 21 1/2 mm from its edge, 4 + 35 / 2, that stay in the slab: 19/32 in are 15.1 mm", () => {
    const cups = plain.holes.filter(({ kind }) => kind === "cup");
    expect(cups).toHaveLength(2);
    for (const { part, at, stages } of cups) {
      expect(part).toBe("door.slab");
      expect(toInches(at[0]) * 25.4).toBeCloseTo((23 / 32 + 1 / 8) * 25.4 + 21.5, 6);
      // 12.5 mm is told to the next mark of 1/32 in.
      expect(toInches(stages[0]?.depth as never)).toBe(1 / 2);
    }
  });
  it("has butt hinges that fold into its gap: 1/8 closed is no more than 1/8", () => {
    expect(
      framed.design.parts
        .flatMap(({ features }) => features)
        .filter(
          (each) =>
            "for" in each &&
            each.for !== null &&
            framed.joints.find(({ id }) => id === each.for)?.method === "butt hinges",
        ),
    ).toEqual([]);
    expect(framed.motions[0]?.range).toBe(180);
  });
  it("is mortised through strip and slab for thicker hinges: (3/16 − 1/8) / 2 deep, 3/16 in the strip and 1/2 − 3/16 in the slab", () => {
    const thick = text.replace("butt: { kind: butt hinge }", "butt: { kind: butt hinge, closed: 3/16 }");
    const { build } = solveText(thick, {}, { door: "strips", hinges: "butt" });
    if (!build) throw new Error("nothing was built");
    const mortises = (id: string) =>
      build.design.parts
        .find((part) => part.id === id)
        ?.features.flatMap((each) => (each.kind === "mortise" && "size" in each ? [each.size.map(toInches)] : [])) ??
      [];
    // As long as the hinge, 2 in; how the two other sizes are called depends on the part.
    for (const [id, deep] of [
      ["door.left-strip", 3 / 16],
      ["door.slab", 5 / 16],
    ] as const) {
      expect(mortises(id)).toHaveLength(2);
      for (const size of mortises(id)) expect(size.toSorted()).toEqual([1 / 32, deep, 2]);
    }
    expect(mortises("door.right-strip")).toEqual([]);
    expect(auditOf(thick, build)).toEqual([]);
  });
  it("is pulled by its strip, with a screw through slab and strip: 19/32 + 3/16 + 1/4 want 1 1/32, and 1 1/4 is sold", () => {
    const knob = plain.hardware.find(({ item }) => item.kind === "knob");
    expect(knob?.carriedBy).toBe("door.right-strip");
    expect(toInches(knob?.item.measures.get("screw") as never)).toBe(1.25);
  });
});

describe("hanging", () => {
  it("comes last, after the screws into the wall", () => {
    for (const build of [framed, plain])
      expect(build.steps.slice(-2).map(({ title }) => title.replace(/ \(.\)/, ""))).toEqual([
        "Screw the wall cleat to the wall",
        "Hang the piece on the wall",
      ]);
  });
  it("is on two screws into brick, 2 in from the ends of the cleat", () => {
    const screws = framed.hardware.filter(({ item }) => item.kind === "wall screw");
    // The wall cleat goes from 23/32 + 3/4 to 18 less as much.
    const end = 23 / 32 + 3 / 4 + 2;
    expect(screws.map(({ at }) => toInches(at[0]))).toEqual([expect.closeTo(end), expect.closeTo(18 - end)]);
  });
  it.each([
    ["panel", "cup"],
    ["panel", "butt"],
    ["strips", "cup"],
    ["strips", "butt"],
  ])("keeps the promises with %s and %s", (door, hinges) => {
    expect(auditOf(text, built(door, hinges))).toEqual([]);
  });
});
