import { expect, test } from "vitest";
import { Dive } from "../../../../src/solve/build/cutting/search/dive.ts";
import type { Problem } from "../../../../src/solve/build/cutting/search/problem.ts";
import { solve } from "../../../../src/solve/build/cutting/search/solve.ts";
import { wrongIn } from "./tree.ts";

const ENDLESS = Number.POSITIVE_INFINITY;

/** Width and length of the fourth list of 60 parts of class 8 of S. Martello and D. Vigo (1998); sheets are 100 × 100. */
const PUBLISHED = `
  1 74, 24 88, 16 77, 98 7, 9 81, 22 71, 29 88, 100 39, 85 45, 31 98, 68 11, 16 88, 9 86, 67 46, 41 66, 92 87, 1 83,
  35 70, 39 67, 31 68, 5 88, 30 86, 99 65, 32 88, 21 66, 36 75, 21 93, 44 81, 48 87, 4 10, 53 76, 17 83, 37 24, 33 78,
  49 82, 52 88, 38 28, 25 91, 5 89, 50 75, 1 96, 27 78, 82 6, 8 1, 25 80, 42 73, 4 92, 29 100, 10 72, 78 15, 45 89,
  60 58, 8 73, 6 87, 48 93, 4 87, 17 81, 5 71, 13 71, 10 75`;

const parts = PUBLISHED.split(",").map((part) => {
  const [width = 0, length = 0] = part.trim().split(" ").map(Number);
  return {
    ways: [
      { width, length },
      { width: length, length: width },
    ],
  };
});

// 13 is the fewest published for it when parts may turn (three stages with trimming), and is proven; taking out and putting in alone stops at 14.
test("a published list takes the fewest sheets known, and it is proven", () => {
  const problem: Problem = { bins: [{ width: 100, length: 100, cost: 1, most: ENDLESS }], parts, stages: 3 };
  const found = solve(problem, "normal");
  expect(wrongIn(problem, found?.packed ?? [])).toEqual([]);
  expect(found).toMatchObject({ count: 13, countBound: 13 });
}, 60_000);

test("mixtures take no more of a bin than there is, every part once, and pieces that can be carried", () => {
  const problem: Problem = {
    bins: [
      { width: 100, length: 100, cost: 5, most: ENDLESS },
      { width: 60, length: 100, cost: 2, most: 3 },
      { width: 100, length: 90, cost: 0, most: 2, onHand: true },
    ],
    parts: parts.filter(({ ways: [way] }) => Math.min(way?.width ?? 0, way?.length ?? 0) <= 50).slice(0, 24),
    stages: 3,
    carry: { shorter: 60, longer: 100 },
  };
  const dive = new Dive(problem);
  for (let turn = 0; turn < 2; turn += 1) {
    const bins = dive.down(1000, { left: 50e6 }) ?? [];
    expect(wrongIn(problem, bins)).toEqual([]);
    const firsts = bins.flatMap(({ type, root: { rip, width, length, kids } }) =>
      type === 1 ? [] : kids.map((kid) => (rip ? [kid.width, length] : [width, kid.length])),
    );
    for (const sizes of firsts) expect(Math.min(...sizes)).toBeLessThanOrEqual(60);
  }
}, 60_000);
