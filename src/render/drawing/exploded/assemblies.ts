/** A piece of many parts is taken apart assembly by assembly: what stands, and each door or drawer that is not like another. */
import type { Build } from "../../../solve/build.ts";
import { bodiesOf } from "../dimension/bodies.ts";

export interface Assembly {
  /** Ids of its parts. */
  readonly parts: ReadonlySet<string>;
  /** How many such there are. */
  readonly count: number;
}

/** More parts than this are too many for one picture. */
const MANY = 25;
/** Fewer parts stay with what they are hung on. */
const LEAST = 3;

/** What stands comes first; one alone where the piece is taken apart in one picture. */
export function assembliesOf(build: Pick<Build, "parts" | "motions">): readonly Assembly[] {
  const all = build.parts.map(({ id }) => id);
  const kinds = new Map<string, { parts: ReadonlySet<string>; count: number }>();
  const apart = new Set<string>();
  for (const { parts, moves } of bodiesOf(build)) {
    if (!moves || parts.length < LEAST) continue;
    const key = parts.map(({ mark }) => mark).join(" ");
    const alike = kinds.get(key);
    if (alike) alike.count++;
    else kinds.set(key, { parts: new Set(parts.map(({ id }) => id)), count: 1 });
    for (const { id } of parts) apart.add(id);
  }
  const standing = new Set(all.filter((id) => !apart.has(id)));
  if (all.length <= MANY || kinds.size === 0 || standing.size === 0) return [{ parts: new Set(all), count: 1 }];
  return [{ parts: standing, count: 1 }, ...kinds.values()];
}
