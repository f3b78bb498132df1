import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { built, solveText, textOf } from "../../examples/compiled.ts";
import { wordsOf } from "../boxes.ts";

const wordsOn = (build: ReturnType<typeof built>): string => {
  const pages = render(build, { paper: "letter", date: "2025-03-01", version: "0" }).value?.pages ?? [];
  return pages
    .map(wordsOf)
    .join(" ")
    .replaceAll(/[\s\u202f]+/gu, " ");
};
const wordsIn = (name: string): string => wordsOn(built(name));

const headsOf = (words: string): readonly string[] => {
  const [, milling = ""] = /Milling For each(.*?)Holes and fasteners/u.exec(words) ?? [];
  return [...milling.matchAll(/White oak, 4\/4(?: planed to \S+)?/gu)].map(([head]) => head);
};

test("boards of one wood that are bought apart are milled under names of their own, those that are bought alike under one that tells no thickness", () => {
  expect(headsOf(wordsIn("old-plans/wall-shelf"))).toEqual(["White oak, 4/4"]);
  // The backs out of narrower boards.
  const apart = solveText(
    textOf("old-plans/wall-shelf").replace("planed to: 3/8, widths: 4 to 10", "planed to: 3/8, widths: 4 to 8"),
  );
  expect(headsOf(wordsOn(apart.build as ReturnType<typeof built>))).toEqual([
    "White oak, 4/4 planed to 3\u20444",
    "White oak, 4/4 planed to 3\u20448",
  ]);
});

test("what is fastened through nothing is told into what it goes", () => {
  const words = wordsIn("workbench-cart");
  expect(words).toMatch(/into [A-Z] \(\d+\)/u);
  expect(words).not.toMatch(/[,)] → /u);
});
