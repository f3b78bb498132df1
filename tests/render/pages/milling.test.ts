import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { built } from "../../examples/compiled.ts";
import { wordsOf } from "../boxes.ts";

const wordsIn = (name: string): string => {
  const pages = render(built(name), { paper: "letter", date: "2025-03-01", version: "0" }).value?.pages ?? [];
  return pages
    .map(wordsOf)
    .join(" ")
    .replaceAll(/[\s\u202f]+/gu, " ");
};

test("boards of one wood that are bought apart are milled under names of their own", () => {
  const [, milling = ""] = /Milling For each(.*?)Holes and fasteners/u.exec(wordsIn("old-plans/wall-shelf")) ?? [];
  const heads = [...milling.matchAll(/White oak, 4\/4 planed to \S+/gu)].map(([head]) => head);
  expect(heads).toHaveLength(2);
  expect(new Set(heads).size).toBe(2);
});

test("what is fastened through nothing is told into what it goes", () => {
  const words = wordsIn("workbench-cart");
  expect(words).toMatch(/into [A-Z] \(\d+\)/u);
  expect(words).not.toMatch(/[,)] → /u);
});
