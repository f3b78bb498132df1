/** The four corners of a body on one of its sides, where a tape is held. */
import type { Vec } from "../../../geometry/types.ts";
import { minus, norm } from "../../../geometry/vec.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { type AxisIndex, INDICES } from "../../design/space.ts";
import type { Part } from "../../design.ts";

export interface Corners {
  /** From corner to corner, the same both ways. Units of length as doubles. */
  readonly diagonal: number;
  /** Tenons or tongues stand out past them. */
  readonly shoulders: boolean;
}

/** Closer, two points are one. */
const ONE = UNITS_PER_MM / 100;
/** Diagonals that differ by more prove nothing. */
const EQUAL = UNITS_PER_MM / 10;

interface Tip {
  readonly at: Vec;
  /** Of what goes into another part. */
  readonly letIn: boolean;
}

/**
 * On the side that lies highest or lowest along an axis: the wood as it is then, tongues included; where those leave no corners, their shoulders. Null where
 * no wood comes to four corners there, or the diagonals between them are not equal.
 */
export function cornersOf(parts: readonly Part[], thin: AxisIndex, isHigh: boolean): Corners | null {
  const all = parts.flatMap(tipsOf);
  return (
    cornersAmong(all, all, thin, isHigh) ??
    cornersAmong(
      all.filter(({ letIn }) => !letIn),
      all,
      thin,
      isHigh,
    )
  );
}

function tipsOf({ solid, body }: Part): readonly Tip[] {
  const [low, high] = [body.low.map(toNumber), body.high.map(toNumber)] as unknown as [Vec, Vec];
  return solid.pieces.flatMap(({ vertices }) =>
    vertices.map(({ x, y, z }): Tip => {
      const at: Vec = [x, y, z];
      return { at, letIn: INDICES.some((i) => at[i] < low[i] - ONE || at[i] > high[i] + ONE) };
    }),
  );
}

function cornersAmong(own: readonly Tip[], all: readonly Tip[], thin: AxisIndex, isHigh: boolean): Corners | null {
  const [a, b] = INDICES.filter((axis) => axis !== thin) as [AxisIndex, AxisIndex];
  const bare = own.filter(({ letIn }) => !letIn);
  const face = ends(bare, thin)[isHigh ? 1 : 0];
  const flat = own.filter(({ at }) => Math.abs(at[thin] - face) < ONE);
  const [spanA, spanB] = [ends(flat, a), ends(flat, b)];
  // A side that tapers or is rounded away from what is outermost has no corners that a tape is held to.
  if (![[a, spanA] as const, [b, spanB] as const].every(([i, span]) => reaches(span, ends(bare, i)))) return null;
  const corner = (highA: boolean, highB: boolean): Vec | null => {
    const near = flat.filter(({ at }) => isIn(at[a], spanA, highA) && isIn(at[b], spanB, highB));
    const [outA, outB] = [ends(near, a)[highA ? 1 : 0], ends(near, b)[highB ? 1 : 0]];
    return near.find(({ at }) => Math.abs(at[a] - outA) < ONE && Math.abs(at[b] - outB) < ONE)?.at ?? null;
  };
  const [one, two, three, four] = [corner(false, false), corner(true, true), corner(false, true), corner(true, false)];
  if (!one || !two || !three || !four) return null;
  const diagonal = norm(minus(one, two));
  if (Math.abs(diagonal - norm(minus(three, four))) > EQUAL) return null;
  const isPast = ({ at, letIn }: Tip): boolean =>
    letIn &&
    [[a, spanA] as const, [b, spanB] as const].some(([i, [from, to]]) => at[i] < from - ONE || at[i] > to + ONE);
  return { diagonal, shoulders: all.some(isPast) };
}

const ends = (tips: readonly Tip[], axis: AxisIndex): readonly [number, number] =>
  tips.reduce<readonly [number, number]>(
    ([low, high], { at }) => [Math.min(low, at[axis]), Math.max(high, at[axis])],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );

/** Whether one stretch goes as far as another, both ways. */
const reaches = (own: readonly [number, number], other: readonly [number, number]): boolean =>
  own[0] < other[0] + ONE && own[1] > other[1] - ONE;

const isIn = (at: number, [from, to]: readonly [number, number], isHigh: boolean): boolean =>
  at > (from + to) / 2 === isHigh;
