/** A door or drawer that is built as another, as it is or in the mirror, from parts of which some have marks of their own. */
import type { BuiltPart } from "../../../solve/build.ts";
import { isSame, subtract } from "../../../units/index.ts";
import { outsideOf } from "../outside.ts";

export interface StandIn {
  /** Left and right change places. */
  readonly mirrored: boolean;
  /** The marks that are its own, each with the one in whose place it stands, in order. */
  readonly marks: readonly (readonly [own: string, instead: string])[];
}

/** How the one differs from the other that is drawn; null where it is built otherwise. */
export function standIn(one: readonly BuiltPart[], drawn: readonly BuiltPart[]): StandIn | null {
  const ways = [true, false].flatMap((mirrored) => {
    const pairs = pairsOf(one, drawn, mirrored);
    return pairs ? [{ mirrored, pairs, same: pairs.filter(([own, instead]) => own === instead).length }] : [];
  });
  const best = ways.reduce<(typeof ways)[number] | null>((so, way) => (so && so.same >= way.same ? so : way), null);
  if (!best) return null;
  const other = new Map(best.pairs.filter(([own, instead]) => own !== instead).map((pair) => [pair.join(" "), pair]));
  return { mirrored: best.mirrored, marks: [...other.values()].toSorted(([a], [b]) => (a < b ? -1 : 1)) };
}

/** Part by part, of the same size and in the same place; null where one has no counterpart. */
function pairsOf(one: readonly BuiltPart[], drawn: readonly BuiltPart[], mirrored: boolean) {
  const [own, its] = [placesIn(one, mirrored), placesIn(drawn, false)];
  const left = [...its];
  const pairs: (readonly [string, string])[] = [];
  for (const each of own) {
    const i = left.findIndex((other) => each.edges.every((edge, n) => isSame(edge, other.edges[n] as typeof edge)));
    const [found] = i < 0 ? [] : left.splice(i, 1);
    if (!found) return null;
    pairs.push([each.mark, found.mark]);
  }
  return left.length === 0 ? pairs : null;
}

/** The six sides of each part, from the corner of all of them. */
function placesIn(parts: readonly BuiltPart[], mirrored: boolean) {
  const whole = outsideOf(parts);
  return parts.flatMap((part) => {
    const own = outsideOf([part]);
    if (!whole || !own) return [];
    const along = (i: 0 | 1 | 2) =>
      mirrored && i === 0
        ? [subtract(whole.high[i], own.high[i]), subtract(whole.high[i], own.low[i])]
        : [subtract(own.low[i], whole.low[i]), subtract(own.high[i], whole.low[i])];
    return [{ mark: part.mark, edges: ([0, 1, 2] as const).flatMap(along) }];
  });
}
