/** A piece of many parts is taken apart assembly by assembly: what stands, and each door or drawer that is not like another. */
import type { Build, BuiltPart } from "../../../solve/build.ts";
import { bodiesOf } from "../dimension/bodies.ts";
import { type StandIn, standIn } from "./stand-in.ts";

export interface Assembly {
  /** Ids of its parts. */
  readonly parts: ReadonlySet<string>;
  /** How many such there are. */
  readonly count: number;
  /** Those that are built alike, but for marks. */
  readonly others: readonly StandIn[];
}

/** More parts than this are too many for one picture. */
const MANY = 25;
/** Fewer parts stay with what they are hung on. */
const LEAST = 3;

/** What stands comes first; one alone where the piece is taken apart in one picture. */
export function assembliesOf(build: Pick<Build, "parts" | "motions">): readonly Assembly[] {
  const all = build.parts.map(({ id }) => id);
  const kinds: { readonly own: readonly BuiltPart[]; count: number; readonly others: StandIn[] }[] = [];
  const apart = new Set<string>();
  for (const { parts, moves } of bodiesOf(build)) {
    if (!moves || parts.length < LEAST) continue;
    for (const { id } of parts) apart.add(id);
    const marks = marksOf(parts);
    const alike = kinds.find(({ own }) => marksOf(own) === marks);
    if (alike) alike.count++;
    else if (!kinds.some(({ own, others }) => addTo(others, standIn(parts, own))))
      kinds.push({ own: parts, count: 1, others: [] });
  }
  const standing = new Set(all.filter((id) => !apart.has(id)));
  if (all.length <= MANY || kinds.length === 0 || standing.size === 0)
    return [{ parts: new Set(all), count: 1, others: [] }];
  const drawn = kinds.map(({ own, ...kind }) => ({ ...kind, parts: new Set(own.map(({ id }) => id)) }));
  return [{ parts: standing, count: 1, others: [] }, ...drawn];
}

const marksOf = (parts: readonly BuiltPart[]): string => parts.map(({ mark }) => mark).join(" ");

function addTo(all: StandIn[], one: StandIn | null): boolean {
  if (one) all.push(one);
  return one !== null;
}
