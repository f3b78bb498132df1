import type { Length } from "../../units/length.ts";
import { add, divide, equal, floor, multiply, rational, subtract } from "../../units/rational.ts";
import type { Facts } from "./facts.ts";

/** A measure that may change: its range, and the step in which it is asked for. */
export interface Range {
  readonly low: Length;
  readonly high: Length;
  readonly step: Length;
}

/** Something that is otherwise from one mark on: `last` is the last that is as before, `first` the next one. */
export interface Jump {
  readonly what: string;
  readonly last: Length;
  readonly first: Length;
  /** null: there is none. */
  readonly before: string | null;
  readonly after: string | null;
}

/** So many places of a range are looked at whatever comes of it; what jumps and jumps back between two of them is not seen. */
const PLACES = 9;

/** Where facts change over a range, in its order. Between two places that differ it is halved down to neighbouring marks. */
export function findJumps({ low, high, step }: Range, facts: (mark: Length) => Facts): readonly Jump[] {
  const last = Number(floor(divide(subtract(high, low), step)));
  const mark = (i: number): Length => add(low, multiply(step, rational(i)));
  const known = new Map<number, Facts>();
  const at = (i: number): Facts => {
    const found = known.get(i) ?? facts(mark(i));
    known.set(i, found);
    return found;
  };
  const between = (a: number, b: number): readonly Jump[] => {
    const changes = differences(at(a), at(b));
    if (changes.length === 0) return [];
    if (b - a === 1) return changes.map((change) => ({ ...change, last: mark(a), first: mark(b) }));
    const middle = Math.floor((a + b) / 2);
    return [...between(a, middle), ...between(middle, b)];
  };
  const places = [...new Set(Array.from({ length: PLACES }, (_, i) => Math.floor((i * last) / (PLACES - 1))))];
  return places.slice(1).flatMap((place, i) => between(places[i] as number, place));
}

function differences(before: Facts, after: Facts): readonly Pick<Jump, "what" | "before" | "after">[] {
  const names = [...new Set([...before.keys(), ...after.keys()])].sort();
  return names.flatMap((what) => {
    const [one, other] = [before.get(what) ?? null, after.get(what) ?? null];
    return one === other ? [] : [{ what, before: one, after: other }];
  });
}

/** Whether a range has two marks at all. */
export const isWide = ({ low, high }: Range): boolean => !equal(low, high);
