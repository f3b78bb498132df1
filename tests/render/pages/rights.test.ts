import { expect, test } from "vitest";
import { stepExample } from "../../../src/findings/example.ts";
import { render } from "../../../src/render/index.ts";
import { said, solveText } from "../../examples/compiled.ts";
import { overlaps, wordsOf } from "../boxes.ts";

const WORDS = `
edition: "2"
by: The tool library
credits: [Photographs by a neighbour, "Prototype: the Tuesday group"]
rights: |
  Build as many as you like for yourself and your friends.
  Do not pass on the file.
support: Ask at the counter.
`;

function pagesOf(text: string, buyer?: string) {
  const { build, findings } = solveText(text);
  if (!build) throw new Error(said(findings).join("\n"));
  const options = { paper: "letter", date: "2025-03-01", version: "0", ...(buyer !== undefined && { buyer }) } as const;
  const drawn = render(build, options);
  return { findings: [...findings, ...drawn.findings], pages: drawn.value?.pages ?? [] };
}
const tidy = (text: string): string => text.replaceAll(/[\s\u202f]+/gu, " ");

test("what the maker says of rights, support and credits is read without a finding, and printed", () => {
  const { findings, pages } = pagesOf(`${stepExample()}${WORDS}`);
  expect(findings).toEqual([]);
  const text = tidy(pages.map(wordsOf).join(" "));
  for (const words of [
    "Build as many as you like for yourself and your friends. Do not pass on the file.",
    "This is edition 2.",
    "Ask at the counter. Say which edition you have",
    "The tool library",
    "Photographs by a neighbour",
    "Prototype: the Tuesday group",
  ])
    expect(text).toContain(words);
  expect(pages.flatMap(overlaps)).toEqual([]);
});

test("without any of it there is no such page", () => {
  const { pages } = pagesOf(stepExample());
  expect(pages.map(wordsOf).join(" ")).not.toContain("Rights");
});

test("whose copy it is stands on every page, and what cannot be printed is told", () => {
  const { pages } = pagesOf(stepExample(), "A. Reader");
  const [cover, ...others] = pages.map((page) => tidy(wordsOf(page)));
  expect(cover).toContain("Copy of A. Reader");
  expect(others.length).toBeGreaterThan(3);
  for (const page of others) expect(page).toContain("copy of A. Reader");
  expect(others.at(-1)).toContain("This copy was made for A. Reader.");
  expect(pagesOf(stepExample(), "\u4e00").findings.map(({ rule }) => rule)).toEqual(["character-not-in-type"]);
});
