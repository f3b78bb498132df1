import fc from "fast-check";
import { expect, test } from "vitest";
import { closedSets, smallestClosed } from "../../../src/solve/build/order/closed.ts";

const graphs = fc
  .integer({ min: 1, max: 7 })
  .chain((n) =>
    fc.record({ n: fc.constant(n), edges: fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 2 * n }) }),
  );

/** By looking at every subset. */
function everyClosed(n: number, blocked: (a: number, b: number) => boolean): readonly (readonly number[])[] {
  const nodes = Array.from({ length: n }, (_, i) => i);
  return Array.from({ length: 2 ** n - 1 }, (_, bits) => nodes.filter((i) => ((bits + 1) >> i) & 1)).filter((set) =>
    set.every((a) => nodes.every((b) => set.includes(b) || !blocked(a, b))),
  );
}

test("closed sets, and the smallest of them, are those found among all subsets", () => {
  fc.assert(
    fc.property(graphs, ({ n, edges }) => {
      const blocked = (a: number, b: number) => edges.some(([x, y]) => x === a && y === b);
      const body = Array.from({ length: n }, (_, i) => i);
      const all = everyClosed(n, blocked);
      const proper = all.filter((set) => set.length < n).map((set) => set.join());
      expect(
        closedSets(body, blocked, 1_000)
          .map((set) => set.join())
          .sort(),
      ).toEqual(proper.sort());
      const smallest = all.filter(
        (set) => !all.some((other) => other.length < set.length && other.every((a) => set.includes(a))),
      );
      expect(
        smallestClosed(body, blocked)
          .map((set) => set.join())
          .sort(),
      ).toEqual(smallest.map((set) => set.join()).sort());
    }),
  );
});

test("no more sets than asked for", () => {
  const body = Array.from({ length: 10 }, (_, i) => i);
  expect(closedSets(body, () => false, 100).length).toBe(100);
});
