import type { Chance } from "./chance.ts";
import type { Problem } from "./problem.ts";

/** Sizes are taken to be smaller by up to this share, most often far less, so that orders differ. */
const NOISE = 0.1;

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
export function gauged(parts: number[], problem: Problem, chance: Chance, keys: Float64Array): void {
  const size = SIZES[chance.below(SIZES.length)] ?? (() => 1);
  const share = chance.next();
  const noise = NOISE * share * share * share;
  for (const part of parts) {
    const { width = 0, length = 0 } = problem.parts[part]?.ways[0] ?? {};
    keys[part] = size(width, length) * (1 - noise * chance.next());
  }
  parts.sort((a, b) => (keys[b] as number) - (keys[a] as number) || a - b);
}
