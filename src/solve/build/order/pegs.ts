/** Dowels and other pegs that sit in their part while it travels. */

import { bounds } from "../../../geometry/convex.ts";
import {
  cylinder,
  type Hull,
  intersect,
  once,
  plane,
  type Solid,
  solidBox,
  type Vec,
} from "../../../geometry/index.ts";
import { rational, toNumber } from "../../../units/index.ts";
import type { Arrangement, Direction, Fastener, Part } from "../../design.ts";

export interface Peg {
  /** A little too thick, never too thin. */
  readonly solid: Solid;
  /** Unit vector out of the part that carries it, into the others. */
  readonly out: Direction;
  /** The parts that have a hole for it, besides the one that carries it. */
  readonly mates: readonly string[];
}

/** Zero stays zero: there is no −0 in the record. */
export const reversed = (way: Direction): Direction => [0 - way[0], 0 - way[1], 0 - way[2]];

/** Null for a fastener that is driven in place. */
const pegOf = once((fastener: Fastener): Peg | null => {
  const { travelsWith, through, into, direction, head } = fastener;
  if (travelsWith === null) return null;
  const way = travelsWith === into ? reversed(direction) : direction;
  // What lies in a slot is judged by its wood: a slot that is open at its ends lets it slide.
  if (fastener.body) return { solid: fastener.body, out: way, mates: [] };
  const from: Vec = [toNumber(head.at[0]), toNumber(head.at[1]), toNumber(head.at[2])];
  const round = cylinder(from, direction, toNumber(fastener.rod) / 2, toNumber(fastener.length));
  return { solid: solidOfHull(round), out: way, mates: [...through, into].filter((id) => id !== travelsWith) };
});

/** The pegs that travel in each part. */
export function pegsOf(parts: readonly Part[], pegged: readonly Arrangement[]): readonly (readonly Peg[])[] {
  const fasteners = pegged.flatMap((arrangement) => arrangement.fasteners);
  return parts.map(({ id }) =>
    fasteners.filter(({ travelsWith }) => travelsWith === id).flatMap((fastener) => pegOf(fastener) ?? []),
  );
}

const FINE = 2 ** 20;

/** The hull as a solid: its planes in whole numbers, moved outwards by less than a unit for each metre. */
export function solidOfHull(hull: Hull): Solid {
  const { low, high } = bounds(hull.vertices);
  const box = solidBox(
    [rational(Math.floor(low[0])), rational(Math.floor(low[1])), rational(Math.floor(low[2]))],
    [rational(Math.ceil(high[0])), rational(Math.ceil(high[1])), rational(Math.ceil(high[2]))],
  );
  return intersect(
    box,
    hull.planes.map(({ normal, d }) => {
      const [a, b, c] = normal.map((component) => BigInt(Math.round(component * FINE))) as [bigint, bigint, bigint];
      return plane(a, b, c, BigInt(Math.ceil(d * FINE)));
    }),
  );
}
