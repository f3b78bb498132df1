import { describe, expect, it } from "vitest";
import { doorExample, framed } from "../../src/findings/door-example.ts";
import { drawerExample } from "../../src/findings/drawer-example.ts";
import { toInches } from "../../src/units/length.ts";
import { auditOf, built, said, solveText, textOf } from "../examples/compiled.ts";
import { arched } from "./fixture/arched.ts";

function patterns(text: string) {
  const { build, findings } = solveText(text);
  if (!build) throw new Error(said(findings).join("\n"));
  expect(auditOf(text, build)).toEqual([]);
  return { build, patterns: build.patterns ?? [], jigs: build.jigs ?? [] };
}
const spot = ([x, y]: readonly [Parameters<typeof toInches>[0], Parameters<typeof toInches>[0]]) => [
  toInches(x),
  toInches(y),
];

describe("patterns of curves", () => {
  // Half the chord 12 and the height 35 of its triangle make a radius of 37: 12, 35, 37 is a Pythagorean triple.
  it("half an arch, from the end of the part to its middle, about the true centre", () => {
    const { build, patterns: all } = patterns(arched({ long: 28, wide: 24, rise: "2" }));
    const [pattern] = all;
    if (pattern?.of !== "curve") throw new Error("no curve");
    expect([toInches(pattern.width), toInches(pattern.height)]).toEqual([14, 2.5]);
    const [arc] = pattern.outline;
    if (arc?.is !== "arc") throw new Error("no arc");
    expect([arc.from, arc.to, arc.centre].map(spot)).toEqual([
      [2, 0],
      [14, 2],
      [14, -35],
    ]);
    expect([pattern.full, pattern.half, pattern.marks]).toEqual([
      true,
      true,
      [build.parts.find(({ id }) => id === "board")?.mark],
    ]);
  });

  // 30, 72, 78: 15 from the middle √(78² − 15²) − 72 = 4.544 is 4 9/16 to the nearest sixteenth.
  it("one that takes more than four sheets is told by points", () => {
    const { build, patterns: all } = patterns(arched({ long: 64, wide: 60, rise: "6", board: "9" }));
    const [pattern] = all;
    if (pattern?.of !== "curve") throw new Error("no curve");
    expect(pattern.full).toBe(false);
    const offsets = (pattern.offsets ?? []).map(spot);
    const [start = 0] = offsets[0] ?? [];
    expect(offsets).toHaveLength(9);
    expect(offsets[0]?.[1]).toBe(0);
    expect(offsets[4]).toEqual([start + 15, 4.5625]);
    expect(offsets[8]).toEqual([start + 30, 6]);
    const step = build.steps.find(({ jigs }) => jigs?.includes(pattern.id));
    expect(step?.text.join(" ")).toContain(`Points of the curve stand with ${pattern.id}`);
  });
});

describe("patterns of hardware", () => {
  it("the cup of a hinge and its screws, from the edge of the door", () => {
    const { build, patterns: all } = patterns(doorExample(...framed("")));
    const cup = all.find(
      (each) => each.of === "hardware" && each.holes.some(({ depth, diameter }) => depth && toInches(diameter) > 1),
    );
    if (cup?.of !== "hardware") throw new Error("no cup");
    // A cup of 35 mm that begins 4 mm from the edge has its middle 21.5 mm from it.
    const bored = cup.holes.find(({ diameter }) => toInches(diameter) > 1);
    const inMm = [bored?.x, bored?.y].flatMap((each) => (each ? toInches(each) * 25.4 : []));
    expect(inMm[1]).toBeCloseTo(21.5, 6);
    expect(cup.y.edge).not.toBeNull();
    expect(cup.count).toBe(2);
    expect(build.steps.some(({ jigs }) => jigs?.includes(cup.id))).toBe(true);
  });
});

describe("jigs", () => {
  it("spacers for the gaps between slats, which the step names", () => {
    const { build, jigs } = patterns(textOf("boot-bench"));
    expect(jigs.map(({ laid, width, count }) => [laid, toInches(width), count])).toEqual([["between", 0.25, 2]]);
    const [id] = jigs.map((jig) => jig.id);
    const step = build.steps.find((each) => each.jigs?.includes(id ?? ""));
    expect(step?.text.join(" ")).toContain(`${id} is as thick`);
  });

  it("a strip for each place of slides, on a side of the case and of a drawer", () => {
    const { jigs, build } = patterns(drawerExample());
    const strips = jigs.filter(({ what }) => what === "the slides");
    expect(strips).toHaveLength(2);
    for (const { holes, uses, end } of strips) {
      expect(end).toBe("front");
      const bored = uses.holes.map((i) => build.holes[i]);
      // A slide at both sides, as many holes in each.
      expect(bored).toHaveLength(2 * holes.length);
      for (const hole of bored) {
        const part = build.parts.find(({ id }) => id === hole?.part);
        const at = part && hole ? toInches(hole.at[1]) - toInches(part.body.low[1]) : Number.NaN;
        expect(holes.some(({ y }) => Math.abs(toInches(y) - at) < 1e-9)).toBe(true);
      }
    }
  });
});

describe("patterns of tapers", () => {
  const post = (over: number) =>
    arched({ long: 28, wide: 24, rise: "2" }).replace(
      /arch: \{[^}]*\}/,
      `taper: { face: top, at: left, to: 5, over: ${over} }`,
    );

  // A board 6 high that ends 5 high loses 1 in over the length of its taper.
  it("the wedge that comes off, in its true size", () => {
    const [pattern] = patterns(post(5)).patterns;
    if (pattern?.of !== "curve") throw new Error("no pattern");
    expect([pattern.full, pattern.outline.map(({ from, to }) => [from, to].map(spot))]).toEqual([
      true,
      [
        [
          [0, 1],
          [5, 0],
        ],
      ],
    ]);
  });

  it("one that is longer than the paper is told by its two measures", () => {
    const [pattern] = patterns(post(20)).patterns;
    if (pattern?.of !== "curve") throw new Error("no pattern");
    expect(pattern.full).toBe(false);
    expect(pattern.offsets?.map(spot)).toEqual([
      [0, 1],
      [20, 0],
    ]);
  });
});

describe("the hand of a pattern", () => {
  // Looked at from the right, the front of the left end is at the left and its top is up. Turned a quarter to the left, its top edge is at
  // the left, and its back end above: worked out by hand.
  it("is that of the side which is bored, so that it is laid on as it is printed", () => {
    const [support] = (built("old-plans/cedar-chest").patterns ?? []).filter(
      (each) => each.of === "hardware" && each.kind === "lid support",
    );
    if (support?.of !== "hardware") throw new Error("no pattern");
    const sides = [support.x, support.y].map((side) => side.edge?.[0]?.side);
    expect([sides, support.down]).toEqual([["top edge", "back end"], true]);
  });

  it("is told to be turned over where it is laid on mirror images", () => {
    const hinges = (built("old-plans/cedar-chest").patterns ?? []).filter(
      (each) => each.of === "hardware" && each.kind === "butt hinge",
    );
    expect(hinges.map((each) => each.of === "hardware" && each.over)).toEqual([true]);
  });
});
