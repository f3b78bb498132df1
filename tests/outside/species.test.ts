import { expect, test } from "vitest";
import { type Figure, findSpecies, SPECIES } from "../../src/solve/design/stock/species.ts";

/**
 * Wood Handbook (FPL-GTR-190), Table 13-5: the coefficient belongs to 1 % of moisture, on the size at 10 %, and to a straight line
 * from 30 % to oven-dry. With the total shrinkage S of Table 4-3 that is C = S / (3000 - 20 S). It does not hold for the oaks,
 * whose coefficients are those of their commercial groups.
 */
const fromShrinkage = (shrinkage: number): number => shrinkage / (3000 - 20 * shrinkage);
const TABLES = "Wood Handbook FPL-GTR-190, Table";

interface Pair {
  readonly name: string;
  readonly coefficient: Figure;
  readonly shrinkage: Figure;
}
const pair = (name: string, coefficient: Figure | null, shrinkage: Figure | null): readonly Pair[] =>
  coefficient === null || shrinkage === null ? [] : [{ name, coefficient, shrinkage }];
const PAIRS = SPECIES.flatMap((wood) => [
  ...pair(wood.name, wood.radial, wood.shrinkageRadial),
  ...pair(wood.name, wood.tangential, wood.shrinkageTangential),
]);

test("coefficients follow from shrinkage where both are published", () => {
  const published = PAIRS.filter(
    ({ name, coefficient, shrinkage }) =>
      !name.includes("oak") && coefficient.source === `${TABLES} 13-5` && shrinkage.source === `${TABLES} 4-3`,
  );
  // Nine woods in both directions, and white fir across the rings.
  expect(published).toHaveLength(19);
  for (const { name, coefficient, shrinkage } of published)
    expect(Math.abs(coefficient.value - fromShrinkage(shrinkage.value)), name).toBeLessThanOrEqual(0.00001);
});

test("and where one of them is from memory, as their sources say", () => {
  const checked = PAIRS.filter(({ coefficient, shrinkage }) =>
    `${coefficient.source} ${shrinkage.source}`.includes("C = S / (3000 - 20 S)"),
  );
  expect(checked).toHaveLength(11);
  for (const { name, coefficient, shrinkage } of checked)
    expect(Math.abs(coefficient.value - fromShrinkage(shrinkage.value)), name).toBeLessThanOrEqual(0.00001);
});

test("western redcedar begins to shrink at 22 %", () => {
  const cedar = findSpecies("western redcedar");
  const from22 = (s: number): number => s / 100 / (22 * (1 - ((s / 100) * (22 - 10)) / 22));
  expect(cedar?.radial?.value).toBeCloseTo(from22(2.4), 5);
  expect(cedar?.tangential?.value).toBeCloseTo(from22(5), 5);
});

/** Wood Handbook FPL-GTR-190, Table 13-5, as read. */
test.each([
  ["red oak", 0.00158, 0.00369],
  ["white oak", 0.0018, 0.00365],
  ["hard maple", 0.00165, 0.00353],
  ["cherry", 0.00126, 0.00248],
  ["walnut", 0.0019, 0.00274],
  ["yellow birch", 0.00256, 0.00338],
  ["beech", 0.0019, 0.00431],
])("%s moves as published", (name, radial, tangential) => {
  const wood = findSpecies(name);
  expect([wood?.radial?.value, wood?.tangential?.value]).toEqual([radial, tangential]);
});
