import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { partInStep } from "../../../src/render/pages/drawn-part.ts";
import { likeBefore } from "../../../src/render/pages/like-step.ts";
import type { Plan } from "../../../src/render/pages/plan.ts";
import { groupsOf } from "../../../src/render/write/gather.ts";
import type { Build } from "../../../src/solve/build.ts";
import { built } from "../../examples/compiled.ts";
import { wordsOf } from "../boxes.ts";

function pagesOf(name: string) {
  const build = built(name);
  return { build, pages: render(build, { paper: "letter", date: "2025-03-01", version: "0" }).value?.pages ?? [] };
}

const likes = (build: Build): readonly (number | null)[] =>
  likeBefore(
    build,
    build.steps.map((step) => partInStep({ build } as Plan, step)),
  );

test("a jig is drawn once, beside the step that makes it, with the steps that use it", () => {
  const { build, pages } = pagesOf("boot-bench");
  const [jig] = build.jigs ?? [];
  const uses = build.steps.flatMap(({ number, jigs }) => (jigs?.includes(jig?.id ?? "") ? [number] : []));
  expect(uses.length).toBeGreaterThan(0);
  const drawn = pages.filter(({ items }) =>
    groupsOf(items, "figure").some(({ alt }) => /jig|spacer|strip/iu.test(alt ?? "") && !/Step/u.test(alt ?? "")),
  );
  expect(drawn.map((page) => wordsOf(page).includes("Make the jig"))).toEqual([true]);
  expect(pages.map(({ kind }) => kind)).not.toContain("templates");
  const words = wordsOf(drawn[0] as (typeof pages)[number]).replaceAll(/[\s\u00a0]+/gu, " ");
  expect(words).toMatch(new RegExp(`Steps? ${uses.join(", ").replace(/, (?=\d+$)/u, " and ")}\\.`, "u"));
});

test("what goes on from the page before says so", () => {
  const { pages } = pagesOf("old-plans/medicine-cabinet");
  const words = pages.map((page) => wordsOf(page).replaceAll(/\s+/gu, " "));
  const goesOn = words.flatMap((text, i) => {
    const numbers = [...text.matchAll(/ (\d+), continued /gu)];
    return numbers.map(([, number]) => ({ i, number }));
  });
  expect(goesOn.length).toBeGreaterThan(0);
  // Before it, on this page or the one before, stands the step itself with its title.
  for (const { i, number } of goesOn)
    expect(`${words[i - 1]} ${words[i]}`).toMatch(new RegExp(` ${number} [A-Z][a-z]`, "u"));
});

test("steps that look alike: told as one before, or with the mirror image of its part", () => {
  const build = built("overalls-chest");
  const like = likes(build);
  const number = (title: RegExp) => build.steps.find((step) => title.test(step.title))?.number ?? 0;
  const [left, right] = [number(/the left side panel/u), number(/the right side panel/u)];
  expect(right).toBeGreaterThan(left);
  expect(like[right - 1]).toBe(left - 1);
  const posts = build.steps.filter(({ title }) => /Drill the chest posts/u.test(title)).map((step) => step.number - 1);
  expect(like[posts[1] ?? 0]).toBe(posts[0]);
  expect(like[0]).toBeNull();
});

test("parts that differ in one size only look alike too, and those that differ in more do not", () => {
  const build = built("old-plans/plant-stand");
  const like = likes(build);
  const index = (title: RegExp) => build.steps.findIndex((step) => title.test(step.title));
  // The rail, 3/4 × 3 × 11, and the lower rail, 3/4 × 2 × 11; the posts before them, 1 1/4 square, 20 long.
  const [rails, lower] = [index(/joints in the rails \(E\)/u), index(/tenons in the lower rails \(F\)/u)];
  expect(rails).toBeGreaterThan(0);
  expect(like[lower]).toBe(rails);
  expect(like[rails]).toBeNull();
});
