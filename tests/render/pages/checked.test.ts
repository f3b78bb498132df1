import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { printable } from "../../../src/render/typeset/measure.ts";
import { TOLD } from "../../../src/solve/build/checks/told.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { overlaps, wordsOf } from "../boxes.ts";

const build = solveText(textOf("dining-bench")).build;
if (build === undefined) throw new Error("the bench has errors");
const [first, ...others] = build.checks;
if (first === undefined) throw new Error("the bench has no checks");
const because = "the reader is told to plane it";
const doubtful = { ...build, checks: [{ ...first, verdict: "accepted" as const, because }, ...others] };

/** Without blanks, where the page breaks its lines. */
const plain = (text: string): string => text.replaceAll("\u2044", "/").replaceAll(/\s/gu, "");

function wordsFor(author: boolean) {
  const drawn = render(doubtful, { paper: "letter", date: "2025-03-01", version: "0", author }).value;
  const pages = drawn?.pages ?? [];
  expect(pages.flatMap(overlaps)).toEqual([]);
  return pages
    .slice(1)
    .map(wordsOf)
    .join(" ")
    .replaceAll(/[\s\u202f]+/gu, " ");
}

test("the reader's copy has what was looked at, and what is accepted with its figure and its reason, without sources", () => {
  const text = wordsFor(false);
  expect(text).toContain("What has been checked");
  expect(text).toContain("Seats do not bend too far under those who sit on them.");
  expect(text).toMatch(/: not true: 1⁄4 in, where 1⁄8 in is the usual limit\. The reader is told to plane it\./u);
  for (const word of ["[seat-bends]", "Wood Handbook", "Photographs to take", "author’s copy"])
    expect(text).not.toContain(word);
});

test("the author's copy has every check with its source, and photographs of every step", () => {
  const text = wordsFor(true);
  for (const { rule, basis } of doubtful.checks) {
    expect(text).toContain(`[${rule}]`);
    expect(text).toContain(printable(basis).replaceAll(/[\s\u202f]+/gu, " "));
  }
  expect(text).toContain("author’s copy");
  const shots = text.slice(text.lastIndexOf("Photographs to take"));
  for (const { title } of doubtful.steps) expect(plain(shots)).toContain(plain(`${title}: the work in hand`));
});

test("every check is told to the reader in a sentence", () => {
  const folder = new URL("../../../src/findings/rules/", import.meta.url);
  const rules = new Set(readdirSync(folder).map((file) => file.replace(/\.ts$/u, "")));
  expect([...TOLD.keys()].filter((rule) => !rules.has(rule))).toEqual([]);
  const checks = new URL("../../../src/solve/build/checks/", import.meta.url);
  const used = readdirSync(checks, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .flatMap((file) => [...readFileSync(new URL(file, checks), "utf8").matchAll(/rule: "([a-z-]+)"/gu)])
    .map(([, rule = ""]) => rule);
  expect(used.length).toBeGreaterThan(20);
  expect([...new Set(used)].filter((rule) => !TOLD.has(rule))).toEqual([]);
});
