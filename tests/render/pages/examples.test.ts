import { describe, expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { leaves } from "../../../src/render/shapes.ts";
import { MARGIN } from "../../../src/render/style.ts";
import { groupsOf } from "../../../src/render/write/gather.ts";
import { DRAWN_EXAMPLES, EXAMPLES, solveText, textOf } from "../../examples/compiled.ts";
import { boxOf, overlaps, textsOf, wordsOf } from "../boxes.ts";
import { struckThrough } from "../struck.ts";

/** Each on one of them, in turn; on both when PAPERS=all asks for it, which takes twice as long. */
const PAPERS = ["letter", "a4"] as const;
const papersOf = (name: string) =>
  process.env.PAPERS === "all" ? PAPERS : PAPERS.filter((_, i) => i === EXAMPLES.indexOf(name) % PAPERS.length);

describe.each(DRAWN_EXAMPLES)("the pages of %s", (name) => {
  const { build } = solveText(textOf(name));
  if (build === undefined) throw new Error(`${name} does not compile`);
  const pages = papersOf(name).flatMap((paper) => {
    const { value } = render(build, { paper, date: "2025-03-01", version: "0.0.0" });
    return (value?.pages ?? []).map((page) => ({ page, paper: value?.paper as { width: number; height: number } }));
  });

  test("no text lies on another", () => {
    expect(pages.flatMap(({ page }) => overlaps(page))).toEqual([]);
  });

  test("no line runs through the text of a drawing", () => {
    const found = pages.flatMap(({ page }) =>
      groupsOf(page.items, "figure").flatMap((figure) =>
        struckThrough(figure.items).map((text) => `page ${page.number}, ${figure.alt?.slice(0, 40)}: ${text}`),
      ),
    );
    expect(found).toEqual([]);
  });

  test("all texts stand between the margins", () => {
    for (const { page, paper } of pages)
      for (const text of textsOf(page.items)) {
        const [box, where] = [boxOf(text), `page ${page.number}: ${text.text}`];
        expect(box.left, where).toBeGreaterThanOrEqual(MARGIN.left - 0.1);
        expect(box.right, where).toBeLessThanOrEqual(paper.width - MARGIN.right + 0.1);
        expect(box.bottom, where).toBeLessThanOrEqual(paper.height - MARGIN.bottom + 4);
      }
  });

  test("every drawing has words for who cannot see it, the part's name among those of its own", () => {
    // A step without a picture has an empty figure, which is not written.
    for (const figure of pages.flatMap(({ page }) => groupsOf(page.items, "figure")))
      if (leaves(figure.items).length > 0) expect(figure.alt).toMatch(/\w/);
    const drawn = pages
      .flatMap(({ page }) => groupsOf(page.items, "figure"))
      .flatMap(({ alt = "" }) => alt.match(/^Part (\w+), /)?.[1] ?? []);
    const bored = build.parts.filter(({ id }) => build.holes.some((hole) => hole.part === id && hole.atBench));
    for (const { mark } of bored) expect(drawn, mark).toContain(mark);
  });

  test("the step that makes jigs has their drawings beside it, or a word of where they are", () => {
    const step = build.steps.find(({ unit }) => unit === "jigs");
    const own = pages.filter(({ page }) => page.of.includes(`step ${step?.number}`)).map(({ page }) => page);
    const drawn = own
      .flatMap((page) => groupsOf(page.items, "figure"))
      .flatMap(({ alt = "" }) => alt.match(/^Jig for .*/) ?? []);
    const sent = own.some((page) => /[Jj]ig \d+ (is|are) drawn under/.test(wordsOf(page)));
    if (step) expect(drawn.length > 0 || sent).toBe(true);
  });

  test("every part, purchase and step is on them", () => {
    const words = pages.map(({ page }) => wordsOf(page)).join("\n");
    for (const { mark } of build.parts) expect(words.split("\n")).toContain(mark);
    for (const { number } of build.steps)
      expect(
        pages.some(({ page }) => page.of.includes(`step ${number}`)),
        `step ${number}`,
      ).toBe(true);
    expect(words).not.toMatch(/undefined|NaN|\[object|null\b/);
  });
});
