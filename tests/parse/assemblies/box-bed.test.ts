import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { toInches } from "../../../src/units/length.ts";
import { solveText } from "../../examples/compiled.ts";
import { partsOf, sound } from "./opened.ts";

const bed = readFileSync(new URL("../../solve/design/plans/box-bed.yaml", import.meta.url), "utf8");
/** A 2x12 measures 1 1/2 × 11 1/4, a 1x4 3/4 × 3 1/2, a 2x2 1 1/2 square, a 2x4 1 1/2 × 3 1/2 (American Softwood Lumber Standard, PS 20). */
const slatsOf = (text: string) =>
  (solveText(text).build?.parts ?? [])
    .filter(({ id }) => id.startsWith("bed.slat."))
    .map(({ body }) => [toInches(body.low[1]), toInches(body.high[1])] as [number, number])
    .toSorted(([a], [b]) => a - b);
/** What lies open before, between and behind the slats. */
const gaps = (text: string, long: number): readonly number[] => {
  const ends = [1.5, ...slatsOf(text).flat(), long - 1.5];
  return ends.flatMap((at, i) => (i % 2 === 0 ? [(ends[i + 1] ?? at) - at] : []));
};

test("a bed has slats from side to side on ledgers, a beam and a post", () => {
  expect(partsOf(bed)).toMatchObject({
    "bed.box.front-panel": "1 1/2 × 11 1/4 × 57",
    "bed.box.left-side": "1 1/2 × 11 1/4 × 75", // 78 − 2 × 1 1/2
    "bed.slat.1": "3/4 × 3 1/2 × 53 3/4", // 57 − 3 − 2 × 1/8
    "bed.left-ledger": "1 1/2 × 1 1/2 × 75",
    "bed.middle-beam": "1 1/2 × 3 1/2 × 75",
    "bed.post": "1 1/2 × 3 1/2 × 4", // 11 1/4 − 3 − 3/4 − 3 1/2
  });
  const build = sound(bed);
  const top = (id: string) => toInches(build.parts.find((part) => part.id === id)?.body.high[2] as never);
  expect([top("bed.slat.1"), top("bed.left-ledger"), top("bed.middle-beam")]).toEqual([8.25, 7.5, 7.5]);
});
test("it has as many slats as keep the gaps under 2 1/2: (78 − 2 1/2) / 6 = 12.6, 13; (75 − 13 × 3 1/2) / 14 = 2.1", () => {
  expect(slatsOf(bed)).toHaveLength(13);
  for (const gap of gaps(bed, 78)) expect(Math.abs(gap - 29.5 / 14)).toBeLessThan(1 / 16);
});
test.each([
  ["72", "2 1/2"],
  ["84", "2"],
  ["77 1/2", "3"],
])("a bed %s long has no gap over %s", (long, most) => {
  const text = bed.replace("value: 78", `value: ${long}`).replace("wide: 3 1/2,", `wide: 3 1/2, most gap: ${most},`);
  const [length, widest] = [long, most].map((said) => said.split(" ").reduce((so, each) => so + half(each), 0));
  expect(slatsOf(text).length).toBeGreaterThan(8);
  expect(Math.max(...gaps(text, length ?? 0))).toBeLessThan((widest ?? 0) + 1 / 16);
});
test("without its beam the slats sag: 30 lb on 51 in", () => {
  const rules = solveText(bed.replace(/ +middle:.*\n/u, "")).findings.map(({ rule }) => rule);
  expect(rules).toContain("shelf-sags");
});

const half = (said: string): number => (said === "1/2" ? 0.5 : Number(said));
