import { expect, test } from "vitest";
import { stepExample } from "../../../src/findings/example.ts";
import { render } from "../../../src/render/index.ts";
import { said, solveText } from "../../examples/compiled.ts";
import { seedCase } from "../../solve/thickness/plans.ts";
import { overlaps, textsOf } from "../boxes.ts";

const plain = (text: string): string => text.replaceAll("\u2044", "/").replaceAll(/\s+/gu, " ");

/** All texts of a plan, in their order, and the pages. */
function pagesOf(text: string, measured: Record<string, string> = {}) {
  const { build, findings } = solveText(text, {}, {}, measured);
  if (!build) throw new Error(said(findings).join("\n"));
  const pages = render(build, { paper: "letter", date: "2025-03-01", version: "0" }).value?.pages ?? [];
  return { pages, texts: pages.flatMap((page) => textsOf(page.items)).map((each) => plain(each.text)) };
}
/** The texts from the last heading of the section (the first is in the contents) to that of the cut list. */
function section(text: string, measured: Record<string, string> = {}): string {
  const { texts } = pagesOf(text, measured);
  const from = texts.lastIndexOf("Measure your stock first");
  return texts.slice(from, texts.indexOf("Cut list", from)).join(" ").replaceAll(/\s+/gu, " ");
}

// The sizes are worked out in tests/solve/thickness/range.test.ts.
test("a stock with a range has a box to write in, and a table of what changes", () => {
  // Below the middle, the dado is told from the bottom, where its lower side stays.
  const low = seedCase().replace("bottom: 10", "bottom: 8");
  const text = section(low);
  expect(text).toContain("3/4 birch plywood: the plan is drawn for 23/32 in. Mine:");
  expect(text).toContain("11/16 45/64 23/32 47/64 3/4");
  expect(text).toMatch(/Panel Length 28 5\/8 28 9\/16 28 9\/16 28 1\/2 28 1\/2/);
  expect(text).toMatch(/Shelf Length 29 1\/8 29 1\/16 29 1\/16 29 29/);
  expect(text).not.toContain("side");
  expect(text).toContain("Every other width and length on the cut list is unchanged.");
  expect(pagesOf(low).pages.flatMap(overlaps)).toEqual([]);
});

test("where places change as well, no table is offered that would be half of it", () => {
  // The dado for the shelf is told from the top, 20 − 10 − 23/32 down: with 3/4 it is 1/32 less.
  const { build } = solveText(seedCase());
  const [mark = ""] = build?.cutList.flatMap((line) => (line.parts.includes("left-side") ? [line.mark] : [])) ?? [];
  expect(build?.changing?.map(({ shifting }) => shifting)).toEqual([[mark]]);
  const text = section(seedCase());
  expect(text).not.toContain("Every other width and length");
  // Not all of them are known: none is named.
  expect(text).toContain("where something is cut or bored, how far it is cut, and where parts go. This copy holds");
  expect(text).toContain("If yours differs by more, do not work by it");
});

test("a sheet without a range is to be measured, too", () => {
  const text = section(seedCase(""));
  expect(text).toContain("Mine:");
  expect(text).toContain("a copy that is made for what yours measures");
  expect(text).not.toContain("Sizes that change");
});

test("the reader's own copy says so on every page", () => {
  const { pages } = pagesOf(seedCase(), { ply: "0.703" });
  const told = pages
    .slice(1)
    .map((page) =>
      textsOf(page.items).some((each) => plain(each.text).includes("for 3/4 birch plywood measured 0.703 in")),
    );
  expect(told.length).toBeGreaterThan(3);
  expect(told.every((each) => each)).toBe(true);
  expect(section(seedCase(), { ply: "0.703" })).toContain("this copy is made for 0.703 in");
});

test("boards of one thickness are not to be measured", () => {
  expect(pagesOf(stepExample()).texts).not.toContain("Measure your stock first");
});
