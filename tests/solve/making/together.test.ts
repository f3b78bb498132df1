/** Parts from one strip, and parts from one sheet. */
import { describe, expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import { inches } from "../../../src/units/index.ts";
import { blank, sheet } from "../cutting/stock.ts";
import { blanksOf, built, lineOf, plain, shelfCase, stepWith } from "./plans.ts";

/** Three fronts beside each other over the whole width, and one above them. */
const fronts = (() => {
  const front = (name: string, left: string, right: string) =>
    `  ${name}: { made of: ply, as: upright, facing: front, grain: across, left: ${left}, right: ${right}, back: 0, bottom: 1, top: 6, from one strip: fronts }`;
  const parts = [
    front("middle-front", "10 1/8", "19 7/8"),
    front("left-front", "1", "10"),
    front("right-front", "20", "29"),
  ];
  const joints = "  - { join: [left-front, middle-front, right-front], to: floor-panel, with: glue }";
  return shelfCase("", { parts: parts.join("\n"), joints }).replaceAll("bottom: 0 }", "bottom: 1 }");
})();

describe("three fronts from one strip", () => {
  const text = fronts.replaceAll("as: upright, facing: front", "as: on edge, facing: front");
  const build = built(text);
  // 9 + 9 3/4 + 9, and two kerfs of 1/8: 28.
  test("one blank, as long as they are with the kerfs between them", () => {
    expect(blanksOf(build, "left-front")).toEqual(["23/32 × 5 × 28 as finished"]);
    expect([blanksOf(build, "middle-front"), blanksOf(build, "right-front")]).toEqual([[], []]);
  });
  test("in the order in which they stand, not in which they are written", () => {
    const strip = build.blanks.find(({ alsoParts }) => alsoParts);
    expect([strip?.part, ...(strip?.alsoParts ?? [])]).toEqual(["left-front", "middle-front", "right-front"]);
    const [ends, middle] = [lineOf(build, "left-front").mark, lineOf(build, "middle-front").mark];
    expect(strip?.mark).toBe(`${ends} + ${middle}`);
    expect(plain(lineOf(build, "left-front").notes.join())).toContain(
      `cut from one strip 5 in × 28 in, in the order ${ends}, ${middle}, ${ends}`,
    );
    expect(plain(stepWith(build, "Cut the parts").text.join(" "))).toContain(
      `in the order ${ends}, ${middle}, ${ends}.`,
    );
  });
});

test("fronts above each other share a strip across its width: 4 + 1/8 + 5", () => {
  const front = (name: string, bottom: string, top: string) =>
    `  ${name}: { made of: ply, as: on edge, facing: front, grain: across, left: 0, right: 30, back: 0, bottom: ${bottom}, top: ${top}, from one strip: fronts }`;
  const parts = `${front("low-front", "1/2", "5 1/2")}\n${front("high-front", "5 5/8", "9 5/8")}`;
  const joints =
    "  - { join: low-front, to: [left-side, right-side, floor-panel], with: glue }\n  - { join: high-front, to: [left-side, right-side], with: glue }";
  expect(blanksOf(built(shelfCase("", { parts, joints })), "low-front")).toEqual(["23/32 × 9 1/8 × 30 as finished"]);
});

describe("parts that have to be alike", () => {
  const KERF = inches(1, 8);
  const ply = sheet(inches(50), inches(50));
  const trim = { sheet: inches(0), boardEnd: inches(0), roughEdge: inches(0) };
  const laid = (pair: Parameters<typeof blank>[4], size: readonly [number, number] = [24, 24]) =>
    layOut(
      [ply],
      [
        blank(ply, "left", inches(size[0]), inches(size[1]), pair),
        blank(ply, "right", inches(size[0]), inches(size[1]), pair),
        blank(ply, "wide", inches(49), inches(25)),
        blank(ply, "long", inches(49), inches(25)),
      ],
      KERF,
      { trim },
    );
  const sheetOf = ({ layouts }: ReturnType<typeof laid>, id: string): number =>
    layouts.findIndex(({ placements }) => placements.some((placement) => placement.blank === id));

  test("lie on one sheet where there is room, at no cost", () => {
    const together = laid({ alike: "sides" });
    expect(sheetOf(together, "left")).toBe(sheetOf(together, "right"));
    expect(together.findings).toEqual([]);
    expect(together.layouts).toHaveLength(2);
  });
  test("even where the cheapest layout would part them", () => {
    // Two of 26 × 26 leave no room for a third; 49 × 23 beside each is the cheapest, and then they are on two sheets.
    const blanks = (alike: object) => [
      blank(ply, "left", inches(49), inches(24), alike),
      blank(ply, "right", inches(49), inches(24), alike),
      blank(ply, "c", inches(49), inches(25)),
      blank(ply, "d", inches(49), inches(25)),
    ];
    const free = layOut([ply], blanks({}), KERF, { trim });
    const bound = layOut([ply], blanks({ alike: "sides" }), KERF, { trim });
    expect(free.layouts).toHaveLength(2);
    expect(sheetOf(free, "left")).not.toBe(sheetOf(free, "right"));
    expect(sheetOf(bound, "left")).toBe(sheetOf(bound, "right"));
    expect(bound.layouts).toHaveLength(3);
    expect(bound.findings).toEqual([]);
  });
  test("are a finding where one sheet cannot hold them", () => {
    const apart = laid({ alike: "sides" }, [30, 30]);
    expect(apart.findings.map(({ rule }) => rule)).toEqual(["alike-not-on-one-sheet"]);
    expect(laid({}, [30, 30]).findings).toEqual([]);
  });
});

test("alike holds for all that are named with each other, in both directions", () => {
  const text = shelfCase("", { side: ", alike: floor-panel" }).replace(
    "bottom: 20 - 23/32 }",
    "bottom: 20 - 23/32, alike: shelf }",
  );
  const build = built(text);
  const group = (part: string) => build.blanks.find((each) => each.part === part)?.alike;
  expect([group("left-side"), group("right-side"), group("floor-panel")]).toEqual(Array(3).fill("left-side"));
  expect(group("lid-panel")).toBe(group("shelf"));
  expect(group("shelf")).not.toBe("left-side");
  expect(lineOf(build, "left-side").notes.join()).toContain(`from one sheet with ${lineOf(build, "floor-panel").mark}`);
});
