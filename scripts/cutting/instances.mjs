// Cutting problems for the benchmark: read from files, written out, or made by a rule.
import { existsSync, readFileSync } from "node:fs";

/** An instance of a file as a problem: `W`, `H` or `bins` with costs; `items` as [width, height] or [width, height, copies]. */
export function problemOf(instance, turn) {
  const bins = (instance.bins ?? [{ w: instance.W, h: instance.H, cost: 1 }]).map(({ w, h, cost }) => ({
    width: w,
    length: h,
    cost,
    most: Number.POSITIVE_INFINITY,
  }));
  const fits = (way) => bins.some((bin) => way.width <= bin.width && way.length <= bin.length);
  const parts = instance.items.flatMap(([w, h, copies = 1]) => {
    const ways = [{ width: w, length: h }, ...(turn && w !== h ? [{ width: h, length: w }] : [])].filter(fits);
    return Array.from({ length: copies }, () => ({ ways }));
  });
  return { bins, parts, stages: 3 };
}

/** The instances of a file, or null when there is no such file. */
export const read = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, "utf8")).instances : null);

export const nameOf = ({ id, cl, n, i }, index) =>
  id ?? (cl === undefined ? `${index + 1}` : `class ${cl}, ${n} parts, ${i}`);

/** Bars: lengths × how many of each. */
const bars = (name, stock, kinds, best) => ({
  ...{ name, best },
  problem: {
    bins: [{ width: 1, length: stock, cost: 1, most: Number.POSITIVE_INFINITY }],
    parts: kinds.flatMap(([length, count]) => Array.from({ length: count }, () => ({ ways: [{ width: 1, length }] }))),
    stages: 3,
  },
});

/** The generator of the minimal standard (S. K. Park and K. W. Miller, 1988). */
export function chance(seed) {
  let state = seed;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}

/** As E. Falkenauer (1996): three items, one of 380 to 490 and one of 250 up to half of what is left, fill a bin of 1000. */
function triplets(count, seed) {
  const below = chance(seed);
  return Array.from({ length: count }, () => {
    const first = 380 + below(111);
    const second = 250 + below(Math.floor((1000 - first) / 2) - 250);
    return [first, second, 1000 - first - second];
  }).flatMap((three) => three.map((length) => [length, 1]));
}

/** The first two are printed in many places; their optimum is 73 and 453. */
export const BARS = [
  bars(
    "bars of 5600",
    5600,
    [1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200].map((length, i) => [
      length,
      [22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20][i],
    ]),
    73,
  ),
  bars(
    "rolls of 100",
    100,
    [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
    453,
  ),
  ...[20, 40, 83].map((count) => bars(`triplets, ${3 * count} parts`, 1000, triplets(count, count), count)),
];

/** Furniture parts of 60 to 900 × 60 to 600 mm from sheets of 1220 × 2440 mm, kerf 3 mm, a third of them free to turn. */
export function manyParts(count) {
  const below = chance(count);
  const parts = Array.from({ length: count }, () => {
    const [width, length] = [63 + below(540), 63 + below(840)];
    return { ways: [{ width, length }, ...(below(3) === 0 ? [{ width: length, length: width }] : [])] };
  });
  return { bins: [{ width: 1220, length: 2440, cost: 1, most: Number.POSITIVE_INFINITY }], parts, stages: 3 };
}
