/** The four corners of the room that a frame encloses, where it has none outside that a tape is held to: its feet taper, or it is round there. */

import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { type AxisIndex, INDICES } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import { slopeAt } from "./slopes.ts";

export interface Inside {
  /** From corner to corner, the same both ways. Units of length as doubles. */
  readonly diagonal: number;
  /** Ids of the parts round it. */
  readonly of: readonly string[];
}

/** Closer, two faces are in one plane. */
const ONE = UNITS_PER_MM / 100;
/** No tape is held across less. Common practice, no source. */
const LEAST = 75 * UNITS_PER_MM;

/** Seen along `thin`: the room round the middle, if parts with plain faces go round it without a gap; else null. */
export function insideCorners(parts: readonly Part[], thin: AxisIndex): Inside | null {
  const [a, b] = INDICES.filter((axis) => axis !== thin) as [AxisIndex, AxisIndex];
  const span = (axis: AxisIndex): readonly [number, number] => [
    Math.min(...parts.map(({ body }) => toNumber(body.low[axis]))),
    Math.max(...parts.map(({ body }) => toNumber(body.high[axis]))),
  ];
  const middle = (axis: AxisIndex): number => (span(axis)[0] + span(axis)[1]) / 2;
  const at = { [a]: middle(a), [b]: middle(b) } as Record<AxisIndex, number>;
  const bounds = [
    [a, b],
    [b, a],
  ].flatMap(([along, across]) =>
    [false, true].map((high) => nearest(parts, at, along as AxisIndex, across as AxisIndex, high)),
  );
  const [low, high, under, over] = bounds;
  if (!low || !high || !under || !over) return null;
  const size = [high.at - low.at, over.at - under.at] as const;
  if (Math.min(...size) < LEAST) return null;
  const covers = ({ part }: Bound, axis: AxisIndex, from: number, to: number): boolean =>
    toNumber(part.body.low[axis]) < from + ONE && toNumber(part.body.high[axis]) > to - ONE;
  const round =
    [low, high].every((each) => covers(each, b, under.at, over.at)) &&
    [under, over].every((each) => covers(each, a, low.at, high.at));
  const plain =
    [low, high].every((each) => isPlain(each, thin, a, [under.at, over.at], b)) &&
    [under, over].every((each) => isPlain(each, thin, b, [low.at, high.at], a));
  if (!round || !plain) return null;
  const diagonal = Math.sqrt(size[0] * size[0] + size[1] * size[1]);
  return { diagonal, of: [low, high, under, over].map(({ part }) => part.id) };
}

interface Bound {
  readonly part: Part;
  /** Where its inner face lies. */
  readonly at: number;
  /** Whether it lies on the high side of the room. */
  readonly high: boolean;
}

/** What bounds the room on one side of a place; null where nothing does, or wood is at the place itself. */
function nearest(
  parts: readonly Part[],
  at: Record<AxisIndex, number>,
  along: AxisIndex,
  across: AxisIndex,
  high: boolean,
): Bound | null {
  const inLine = parts.filter(
    ({ body }) => toNumber(body.low[across]) < at[across] && toNumber(body.high[across]) > at[across],
  );
  return inLine.reduce<Bound | null>((so, part) => {
    const face = toNumber((high ? part.body.low : part.body.high)[along]);
    const past = high ? face - at[along] : at[along] - face;
    const other = toNumber((high ? part.body.high : part.body.low)[along]);
    if (past < 0 && (high ? other > at[along] : other < at[along])) return { part, at: at[along], high };
    return past < 0 || (so && (high ? so.at <= face : so.at >= face)) ? so : { part, at: face, high };
  }, null);
}

/** Whether the inner face is where the part is drawn square, at both corners. */
function isPlain(
  { part, at, high }: Bound,
  thin: AxisIndex,
  along: AxisIndex,
  ends: readonly number[],
  across: AxisIndex,
): boolean {
  const deep = (toNumber(part.body.low[thin]) + toNumber(part.body.high[thin])) / 2;
  return ends.every((end, k) => {
    const spot = { [thin]: deep, [across]: end + (k === 0 ? ONE : -ONE) } as Record<AxisIndex, number>;
    const others = INDICES.filter((axis) => axis !== along).map((axis) => spot[axis]);
    const face = slopeAt(part.solid, along, !high, others, 90);
    return face !== null && face.slope === null && Math.abs(toNumber(face.at) - at) < ONE;
  });
}
