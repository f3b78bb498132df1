import { expect, test } from "vitest";
import { render } from "../../../src/render/index.ts";
import { said, solvedOnce, textOf } from "../../examples/compiled.ts";
import { overlaps, wordsOf } from "../boxes.ts";

/** An example without what it says of finish. */
const unfinished = (name: string): string => textOf(name).replace(/^finish:.*\n(?:[ \t]+.*\n)*/mu, "");

const known = new Map<string, ReturnType<typeof printed>>();
function pagesOf(text: string): ReturnType<typeof printed> {
  const found = known.get(text) ?? printed(text);
  known.set(text, found);
  return found;
}

function printed(text: string) {
  const { build, findings } = solvedOnce(text)();
  if (!build) throw new Error(said(findings).join("\n"));
  const pages = render(build, { paper: "letter", date: "2025-03-01", version: "0" }).value?.pages ?? [];
  return {
    build,
    pages,
    words: pages
      .slice(1)
      .map(wordsOf)
      .join(" ")
      .replaceAll(/[\s\u202f]+/gu, " "),
  };
}

test("every caution, all of the room and every cure stands in the plan", () => {
  const { build, pages, words } = pagesOf(textOf("key-cabinet"));
  const { cautions, room, cures } = build.advice ?? { cautions: [], room: [], cures: [] };
  for (const { head } of [...cautions, ...room, ...cures]) expect(words).toContain(head);
  expect(words).toContain("Finishing");
  expect(words).toContain("water-borne clear coat");
  expect(pages.flatMap(overlaps)).toEqual([]);
});

test("a plan without finish has no page of finishing", () => {
  expect(pagesOf(unfinished("boot-bench")).words).not.toContain("Finishing");
});

test("who bores for dowels is told of the bushing that the bit passes; a plan without them is not", () => {
  expect(pagesOf(textOf("loan-desk")).words).toContain("the bit passes a bushing first");
  expect(pagesOf(textOf("dining-bench")).words).not.toContain("bushing first");
});

test("how far sizes are rounded is told of widths and lengths only: sixty-fourths are printed too", () => {
  const { words } = pagesOf(textOf("key-cabinet"));
  expect(words).toContain("Widths and lengths of parts are rounded to 1\u204416 in.");
  expect(words).toMatch(/\d\u204464 in/u);
  expect(words).toContain("told as fine as they are, to 1\u204464 in");
});

test("waits are filled only as far as there is work that does not depend on them", () => {
  expect(pagesOf(textOf("key-cabinet")).words).toContain("as far as there is any");
});
