import type { Problem } from "../search/problem.ts";

/** Parts that are equal, and may stand for each other in a bound. */
export interface Kind {
  readonly parts: readonly number[];
}

export function kindsOf(problem: Problem): readonly Kind[] {
  const kinds = new Map<string, number[]>();
  for (const [part, { ways }] of problem.parts.entries()) {
    const key = ways
      .map((way) => `${way.width} ${way.length}`)
      .toSorted()
      .join(" ");
    const same = kinds.get(key);
    if (same === undefined) kinds.set(key, [part]);
    else same.push(part);
  }
  return [...kinds.values()].map((parts) => ({ parts }));
}
