/** Sticks are ripped from what was planed whole: hands stay away from the knives. Common practice, no source. */
import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";
import { plain } from "./examples.ts";

// Beads 1/4 in wide are sawn 1/2 in wide; shelf blocks of 1 1/4 in are short besides, which is told by itself.
test("glass beads stay in one wider piece until it is planed", () => {
  const [told, ...others] = built("old-plans/china-closet")
    .steps.filter(({ title }) => /^Saw the rough pieces from white oak/u.test(plain(title)))
    .flatMap(({ text }) => text.map(plain).filter((line) => line.includes("narrower than")));
  expect(told).toMatch(/^(?:[A-Z]+, )+[A-Z]+ and [A-Z]+ are narrower than 1 1\/2 in:/u);
  expect(told).toContain(
    "such a piece is flattened and planed whole, and its sticks are ripped off when it has its thickness",
  );
  expect(others).toEqual([]);
});
