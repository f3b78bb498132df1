/** What is cut when the piece tells its size. */
import { describe, expect, test } from "vitest";
import { blanksOf, built, lineOf, plain, shelfCase, stepWith } from "./plans.ts";

describe("a shelf that is cut to the piece", () => {
  const build = built(shelfCase(", cut: to the piece"));
  const cut = stepWith(build, "Cut the shelf");
  const shelf = build.parts.find(({ id }) => id === "shelf");

  test("the layout reserves 1/8 in over, both ways", () => {
    expect(blanksOf(build, "shelf")).toEqual(["23/32 × 10 1/8 × 28 11/16 cut later"]);
  });
  test("goes in last, though it is not the last in the source", () => {
    const added = build.steps.flatMap(({ actions }) => actions.flatMap((a) => (a.do === "add" ? a.parts : [])));
    expect(added.at(-1)).toBe("shelf");
  });
  test("may be cut as soon as the sides stand together, and is right before it is used", () => {
    const after = shelf?.cutAfterStep ?? 0;
    const joined = build.steps.find(({ actions }) =>
      actions.some((a) => a.do === "add" && a.parts.includes("right-side")),
    );
    expect(after).toBe(joined?.number);
    expect(cut.number).toBeGreaterThan(after);
    expect(cut.after).toContain(after);
    const use = build.steps.find(({ actions }) => actions.some((a) => a.do === "add" && a.parts.includes("shelf")));
    expect(use?.number).toBe(cut.number + 1);
  });
  test("its blank is made in that step, and not with the others", () => {
    const own = build.blanks.find(({ part }) => part === "shelf")?.id ?? "";
    expect(cut.actions).toEqual([{ do: "make", blanks: [own] }]);
    expect(plain(stepWith(build, "Cut the parts").text.join(" "))).toContain(
      `as large as the layout has it: it is cut to size in step ${cut.number}.`,
    );
  });
  test("where to measure, in two places, and what it should come to: 30 − 2 × 23/32", () => {
    const mark = lineOf(build, "left-side").mark;
    expect(cut.text.map(plain)).toContain(
      `Length: expected 28 9/16 in. Measure from one side (${mark}) to the other, at the front and at the back; cut to the smaller.`,
    );
    expect(cut.text.map(plain)).toContain("Width: 10 in, from the list.");
    expect(build.later?.map(({ mark: own, steps }) => [own, steps])).toEqual([
      [lineOf(build, "shelf").mark, [cut.number]],
    ]);
  });
});

test("what it has to give, and what is let in, is told: 1/16 of play at each end; 1/4 in dadoes at each end", () => {
  const loose = shelfCase(", cut: to the opening")
    .replace("between: [left-side, right-side], front: 1", "left: 23/32 + 1/16, right: 30 - 23/32 - 1/16, front: 1")
    .replace(
      "join: [left-side, right-side], to: shelf, with: screws, count: 2",
      "join: shelf, to: floor-panel, with: glue",
    )
    .replace("bottom: 10, cut", "bottom: 23/32, cut");
  expect(plain(stepWith(built(loose), "Cut the shelf").text.join(" "))).toContain(
    "cut to the smaller, less 1/8 in of play.",
  );
  const housed = shelfCase(", cut: to the piece").replace(
    "{ join: [left-side, right-side], to: shelf, with: screws, count: 2 }",
    "{ join: shelf, to: [left-side, right-side], with: dado, deep: 1/4, glue: yes }",
  );
  const build = built(housed);
  expect(plain(stepWith(build, "Cut the shelf").text.join(" "))).toContain(
    "cut to the smaller, and add 1/2 in for what is let in.",
  );
});

test("a part that is needed before there is anything to measure is told, and still made", () => {
  const build = built(`plan: 1
title: Step
units: inch
stock: { lumber: { sold as: 2x4, wood: spruce } }
piece:
  tread: { made of: lumber, as: lying flat, left: 0, right: 24, front: 0, top: 12, cut: to the piece }
  left-leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }
  right-leg: { like: left-leg, right: 24 }
joints: [{ join: tread, to: [left-leg, right-leg], with: screws }]
`);
  expect(build.told).toContain("no-piece-to-measure");
  expect(blanksOf(build, "tread")).toEqual(["1 1/2 × 3 1/2 × 24 1/8 cut later"]);
});

describe("a sole that is cut over and trimmed flush", () => {
  const sole =
    "  sole: { made of: ply, as: on edge, facing: front, grain: across, left: 0, right: 30, back: 0, bottom: 0, top: 2, cut: over by 1/16 then flush }";
  const build = built(
    shelfCase("", {
      parts: sole,
      joints: "  - { join: sole, to: [left-side, right-side, floor-panel], with: glue }",
    }),
  );
  test("sawn 1/16 over with the others", () => {
    expect(blanksOf(build, "sole")).toEqual(["23/32 × 2 1/16 × 30 1/16 cut later"]);
    expect(build.parts.find(({ id }) => id === "sole")?.cutAfterStep).toBe(null);
    expect(build.later?.map(({ mark }) => mark)).not.toContain(lineOf(build, "sole").mark);
  });
  test("trimmed in the step after the one in which it is glued on", () => {
    const glued = stepWith(build, "Glue in the sole");
    expect(stepWith(build, "Trim the sole").number).toBe(glued.number + 1);
  });
});
