import { describe, expect, test } from "vitest";
import type { StepDraft } from "../../../src/solve/build/steps/draft.ts";
import { titlesApart } from "../../../src/solve/build/steps/titles-apart.ts";
import type { Part } from "../../../src/solve/design.ts";

type Corner = readonly [number, number, number];

/** Titles of steps that add one part each, of which only the low corners count. */
function titles(kind: StepDraft["kind"], title: string, corners: readonly Corner[]): readonly string[] {
  const parts = corners.map((low, i) => ({ id: `part ${i}`, solid: { low, high: low.map((at) => at + 2) } }));
  const drafts = parts.map(({ id }) => ({ kind, title, shows: { fresh: [id] } })) as unknown as StepDraft[];
  const part = (id: string) => parts.find((each) => each.id === id) as unknown as Part;
  // The place goes into the next line together.
  return titlesApart({ part }, drafts).map((draft) => draft.title.replace(/(?<=,.*)\u00a0/gu, " "));
}

describe("steps of one title", () => {
  test("say where in the piece their parts go", () => {
    const posts: readonly Corner[] = [
      [9, 0, 0],
      [0, 0, 0],
    ];
    expect(titles("join", "Add the post (A)", posts)).toEqual([
      "Add the post (A), at the right",
      "Add the post (A), at the left",
    ]);
    const rails = [0, 5, 9].map((z): Corner => [0, 0, z]);
    expect(titles("glue-up", "Glue in the rail (B)", rails)).toEqual([
      "Glue in the rail (B), at the bottom",
      "Glue in the rail (B), in the middle",
      "Glue in the rail (B), at the top",
    ]);
  });

  test("along the direction in which they stand farthest apart", () => {
    const legs: readonly Corner[] = [
      [0, 0, 0],
      [3, 9, 0],
    ];
    expect(titles("join", "Add the leg (A)", legs)).toEqual([
      "Add the leg (A), at the front",
      "Add the leg (A), at the back",
    ]);
  });

  test("stay as they are where parts lie among one another, where nothing is joined, and where there is one", () => {
    const among: readonly Corner[] = [
      [0, 0, 0],
      [1, 1, 1],
    ];
    expect(new Set(titles("join", "Add the slat (A)", among))).toEqual(new Set(["Add the slat (A)"]));
    const apart: readonly Corner[] = [
      [0, 0, 0],
      [9, 0, 0],
    ];
    expect(new Set(titles("make", "Saw the pieces", apart))).toEqual(new Set(["Saw the pieces"]));
    expect(titles("join", "Add the top (A)", [[0, 0, 0]])).toEqual(["Add the top (A)"]);
  });
});
