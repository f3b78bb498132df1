import { expect, test } from "vitest";
import { inSteps, type Line, reachOf, readsDown, setLines } from "../../../src/render/drawing/part/ladder-lines.ts";

/** Every letter is five points wide. */
const pen = { measure: (text: string) => 5 * text.length, print: String };
const line = (from: number, to: number, ends: readonly [string, string]): Line => ({
  ...{ from, to, places: [from, (from + to) / 2, to], ends, words: "4 × 32" },
});

test("short rows near each other have their words below them, and no extension line in a word", () => {
  const lines = [line(40, 70, ["232.5", "328.5"]), line(82, 112, ["366.5", "462.5"])];
  const set = setLines(lines, [0, 140], pen) ?? [];
  expect(set.map(({ level }) => level)).toEqual([0, 0]);
  expect(set.map(({ words }) => words.map(({ text }) => text))).toEqual([
    ["4 × 32, 232.5 to 328.5"],
    ["4 × 32, 366.5 to 462.5"],
  ]);
  // Each is 110 wide, moved to where it goes in, and they are not on one level.
  for (const { low, high } of set) expect([low >= -0.1, high <= 140.1]).toEqual([true, true]);
  expect(new Set(set.map(({ words }) => words[0]?.down)).size).toBe(2);
  expect(reachOf(set)).toBeGreaterThan(0);
});

test("a long row has all its words in its line", () => {
  const [only] = setLines([line(20, 200, ["1", "9"])], [0, 220], pen) ?? [];
  expect(only?.words.map(({ text, down }) => [text, down])).toEqual([
    ["1", 0],
    ["4 × 32", 0],
    ["9", 0],
  ]);
});

test("words that are wider than all the room go in nowhere", () => {
  expect(setLines([line(20, 40, ["232.5", "328.5"])], [0, 50], pen)).toBeNull();
});

test("rows whose words would stand mixed have each a level of its own, in their order", () => {
  const four = [0, 60, 120, 180].map((from) => line(from + 5, from + 30, [`${from}`, `${from + 4}`]));
  const near = setLines(four, [0, 220], pen) ?? [];
  expect(readsDown(near)).toBe(false);
  const set = inSteps(four, [0, 220], pen) ?? [];
  expect(set.map(({ level, words }) => [level, words[0]?.down])).toEqual([
    [0, 1],
    [0, 2],
    [0, 3],
    [0, 4],
  ]);
  expect(readsDown(set)).toBe(true);
});

// By hand: with letters 5 wide, what is told of the first row, 45 wide, ends 16 short of "18.9" before the next one.
test("what stands below a row is not on the level of another row's figures, or it would be read with them", () => {
  const named = (letter: string, from: number): Line => ({
    ...line(from, from + 50, ["7.9", "12.9"]),
    words: `${letter}: 4 × 32`,
  });
  const set = setLines([named("a", 60), named("b", 150)], [0, 260], pen) ?? [];
  const all = set.flatMap(({ words, level }) =>
    words.map(({ middle, width, down }) => ({
      level: level + down,
      down,
      low: middle - width / 2,
      high: middle + width / 2,
    })),
  );
  expect(all.some(({ down }) => down > 0)).toBe(true);
  for (const under of all.filter(({ down }) => down > 0))
    for (const inLine of all.filter(({ down, level }) => down === 0 && level === under.level))
      expect(Math.max(inLine.low - under.high, under.low - inLine.high)).toBeGreaterThanOrEqual(30);
});
