/** Where a block finds room on the end of a part, beside dowels that stand out of it. */
import type { Length } from "../../../units/length.ts";
import { add, compare, half, less, max, rational, subtract, ZERO } from "../../../units/rational.ts";
import { type AxisIndex, extent, INDICES } from "../../design/space.ts";
import type { Fastener, Hole } from "../../design.ts";
import { NEAR } from "./bounding.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";

/** A dowel that stands out of a part. */
export interface Standing {
  readonly peg: Fastener;
  /** The part that the dowel comes out of, and the axis along which it does. */
  readonly part: string;
  readonly out: AxisIndex;
  readonly at: Hole["at"];
}

interface Stretch {
  readonly from: Length;
  readonly to: Length;
}

/**
 * The widest room between the dowels that come out of one side of a part, or beside them, along the longer direction of that side. Only in line with
 * the joints that these moves close at its other end: a block beside that would tip it.
 */
export function roomBeside(work: Work, moves: readonly Move[], own: readonly Standing[]): Length {
  const [first] = own;
  if (!first) return ZERO;
  const { body } = work.part(first.part);
  const [a, b] = INDICES.filter((i) => i !== first.out) as [AxisIndex, AxisIndex];
  const along = less(extent(body, a), extent(body, b)) ? b : a;
  const rods = own
    .map(({ peg, at }) => ({ from: subtract(at[along], half(peg.rod)), to: add(at[along], half(peg.rod)) }))
    .toSorted((x, y) => compare(x.from, y.from));
  const pressed = pressedOn(moves, first, along);
  const whole = { from: body.low[along], to: body.high[along] };
  return (pressed.length > 0 ? pressed : [whole])
    .flatMap(({ from, to }) => {
      const inside = rods.filter((rod) => less(rod.from, to) && less(from, rod.to));
      const starts = [from, ...inside.map((rod) => rod.to)];
      const ends = [...inside.map((rod) => rod.from), to];
      return starts.map((start, i) => subtract(ends[i] as Length, start));
    })
    .reduce(max, ZERO);
}

/** Stretches over which the part meets what it is joined to in these moves, those that go on from each other as one. */
function pressedOn(moves: readonly Move[], { part, out }: Standing, along: AxisIndex): readonly Stretch[] {
  const met = moves
    .flatMap(({ work }) => work.map(({ joint }) => joint))
    .filter(({ parts }) => parts.includes(part))
    .flatMap(({ contact }) => contact.filter(({ normal }) => Math.abs(normal[out]) > SQUARE))
    .map(({ polygons }): Stretch => {
      const all = polygons.flatMap((polygon) => polygon.map((point) => point[along]));
      return { from: rational(Math.round(Math.min(...all))), to: rational(Math.round(Math.max(...all))) };
    })
    .toSorted((x, y) => compare(x.from, y.from));
  const joined: Stretch[] = [];
  for (const next of met) {
    const last = joined.at(-1);
    if (!last || less(add(last.to, NEAR), next.from)) joined.push(next);
    else joined.splice(-1, 1, { from: last.from, to: max(last.to, next.to) });
  }
  return joined;
}

/** Cosine: ends that slope a little are ends. */
const SQUARE = 0.9;
