/** On what a clamp presses at its two ends: the outer faces of the parts that it draws together, and what keeps off them what must not be pressed. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, less, max, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, enclosing, faceOf, otherAxes } from "../../design/space.ts";
import type { Box, Face, Joint, Part } from "../../design.ts";
import { boxOf } from "./box-of.ts";
import { reachedOver } from "./clamp-span.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { MOST, type Slope, slopeAt } from "./slopes.ts";
import { standsOutOn } from "./standing-out.ts";

/** A clamp: along which axis it draws, where across that, and what it closes; one on the end of a caul that lies over the whole presses on all that is under it. */
export interface ClampAt {
  readonly axis: AxisIndex;
  readonly at: readonly Length[];
  readonly joint: Joint;
  readonly whole: boolean;
}

export interface ClampEnd {
  readonly part: string;
  /** Of the finished piece. */
  readonly side: Face;
  /** Where its face lies along the clamp. */
  readonly face: Length;
  /** Behind what stands out farthest. */
  readonly back: Length;
  /** What stands out past the face, and so near to it that a jaw meets it: by how much. */
  readonly beside: { readonly part: string; readonly by: Length } | null;
  /** How long a tenon is that stands there for something that comes later; null where there is none. */
  readonly tenon: Length | null;
  /** How thick a block is that brings the clamp past it; null where none is wanted. */
  readonly block: Length | null;
  /** How the wood slopes there; null where it lies square to the clamp. */
  readonly slope: Slope | null;
  /** So far dowels stand out of the part there. */
  readonly dowels: Length;
}

/** No block is thicker; a block stands so far past what it is put for. Common practice, no source. */
const FAR = inches(4);
const PAST = { inch: inches(1, 8), mm: millimetres(5) } as const;

/** Less is taken up by a pad; half of what a jaw takes up beside its middle, and how deep it is. Common practice, no source. */
const LEAST = inches(1, 8);
const JAW = inches(3, 4);
const DEEP = inches(2);

/** A wedge on what slopes, where it is thinnest, and what it is thicker in the middle. Common practice, no source. */
const WEDGE = inches(1, 2);

/** Whether it lies so far in that a reader has to be told what is pressed. */
export const isFarIn = ({ back }: ClampEnd): boolean => less(FAR, back);

/** What is together after some moves, from side to side; null where that is nothing. */
export function wholeOf(work: Work, moves: readonly Move[]): Box | null {
  const [first, ...more] = partsOf(work, moves).map(boxOf);
  return first ? more.reduce(enclosing, first) : null;
}

/** All that is together after some moves. */
export const partsOf = (work: Work, moves: readonly Move[]): readonly Part[] =>
  [...new Set(moves.flatMap(({ present, arriving }) => [...present, ...arriving]))].map(work.part);

/** The two ends of a clamp; none where no part is there. */
export function clampEnds(work: Work, moves: readonly Move[], clamp: ClampAt): readonly ClampEnd[] {
  const { axis } = clamp;
  const whole = wholeOf(work, moves);
  const parts = partsOf(work, moves);
  const reach = whole && reachOf(parts, clamp);
  if (!reach) return [];
  const ids = new Set(parts.map(({ id }) => id));
  return [false, true].map((high): ClampEnd => {
    const { part, at: face, slope } = high ? reach.high : reach.low;
    const back = high ? subtract(whole.high[axis], face) : subtract(face, whole.low[axis]);
    const tenon = bareTenon(work, part, axis, high, ids);
    const beside = standsBeside(parts, part, clamp, high, face);
    const near = beside && !less(FAR, beside.by) ? beside.by : ZERO;
    const past = max(near, tenon ?? ZERO);
    const block = less(ZERO, past) ? roundTo(add(past, PAST[work.design.units]), PAST[work.design.units], "up") : null;
    const side = faceOf(axis, high);
    return {
      part: part.id,
      side,
      face,
      back,
      beside,
      tenon,
      block,
      slope,
      dowels: standsOutOn(work, moves, part.id, side),
    };
  });
}

/** From which part to which it reaches, and where their faces are. */
export function reachOf(parts: readonly Part[], { axis, at, joint, whole }: ClampAt) {
  const met = parts.flatMap((part) => {
    const [low, high] = [meets(part, axis, false, at), meets(part, axis, true, at)];
    return low && high ? [{ part, low, high }] : [];
  });
  // What leans passes the pressure on to its other end.
  const leans = parts.some(({ id, turned }) => turned && joint.parts.includes(id));
  const own = whole || leans ? [] : met.filter(({ part }) => joint.parts.includes(part.id));
  return reachedOver(met, own.length === 0 ? met : own);
}

/** What stands out most of all that a jaw on a face meets beside it. */
function standsBeside(
  parts: readonly Part[],
  own: Part,
  { axis, at }: ClampAt,
  high: boolean,
  face: Length,
): ClampEnd["beside"] {
  const others = otherAxes(axis);
  const past = (value: Length): Length => (high ? subtract(value, face) : subtract(face, value));
  return parts
    .filter(({ id }) => id !== own.id)
    .map((part) => ({ part, box: boxOf(part) }))
    .filter(({ box }) =>
      others.every((i, k) => {
        const here = at[k] as Length;
        return less(box.low[i], add(here, JAW)) && less(subtract(here, JAW), box.high[i]);
      }),
    )
    .map(({ part, box }) => ({
      part: part.id,
      by: past((high ? box.high : box.low)[axis]),
      from: past((high ? box.low : box.high)[axis]),
    }))
    .filter(({ by, from }) => less(LEAST, by) && less(from, DEEP))
    .reduce<ClampEnd["beside"]>((so, { part, by }) => (so && !less(so.by, by) ? so : { part, by }), null);
}

/** How far a part reaches along an axis at a place across it, and how it slopes there; null where it is not there. */
function meets(part: Part, axis: AxisIndex, high: boolean, at: readonly Length[]) {
  const { body, turned, features } = part;
  const has = (...kinds: readonly string[]): boolean => features.some(({ kind }) => kinds.includes(kind));
  const sloping = turned || has("angled end", "taper", "bevel");
  const most = MOST[has("bevel") ? "bevelled" : "leaning"];
  const face = sloping ? slopeAt(part.solid, axis, high, at.map(toNumber), most) : null;
  if (turned || face?.slope) return face;
  const others = otherAxes(axis);
  const there = others.every((i, k) => !less(at[k] as Length, body.low[i]) && !less(body.high[i], at[k] as Length));
  return there ? { at: (high ? body.high : body.low)[axis], slope: null } : null;
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

/** How far the jaws of a clamp open, pads apart. */
export const openingOver = (ends: readonly ClampEnd[]): Length => {
  const [low, high] = ends;
  if (!low || !high) return ZERO;
  const wood = subtract(high.face, low.face);
  return ends.map(packingOf).reduce(add, wood);
};

/** What lies between the face and the jaw, besides a pad: a wedge or a block, and what keeps it off dowels. */
export const packingOf = ({ slope, block, dowels }: ClampEnd): Length => add(slope ? WEDGE : (block ?? ZERO), dowels);
