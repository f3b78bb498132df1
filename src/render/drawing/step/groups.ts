/** What travels one way needs one arrow. */
import type { Vec } from "../../../geometry/types.ts";
import { dot } from "../../../geometry/vec.ts";

/** Ids of what moves, and the unit vector of its way. */
export interface Group {
  readonly parts: readonly string[];
  readonly along: Vec;
  /** It comes off. */
  readonly leaves: boolean;
}

export function together(groups: readonly Group[]): readonly Group[] {
  const joined: Group[] = [];
  for (const group of groups) {
    const i = joined.findIndex(({ along, leaves }) => leaves === group.leaves && dot(along, group.along) > 1 - 1e-9);
    const same = joined[i];
    if (same) joined[i] = { ...same, parts: [...same.parts, ...group.parts] };
    else joined.push(group);
  }
  return joined;
}
