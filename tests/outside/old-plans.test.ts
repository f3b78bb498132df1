import { describe, expect, it } from "vitest";
import { printLength } from "../../src/units/index.ts";
import type { Rational } from "../../src/units/rational.ts";
import { solveText } from "../examples/compiled.ts";
import { bill, exampleText, soundDesign } from "../solve/design/plan.ts";

/** Width and length of everything that is sawn from a board in one piece, sorted. */
const sawn = (name: string): readonly string[] =>
  (solveText(exampleText(name)).build?.blanks ?? [])
    .filter(({ why }) => why !== "glue-up")
    .map(({ width, length }) => [width, length].map((l) => printLength(l, { units: "inch" }).text).join(" × "))
    .toSorted();

/**
 * Bills of material printed in H. H. Windsor, "Mission Furniture: How to Make It", Popular Mechanics Co., Chicago (public domain).
 * Lines of equal size are added up first.
 */
describe("old plans", () => {
  it("plant stand: part I, 1909, page 109", () => {
    expect(bill(soundDesign(exampleText("old-plans/plant-stand")))).toEqual(
      new Map([
        ["3/4 × 15 1/2 × 15 1/2", 1],
        ["1 1/4 × 1 1/4 × 20", 4],
        ["3/4 × 3 × 11", 4],
        ["3/4 × 2 × 11", 2],
        ["3/4 × 6 × 10", 1],
        ["1/4 × 2 × 12 1/4", 4],
        ["1/4 × 2 × 12 3/4", 2],
      ]),
    );
  });

  // The book leaves no gap round the door; it is 1/8 in smaller here, and so is its panel.
  it("medicine cabinet: part two, 1910, page 116", () => {
    expect(bill(soundDesign(exampleText("old-plans/medicine-cabinet")))).toEqual(
      new Map([
        ["1 1/2 × 1 1/2 × 28", 4],
        // 4 side rails and, below, 4 end rails
        ["3/4 × 2 × 16", 4],
        ["3/4 × 2 × 7", 4],
        ["1/4 × 15 1/2 × 23 1/8", 1], // 1/4 × 15 1/2 × 23 1/4: a little room
        ["1/4 × 6 1/2 × 23 1/4", 2],
        ["1/2 × 6 3/4 × 15 3/4", 2],
        ["3/4 × 2 × 14 7/8", 2], // 3/4 × 2 × 15
        ["3/4 × 2 × 22 5/8", 2], // 3/4 × 2 × 22 3/4
        ["1/4 × 11 3/8 × 19 1/8", 1], // 1/4 × 11 1/2 × 19 1/4
      ]),
    );
  });

  // The bill is 1/4 in over in width and 1/2 in in length, as the book says; thickness is exact.
  it("wall shelf: part three, 1912, page 50", () => {
    expect(bill(soundDesign(exampleText("old-plans/wall-shelf")))).toEqual(
      new Map([
        ["3/4 × 7 × 16", 2], // 7 1/4 × 16 1/2
        ["3/4 × 6 × 30", 1], // 6 1/4 × 30 1/2
        ["3/4 × 4 1/2 × 30", 1], // 4 3/4 × 30 1/2
        ["3/8 × 3 1/4 × 30", 1], // 3 1/2 × 30 1/2
        ["3/8 × 2 3/4 × 30", 1], // 3 × 30 1/2
      ]),
    );
  });

  it("wall shelf: with the book's allowance, what is sawn is what the bill prints", () => {
    expect(sawn("old-plans/wall-shelf")).toEqual(
      [
        "3 1/2 × 30 1/2",
        "3 × 30 1/2",
        "4 3/4 × 30 1/2",
        "6 1/4 × 30 1/2",
        "7 1/4 × 16 1/2",
        "7 1/4 × 16 1/2",
      ].toSorted(),
    );
  });

  // Lengths 1/2 in over, narrow parts 1/4 in over in width and the top 1/2 in; posts and thicknesses are exact.
  it("piano bench: part three, 1912, page 5", () => {
    expect(bill(soundDesign(exampleText("old-plans/piano-bench")))).toEqual(
      new Map([
        ["1 1/2 × 1 1/2 × 19 1/2", 4], // 1 1/2 × 1 1/2 × 20
        ["1 × 16 × 40", 1], // 16 1/2 × 40 1/2
        // 4 1/4 × 36 and 4 1/4 × 13. Where two tenons meet at a mitre each stays 1/16 in short of it, at both ends.
        ["7/8 × 4 × 35 3/8", 2],
        ["7/8 × 4 × 12 3/8", 2],
        ["7/8 × 2 1/4 × 12 1/2", 2], // 2 1/2 × 13
        ["7/8 × 3 1/2 × 35 1/2", 1], // 3 3/4 × 36
        // The bill has 1 1/4 × 11, by its own allowance 1 in wide; its drawing has 1 1/8 and gaps of 1 in.
        ["3/8 × 1 1/8 × 10 1/2", 6],
      ]),
    );
  });

  // Cedar, base and rails are 1/2 in over in width and in length, as the book says; the strips round the lid only in length.
  it("cedar chest: part two, 1910, page 79", () => {
    expect(bill(soundDesign(exampleText("old-plans/cedar-chest")))).toEqual(
      new Map([
        ["7/8 × 18 3/8 × 34", 2], // 18 7/8 × 34 1/2
        ["7/8 × 18 3/8 × 14 1/4", 2], // 18 7/8 × 14 3/4
        ["7/8 × 16 × 34", 2], // 16 1/2 × 34 1/2: top and bottom
        ["1 × 2 3/4 × 36", 2], // 3 1/4 × 36 1/2
        ["1 × 2 3/4 × 18", 2], // 3 1/4 × 18 1/2
        ["1 × 2 × 36", 2], // 2 1/2 × 36 1/2
        ["1 × 2 × 18", 2], // 2 1/2 × 18 1/2
        ["1 × 1 × 36", 2], // 1 × 36 1/2
        ["1 × 1 × 18", 2], // 1 × 18 1/2
      ]),
    );
  });

  // The book saws its cedar from boards of 16 1/2 and 18 7/8 in, which are hardly sold; here it is glued up of three each. Its
  // strips come planed to their section, and are mitred where they go.
  it("cedar chest: with the book's allowance, what is sawn whole is what the bill prints", () => {
    const pairs = ["3 1/4 × 36 1/2", "3 1/4 × 18 1/2", "2 1/2 × 36 1/2", "2 1/2 × 18 1/2", "1 × 36 1/2", "1 × 18 1/2"];
    expect(sawn("old-plans/cedar-chest")).toEqual([...pairs, ...pairs].toSorted());
  });

  // The sides alone measure the 18 3/8 that the book draws to the underside of the bottom: 7/8 + 18 3/8 + 7/8, with the lid.
  it("cedar chest: the box is 7/8 in higher than the book draws it", () => {
    const height = soundDesign(exampleText("old-plans/cedar-chest")).sizes.get("height");
    expect(Number(height?.n) / Number(height?.d) / 406_400).toBe(20.125);
  });

  // The book leaves no gap round its doors; they are 1/8 in smaller here, 1/16 in on each side, and the bars across them.
  it("bookcase: part two, 1910, page 70", () => {
    expect(bill(soundDesign(exampleText("old-plans/bookcase")))).toEqual(
      new Map([
        ["3/4 × 15 × 31 1/4", 1],
        ["3/4 × 4 × 30 1/4", 1],
        ["3/4 × 14 × 50", 2],
        ["3/4 × 14 × 28 3/4", 1],
        ["3/4 × 4 × 28 3/4", 1],
        ["3/4 × 2 × 45 3/4", 1],
        ["3/4 × 1 1/2 × 45 1/8", 4], // 3/4 × 1 1/2 × 45 1/4
        ["3/4 × 1 1/2 × 13 7/8", 4], // 3/4 × 1 1/2 × 14
        ["1/2 × 1/2 × 12 3/8", 4], // 1/2 × 1/2 × 12 1/2
        ["1/2 × 1/2 × 7", 4],
        ["1 1/4 × 1 1/4 × 13", 2],
        ["1 × 1 × 12 1/8", 2], // 1 × 1 × 12 1/2: they begin behind the beads
        ["3/4 × 11 7/8 × 28 1/2", 3], // 1/2 × 12 × 28 1/2: thinner ones sag under books, deeper ones do not go in
        ["3/8 × 4 × 29 3/4", 12],
        // The bill has neither glass nor what holds it.
        ["1/8 × 11 1/2 × 42 3/4", 2],
        ["3/4 × 1/4 × 12 3/8", 4],
        ["3/4 × 1/4 × 42 1/8", 4],
      ]),
    );
  });

  it("bookcase: what is cut in one run is told as one, and how the shelves go in", () => {
    const steps = solveText(exampleText("old-plans/bookcase")).build?.steps ?? [];
    const text = steps
      .flatMap((step) => step.text)
      .join(" ")
      .replaceAll("\u202f", " ")
      .replaceAll("⁄", "/");
    // Twelve boards of 4 in side by side.
    expect(text).toContain("Cut a rabbet 48 in long, 3/8 in wide and 1/2 in deep");
    // The sight of a door, 45 1/8 - 2 × 1 1/2 in, and 3/8 in of each rail; as deep as the glass is thick.
    expect(text).toMatch(/Cut a rabbet 42.7\/8 in long, 3\/8 in wide and 1\/8 in deep/);
    // 28 1/2 in long shelves, behind openings of 14 in.
    expect(text).toContain(
      "pass it in from the front beside what stands in its way, move it behind that, its lower end down between its pins, level it",
    );
  });

  // Here too the doors fill their opening in the book: 1/8 in less in height, and 3/16 in for the gaps beside and between them.
  it("china closet: part two, 1910, page 47", () => {
    expect(bill(soundDesign(exampleText("old-plans/china-closet")))).toEqual(
      new Map([
        ["2 × 2 × 54", 4],
        ["3/4 × 15 3/4 × 39 1/2", 2],
        ["3/4 × 15 × 38", 2], // 3/4 × 15 1/2 × 38: behind the beads of the doors, with room to swell
        ["3/4 × 5 × 15", 2],
        ["3/4 × 4 1/4 × 15", 2],
        ["3/4 × 3 × 40", 1],
        ["3/4 × 2 1/4 × 40", 1],
        ["3/4 × 1 3/4 × 43 3/8", 4], // 3/4 × 1 3/4 × 43 1/2
        ["3/4 × 2 × 18 7/8", 4], // 3/4 × 2 × 19
        ["3/4 × 1 1/2 × 39 1/2", 4],
        ["1/2 × 7 7/8 × 46 1/2", 5], // 1/2 × 8 × 46 1/2: room to swell
        ["1 × 1 × 37 3/4", 2],
        ["1 × 1 × 12 3/4", 4],
        ["1/2 × 1 × 1 1/2", 4],
        // The bill has neither glass nor what holds it.
        ["1/8 × 11 5/8 × 40 1/8", 2],
        ["1/8 × 16 × 40", 2],
        ["3/4 × 1/4 × 12 1/2", 4],
        ["3/4 × 1/4 × 16 7/8", 4],
        ["3/4 × 1/4 × 39 1/2", 4],
        ["3/4 × 1/4 × 39 3/8", 4],
      ]),
    );
  });

  it("bookcase and china closet: outside sizes read off the drawings", () => {
    const outside = (name: string): readonly number[] => {
      const { sizes } = soundDesign(exampleText(name));
      return ["width", "depth", "height"].map(
        (size) => Number(sizes.get(size)?.n) / Number(sizes.get(size)?.d) / 406_400,
      );
    };
    expect(outside("old-plans/bookcase")).toEqual([31.25, 15, 54.75]);
    expect(outside("old-plans/china-closet")).toEqual([42, 17, 54]);
  });

  // Exact. The book's drawers are as wide as their opening, 25 in; 1/8 in of play is taken off front, back and bottom here. Its ends
  // stand right up to the top; here they have 1/8 in of air. Nothing in the book holds the back ends of its drawers down: the kickers are added.
  it("library table: part three, 1912, page 7", () => {
    expect(bill(soundDesign(exampleText("old-plans/library-table")))).toEqual(
      new Map([
        ["2 × 2 × 30 1/4", 4],
        ["1 1/8 × 30 × 42", 1],
        ["3/4 × 17 × 29", 2], // 3/4 × 17 1/8 × 29
        ["7/8 × 2 × 37", 2],
        ["7/8 × 2 × 25 1/2", 2],
        ["3/4 × 2 × 32", 1],
        ["3/4 × 7 × 29", 4],
        ["1/4 × 1 1/8 × 17 1/8", 8],
        ["3/4 × 5 3/4 × 24 7/8", 2], // 3/4 × 5 3/4 × 25
        ["3/8 × 3 3/4 × 14", 4],
        ["3/8 × 3 3/8 × 24 1/8", 2], // 3/8 × 3 3/8 × 24 1/4
        ["3/8 × 13 1/8 × 24 1/8", 2], // 3/8 × 13 1/4 × 24 1/4: room to swell behind the front
        ["3/4 × 2 × 23 1/2", 2],
        ["3/4 × 2 × 25", 2],
        ["3/4 × 1 1/2 × 27 1/4", 2], // the kickers
      ]),
    );
  });

  it("library table: outside size read off the drawing, 42 × 30 × 30 1/4, and 25 between the ends", () => {
    const { sizes, parts } = soundDesign(exampleText("old-plans/library-table"));
    const inches = (value: Rational | undefined): number => Number(value?.n) / Number(value?.d) / 406_400;
    expect(["width", "depth", "height"].map((name) => inches(sizes.get(name)))).toEqual([42, 30, 30.25]);
    const x = (id: string, end: "low" | "high"): number => inches(parts.find((part) => part.id === id)?.body[end][0]);
    expect(x("right-end", "low") - x("left-end", "high")).toBe(25);
  });

  it("plant stand: outside size read off the drawing, 15 1/2 × 15 1/2 × 20 3/4", () => {
    const { sizes } = soundDesign(exampleText("old-plans/plant-stand"));
    const inches = (name: string): number => Number(sizes.get(name)?.n) / Number(sizes.get(name)?.d) / 406_400;
    expect(["width", "depth", "height"].map(inches)).toEqual([15.5, 15.5, 20.75]);
  });

  it("plant stand: its source is short", () => {
    expect(exampleText("old-plans/plant-stand").split("\n").length).toBeLessThan(110);
  });
});
