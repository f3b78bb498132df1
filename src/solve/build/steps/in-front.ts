import { compare, subtract, toNumber } from "../../../units/rational.ts";
import type { Work } from "./draft.ts";

/** The foremost of some parts; of several that end there, the one of which most is seen. */
export function inFront(work: Work, ids: readonly string[]): string {
  const seen = (id: string): number => {
    const { low, high } = work.part(id).body;
    return toNumber(subtract(high[0], low[0])) * toNumber(subtract(high[2], low[2]));
  };
  const front = (id: string) => work.part(id).body.low[1];
  return ids.toSorted((a, b) => compare(front(a), front(b)) || seen(b) - seen(a))[0] ?? "";
}
