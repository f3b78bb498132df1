import type { Chance } from "./chance.ts";
import type { Problem } from "./problem.ts";

/** Sizes are taken to be smaller by up to this share, most often far less, so that orders differ. */
const NOISE = 0.1;

/** The first so many orders go by weight instead: area, and more where a part stayed out for long. */
const WEIGHTED = 2;

/** What parts are ordered by; area, which is most often best, three times. */
const SIZES: readonly ((width: number, length: number) => number)[] = [
  (width, length) => width * length,
  (width, length) => width * length,
  (width, length) => width * length,
  (width, length) => Math.max(width, length),
  (width) => width,
  (_, length) => length,
  (width, length) => Math.min(width, length),
  () => 1,
];

/** Orders parts by a size chosen by chance, the largest first more or less. `keys` is room for a number for each part. */
export function gauged(
  parts: number[],
  problem: Problem,
  chance: Chance,
  keys: Float64Array,
  weights: readonly number[],
): void {
  const which = chance.below(SIZES.length);
  const size = SIZES[which] ?? (() => 1);
  const weighted = which < WEIGHTED;
  const share = chance.next();
  const noise = NOISE * share * share * share;
  for (const part of parts) {
    const { width = 0, length = 0 } = problem.parts[part]?.ways[0] ?? {};
    keys[part] = (weighted ? (weights[part] as number) : size(width, length)) * (1 - noise * chance.next());
  }
  parts.sort((a, b) => (keys[b] as number) - (keys[a] as number) || a - b);
}
