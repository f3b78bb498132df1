import { describe, expect, test } from "vitest";
import type { Document } from "../../../src/render/document.ts";
import { type RenderOptions, render } from "../../../src/render/index.ts";
import { MARGIN } from "../../../src/render/style.ts";
import type { Build } from "../../../src/solve/build.ts";
import { boxOf, itemsOf, overlaps, textsOf, wordsOf } from "../boxes.ts";
import { bench, manyParts } from "../fixture/bench.ts";
import { metric, wordy } from "../fixture/variants.ts";

function pagesOf(build: Build, paper: RenderOptions["paper"]): Document {
  const { value } = render(build, { paper, date: "2025-03-01", version: "0.0.0" });
  if (value === undefined) throw new Error("no document");
  return value;
}

const builds = [
  ["a bench", bench()],
  ["a bench in millimetres", metric()],
  ["long names and long texts", wordy()],
  ["60 parts and steps", manyParts(60)],
] as const;
const papers = ["letter", "a4"] as const;
const cases = builds.flatMap(([name, build]) => papers.map((paper) => [name, paper, build] as const));

describe.each(cases)("%s on %s", (_, paper, build) => {
  const document = pagesOf(build, paper);
  const { pages } = document;

  test("no text lies on another", () => {
    expect(pages.flatMap(overlaps)).toEqual([]);
  });

  test("all texts stand between the margins", () => {
    const { width, height } = document.paper;
    for (const page of pages)
      for (const text of textsOf(page.items)) {
        const box = boxOf(text);
        const where = `page ${page.number}: ${text.text}`;
        expect(box.left, where).toBeGreaterThanOrEqual(MARGIN.left - 0.1);
        expect(box.right, where).toBeLessThanOrEqual(width - MARGIN.right + 0.1);
        expect(box.top, where).toBeGreaterThan(24);
        expect(box.bottom, where).toBeLessThanOrEqual(height - MARGIN.bottom + 4);
      }
  });

  test("no type is smaller than 10 points, none of a step smaller than 12 except in pictures and captions", () => {
    for (const page of pages)
      for (const text of textsOf(page.items)) expect(text.size, text.text).toBeGreaterThanOrEqual(10);
    for (const page of pages.filter(({ kind }) => kind === "steps")) {
      const sizes = page.items
        .filter((item) => item.kind === "group" && item.role === "paragraph")
        .flatMap((item) => textsOf([item]))
        .filter(({ ink }) => ink[0] < 0.2)
        .map(({ size }) => size);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
    }
  });

  test("every part is in the cut list and in the key of the parts", () => {
    const cut = textsOf(pages.flatMap((page) => page.items)).map(({ text }) => text);
    for (const line of build.cutList)
      expect(cut.filter((t) => t === line.mark).length, line.mark).toBeGreaterThanOrEqual(2);
  });

  test("every step is there once, on one page with its picture, in order", () => {
    const of = pages.flatMap((page) => page.of.filter((what) => what.startsWith("step ")));
    expect([...new Set(of)]).toEqual(build.steps.map(({ number }) => `step ${number}`));
    for (const page of pages) {
      const steps = page.of.filter((what) => what.startsWith("step "));
      const figures = page.items.filter((item) => item.kind === "group" && item.role === "figure");
      if (page.kind === "steps") expect(figures).toHaveLength(steps.length);
      if (page.kind === "steps") expect(steps.length, `page ${page.number}`).toBeGreaterThan(0);
    }
  });

  test("pages are numbered, and the contents lead to them", () => {
    expect(pages.map(({ number }) => number)).toEqual(pages.map((__, i) => i + 1));
    for (const page of pages.slice(1)) expect(wordsOf(page)).toContain(`page ${page.number} of ${pages.length}`);
    const links = itemsOf(pages[0]?.items ?? [], "link");
    expect(links.length).toBeGreaterThan(6);
    const said = textsOf(pages[0]?.items ?? []);
    for (const { to, x, y, width, height } of links) {
      const page = pages.find(({ items }) => itemsOf(items, "anchor").some(({ name }) => name === to));
      const inside = said.filter((t) => t.x >= x && t.x <= x + width && t.y >= y && t.y <= y + height);
      expect(inside.map(({ text }) => text).at(-1), to).toBe(String(page?.number));
    }
  });
});

test("a plain bench takes seven to nine pages", () => {
  for (const paper of papers) {
    const { length } = pagesOf(bench(), paper).pages;
    expect(length).toBeGreaterThanOrEqual(7);
    expect(length).toBeLessThanOrEqual(9);
  }
});

test("what has nothing to say does not appear", () => {
  const nothing = { purchases: [], tools: [], layouts: [], holes: [], drilling: [], fasteners: [], fastenerTable: [] };
  const bare: Build = { ...bench(), ...nothing, steps: [] };
  const titles = (build: Build): (string | undefined)[] =>
    pagesOf(build, "letter").pages.flatMap(({ items }) =>
      itemsOf(items, "anchor")
        .filter(({ bookmark }) => bookmark?.level === 1)
        .map(({ bookmark }) => bookmark?.title),
    );
  const always = ["Boot bench", "The piece", "The parts", "Before you start"];
  expect(titles(bare)).toEqual([...always, "Cut list", "Part drawings"]);
  const plain = bench().parts.map((part) => ({ ...part, features: [] }));
  expect(titles({ ...bare, parts: plain })).toEqual([...always, "Cut list"]);
  expect(titles(bench())).toEqual([
    ...always,
    "What to buy",
    "Tools",
    "Cut list",
    "Cutting layouts",
    "Part drawings",
    "Holes and fasteners",
    "Step by step",
  ]);
});

test("fewer boards are ruled out only where that is proven", () => {
  const words = (optimal: boolean, countBound: number): string => {
    const layoutProof = bench().layoutProof.map((proof) => ({ ...proof, optimal, countBound }));
    return pagesOf({ ...bench(), layoutProof }, "letter")
      .pages.map(wordsOf)
      .join(" ");
  };
  expect(words(true, 4)).toContain("Fewer will not do");
  expect(words(false, 3)).not.toContain("Fewer will not do");
  expect(words(false, 3)).toContain("Fewer than 3 cannot do; this layout takes 4, and none with fewer was found");
  expect(words(false, 4)).not.toContain("Fewer will not do");
});

test("tenons are said to be in the length, where there are any", () => {
  const words = (build: Build): string => pagesOf(build, "letter").pages.map(wordsOf).join(" ");
  expect(words(bench())).not.toContain("included in the length");
  const [first, ...others] = bench().parts;
  if (first === undefined) throw new Error("no parts");
  const [lap] = bench().parts.flatMap(({ features }) => features);
  if (lap === undefined || !("size" in lap)) throw new Error("no laps");
  const tenoned = { ...first, features: [{ ...lap, kind: "tenon" as const }] };
  expect(words({ ...bench(), parts: [tenoned, ...others] })).toContain("Tenons and tongues are included in the length");
});

test("characters that the typeface lacks are found, and stand as boxes", () => {
  const design = { ...bench().design, title: "Bench 台" };
  const parts = bench().parts.map((part) => (part.mark === "A" ? { ...part, name: "🪑 slat" } : part));
  const { value, findings } = render({ ...bench(), design, parts }, { paper: "a4", date: "2025-03-01", version: "0" });
  expect(findings.map(({ rule }) => rule)).toEqual(Array.from({ length: 5 }, () => "character-not-in-type"));
  expect(findings[0]?.message).toBe("the title has a character that cannot be printed: `台` (U+53F0)");
  expect(value?.pages[0] && wordsOf(value.pages[0])).toContain("Bench □");
  expect(render(bench(), { paper: "a4", date: "2025-03-01", version: "0" }).findings).toEqual([]);
});
