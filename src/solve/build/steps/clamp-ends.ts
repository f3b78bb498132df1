/** On what a clamp presses at its two ends: how far behind the outside of the whole that lies, and what keeps off it what must not be pressed. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, less, max, negate, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, enclosing, faceOf, INDICES } from "../../design/space.ts";
import type { Face, Part } from "../../design.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";

export interface ClampEnd {
  readonly part: string;
  /** Of the finished piece. */
  readonly side: Face;
  /** Behind what stands out farthest. */
  readonly back: Length;
  /** How long a tenon is that stands there for something that comes later; null where there is none. */
  readonly tenon: Length | null;
  /** How thick a block is that brings the clamp past it. */
  readonly block: Length;
}

/** No block is thicker; a block stands so far past what it is put for. Common practice, no source. */
const FAR = inches(4);
const PAST = { inch: inches(1, 8), mm: millimetres(5) } as const;

/** The clamp is as short as that it ends on the part itself. */
export const endsOnIt = ({ back, tenon }: ClampEnd): boolean => tenon === null && less(FAR, back);

/** The two ends of a clamp that presses along an axis at a place across it; none where no part is there. */
export function clampEnds(
  work: Work,
  moves: readonly Move[],
  axis: AxisIndex,
  at: readonly Length[],
): readonly ClampEnd[] {
  const ids = new Set(moves.flatMap(({ present, arriving }) => [...present, ...arriving]));
  const parts = [...ids].map(work.part).filter(({ turned }) => !turned);
  const [one, ...more] = parts.map(({ body }) => body);
  if (!one) return [];
  const whole = more.reduce(enclosing, one);
  const others = INDICES.filter((i) => i !== axis);
  const there = parts.filter(({ body }) =>
    others.every((i, k) => !less(at[k] as Length, body.low[i]) && !less(body.high[i], at[k] as Length)),
  );
  return [false, true].flatMap((high): readonly ClampEnd[] => {
    const out = ({ body }: Part): Length =>
      high ? subtract(whole.high[axis], body.high[axis]) : subtract(body.low[axis], whole.low[axis]);
    const [outer] = there.toSorted((a, b) => compare(out(a), out(b)));
    if (!outer) return [];
    const back = out(outer);
    const tenon = bareTenon(work, outer, axis, high, ids);
    const block = roundTo(add(max(back, tenon ?? ZERO), PAST[work.design.units]), PAST[work.design.units], "up");
    return [{ part: outer.id, side: faceOf(axis, high), back, tenon, block }];
  });
}

/** A tenon whose mate is not among these parts. */
function bareTenon(
  { design }: Work,
  { features }: Part,
  axis: AxisIndex,
  high: boolean,
  ids: ReadonlySet<string>,
): Length | null {
  const long = features.flatMap((each) => {
    if (each.kind !== "tenon" || (high ? each.into[axis] < 0.99 : each.into[axis] > -0.99)) return [];
    const joint = design.joints.find(({ id }) => id === each.for);
    return joint?.parts.every((id) => ids.has(id)) ? [] : [each.size[2]];
  });
  return long.length === 0 ? null : long.reduce(max);
}

/** How far the jaws of a clamp stand past the whole, both together: less than nothing where they end behind it. */
export const pastTheWhole = (ends: readonly ClampEnd[]): Length =>
  ends
    .map((end) => (endsOnIt(end) ? negate(end.back) : end.tenon === null ? ZERO : subtract(end.block, end.back)))
    .reduce(add, ZERO);
