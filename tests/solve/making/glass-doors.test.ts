import { expect, test } from "vitest";
import { built } from "../../examples/compiled.ts";

const lines = (name: string): readonly string[] => built(name).steps.flatMap(({ text }) => text);

// Two doors side by side, with panes (common practice, no source).
test("doors with panes have their coats when they are tried, and get them again where they are planed", () => {
  const [tried] = lines("old-plans/china-closet").filter((line) => line.includes("Plane what rubs now"));
  expect(tried).toMatch(/Plane what rubs now, and put the coats on again there\.$/u);
  const [bare] = lines("old-plans/medicine-cabinet").filter((line) => line.includes("Plane what rubs now"));
  expect(bare ?? "while the wood is bare.").toMatch(/while the wood is bare\.$/u);
});

test("doors side by side are not numbered from below", () => {
  expect(lines("old-plans/china-closet").some((line) => line.includes("from below, 1 to 2"))).toBe(false);
  expect(lines("overalls-chest").some((line) => line.includes("from below, 1 to 5"))).toBe(true);
});

test("what lies already as it must is not lifted, and eye protection is told once in a step", () => {
  const { steps } = built("old-plans/china-closet");
  const [, blocks] = steps.filter(({ title }) => title.startsWith("Screw on two shelf blocks (AC), at"));
  expect(blocks?.cautions.filter((caution) => caution.includes("lift with a second person"))).toEqual([]);
  const twice = steps.filter(({ cautions }) => cautions.filter((each) => /eye protection/iu.test(each)).length > 1);
  expect(twice.map(({ title }) => title)).toEqual([]);
  // Where it is turned it is lifted.
  const lifted = steps.filter(({ cautions }) => cautions.some((each) => each.startsWith("This weighs about")));
  expect(lifted.length).toBeGreaterThan(0);
});
