/** On which of its two broad sides a frame lies while it is put together, and what goes under what does not reach the bench there. */
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { absolute, add, equal, less, subtract, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, faceOf } from "../../design/space.ts";
import type { Box } from "../../design.ts";
import { boxOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";

/** It lies as well on less. */
const LEVEL = UNITS_PER_MM;

export interface Down {
  readonly axis: AxisIndex;
  /** It lies on the side at the high end of that axis. */
  readonly high: boolean;
  /** All of it is flush there, and not on the other. */
  readonly flush: boolean;
  readonly packed: readonly Packed[];
}

/** What lies so much higher than the bench. */
interface Packed {
  readonly by: Length;
  readonly ids: readonly string[];
}

/**
 * Where all of it is flush; else where least packing goes under, and on what is outside in the piece. `held`: ids of what is drawn
 * together; a panel hangs in its grooves.
 */
export function sideDown(work: Work, ids: readonly string[], held: ReadonlySet<string>, axis: AxisIndex): Down {
  const boxes = ids.map((id) => ({ id, box: boxOf(work.part(id)) }));
  const whole = boxes.map(({ box }) => box).reduce(enclosing);
  const [low, high] = [false, true].map((end): Down => {
    const flush = boxes.every(({ box }) => equal(edge(box, axis, end), edge(whole, axis, end)));
    const off = boxes
      .filter(({ id }) => held.has(id))
      .map(({ id, box }) => ({ id, by: absolute(subtract(edge(box, axis, end), edge(whole, axis, end))) }))
      .filter(({ by }) => toNumber(by) > LEVEL);
    const packed = off
      .filter(({ by }, i) => off.findIndex((each) => equal(each.by, by)) === i)
      .map(({ by }): Packed => ({ by, ids: off.filter((each) => equal(each.by, by)).map(({ id }) => id) }));
    return { axis, high: end, flush, packed };
  }) as [Down, Down];
  if (low.flush !== high.flush) return low.flush ? low : high;
  const one = lessPacking(low, high);
  if (one) return { ...one, flush: false };
  return { ...(isOuter(work, whole, axis) ? high : low), flush: false };
}

const edge = (box: Box, axis: AxisIndex, high: boolean): Length => (high ? box.high : box.low)[axis];

/** Null where as much goes under one as under the other. */
function lessPacking(low: Down, high: Down): Down | null {
  const [a, b] = [low, high].map(({ packed }) => packed.reduce((so, { ids }) => so + ids.length, 0)) as [
    number,
    number,
  ];
  if (a !== b) return a < b ? low : high;
  const [c, d] = [low, high].map(({ packed }) => packed.map(({ by }) => by).toSorted((x, y) => (less(x, y) ? -1 : 1)));
  const most = c?.at(-1);
  const other = d?.at(-1);
  if (!most || !other || equal(most, other)) return null;
  return less(most, other) ? low : high;
}

/** Whether its high side is outside in the piece; a level frame lies as it is in there. */
function isOuter(work: Work, own: Box, axis: AxisIndex): boolean {
  if (axis === 2) return false;
  const whole = work.design.parts.map(boxOf).reduce(enclosing);
  return less(add(whole.low[axis], whole.high[axis]), add(own.low[axis], own.high[axis]));
}

export function flatText(work: Work, { axis, high, flush, packed }: Down): string {
  const down = `with the ${faceOf(axis, high)} side down`;
  const under = packed.map(
    ({ by, ids }) =>
      `packing ${work.print(by)} thick goes under ${definite(work, ids)}, which ${ids.length > 1 ? "lie" : "lies"} so much higher`,
  );
  return `Put it together lying flat, on two straight battens, ${down}${flush ? ", where all is flush" : under.length > 0 ? `: ${under.join("; ")}` : ""}.`;
}
