import fc from "fast-check";
import { expect, test } from "vitest";
import { block } from "../../../src/render/typeset/atom.ts";
import { fewestLines, shareWidth } from "../../../src/render/typeset/share-width.ts";
import { cutStack, stack } from "../../../src/render/typeset/stack.ts";

const needs = fc.array(
  fc.tuple(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 300 })).map(([least, more]) => ({
    least,
    natural: least + more,
  })),
  { minLength: 1, maxLength: 8 },
);

test("columns never take more than there is, and get what they need where there is enough", () => {
  fc.assert(
    fc.property(needs, fc.integer({ min: 20, max: 2000 }), (list, available) => {
      const widths = shareWidth(list, available, null);
      const total = widths.reduce((a, b) => a + b, 0);
      expect(total).toBeLessThanOrEqual(available + 1e-6);
      const natural = list.reduce((sum, need) => sum + need.natural, 0);
      const least = list.reduce((sum, need) => sum + need.least, 0);
      list.forEach((need, i) => {
        if (natural <= available) expect(widths[i]).toBe(need.natural);
        else if (least <= available) expect(widths[i]).toBeGreaterThanOrEqual(need.least - 1e-9);
      });
    }),
    { seed: 1 },
  );
});

test("a half empty column gives to one whose rows would have more lines", () => {
  // Words of 10 and blanks of 2: two words want 22, three 34. The second column has 60 and needs 20.
  const lines = (column: number, width: number): readonly number[] => {
    const words = column === 0 ? [2, 3] : [1, 1];
    return words.map((count) => Math.ceil(count / Math.max(1, Math.floor((width + 2) / 12))));
  };
  const needs = [
    { natural: 34, least: 10 },
    { natural: 60, least: 20 },
  ];
  const [first = 0, second = 0] = fewestLines([12, 60], needs, lines);
  expect(first + second).toBe(72);
  expect(first).toBeGreaterThanOrEqual(34);
  expect(second).toBeGreaterThanOrEqual(20);
  // Nothing to win: nothing changes.
  expect(fewestLines([34, 60], needs, lines)).toEqual([34, 60]);
});

test("the column that stretches takes the rest", () => {
  expect(
    shareWidth(
      [
        { natural: 10, least: 5 },
        { natural: 20, least: 5 },
      ],
      100,
      1,
    ),
  ).toEqual([10, 90]);
});

test("the column that stretches gives up width before the others do", () => {
  const list = [
    { natural: 100, least: 40 },
    { natural: 400, least: 60 },
  ];
  expect(shareWidth(list, 300, 1)).toEqual([100, 200]);
  expect(shareWidth(list, 300, null)[0]).toBeLessThan(100);
  expect(shareWidth(list, 150, 1)[0]).toBeLessThan(100);
});

test("a column of text is cut where atoms may part, and nothing is lost", () => {
  const atoms = [20, 20, 20, 20].map((height, i) => block(height, () => [], { above: 4, keep: i === 1 }));
  const [now, later] = cutStack(stack(atoms), 50);
  expect([now.atoms.length, later?.atoms.length]).toEqual([1, 3]);
  expect(now.height).toBe(20);
  expect(cutStack(stack(atoms), 92)[1]).toBeNull();
  const [first] = cutStack(stack(atoms), 5);
  expect(first.atoms).toHaveLength(1);
});
