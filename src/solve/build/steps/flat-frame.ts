/** On which of its two broad sides a frame lies while it is put together, and what goes under what does not reach the bench there. */
import { exactBounds, inverse, placedSolid, type Solid, turnedVec, type Vec } from "../../../geometry/index.ts";
import { dot } from "../../../geometry/vec.ts";
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { absolute, add, equal, less, rational, subtract, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, faceOf, INDICES, otherAxes, unit } from "../../design/space.ts";
import type { Box, Face } from "../../design.ts";
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

/** What lies so much higher than the bench; `slopes`: its two sides between which that changes, and how high each lies. */
interface Packed {
  readonly by: Length;
  readonly ids: readonly string[];
  readonly slopes?: readonly [Lifted, Lifted];
}

interface Lifted {
  readonly side: Face;
  readonly by: Length;
}

/**
 * Where all of it is flush; else where least packing goes under, and on what is outside in the piece. `held`: ids of what is drawn
 * together; a panel hangs in its grooves.
 */
export function sideDown(work: Work, ids: readonly string[], held: ReadonlySet<string>, axis: AxisIndex): Down {
  const boxes = lyingFlat(work, ids).map((each) => ({ ...each, box: exactBounds(each.solid) }));
  const whole = boxes.map(({ box }) => box).reduce(enclosing);
  const [low, high] = [false, true].map((end): Down => {
    const flush = boxes.every(({ box }) => equal(edge(box, axis, end), edge(whole, axis, end)));
    const off = boxes
      .filter(({ id }) => held.has(id))
      .map(({ box, ...laid }) => ({
        id: laid.id,
        by: absolute(subtract(edge(box, axis, end), edge(whole, axis, end))),
        slopes: slopeOf(laid, axis, end, edge(whole, axis, end)),
      }))
      .filter(({ by, slopes }) => slopes !== null || toNumber(by) > LEVEL);
    const packed = off
      .filter(({ by }, i) => off.findIndex((each) => equal(each.by, by)) === i)
      .map(({ by, slopes }): Packed => {
        const alike = off.filter((each) => equal(each.by, by)).map(({ id }) => id);
        return { by, ids: alike, ...(slopes && { slopes }) };
      });
    return { axis, high: end, flush, packed };
  }) as [Down, Down];
  if (low.flush !== high.flush) return low.flush ? low : high;
  const one = lessPacking(low, high);
  if (one) return { ...one, flush: false };
  return { ...(isOuter(work, whole, axis) ? high : low), flush: false };
}

/** A part as it lies when those that stand aslant in the piece lie flat. */
interface Laid {
  readonly id: string;
  readonly solid: Solid;
  /** The three directions of its body. */
  readonly ways: readonly [Vec, Vec, Vec];
}

function lyingFlat(work: Work, ids: readonly string[]): readonly Laid[] {
  const parts = ids.map(work.part);
  const aslant = parts.find(({ turned }) => turned)?.turned?.placement;
  const back = aslant && inverse(aslant);
  return parts.map(({ id, solid, turned }): Laid => {
    const own = INDICES.map((i) => (turned ? turnedVec(turned.placement, unit(i, 1)) : unit(i, 1)));
    const ways = own.map((way) => (back ? turnedVec(back, way) : way)) as unknown as Laid["ways"];
    return { id, solid: back ? placedSolid(solid, back) : solid, ways };
  });
}

/** The sides of what then lies aslant itself, and how far its lower face is there from the level of the others; null of what lies flat. */
function slopeOf({ solid, ways }: Laid, axis: AxisIndex, high: boolean, level: Length): Packed["slopes"] | null {
  const points = solid.pieces.flatMap(({ vertices }) => vertices.map(({ x, y, z }): Vec => [x, y, z]));
  const down = ways[axis].map((c) => (high ? c : -c)) as unknown as Vec;
  const lowest = Math.max(...points.map((at) => dot(at, down)));
  const face = points.filter((at) => dot(at, down) > lowest - LEVEL);
  const along = otherAxes(axis).find((i) => Math.abs(down[i]) > ASLANT);
  if (along === undefined) return null;
  const [from, to] = [Math.min(...face.map((at) => at[along])), Math.max(...face.map((at) => at[along]))];
  const lifted = (upper: boolean): Lifted => {
    const end = face.find((at) => at[along] === (upper ? to : from)) as Vec;
    return { side: faceOf(along, upper), by: rational(Math.round(Math.abs(end[axis] - toNumber(level)))) };
  };
  return [lifted(true), lifted(false)];
}

/** Sine of a slope that packing has to follow. */
const ASLANT = 0.02;

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
  const under = packed.map(({ by, ids, slopes }) => {
    const own = definite(work, ids);
    if (!slopes)
      return `packing ${work.print(by)} thick goes under ${own}, which ${ids.length > 1 ? "lie" : "lies"} so much higher`;
    const [one, other] = slopes;
    return `${own} ${ids.length > 1 ? "lie" : "lies"} aslant between them: packing ${work.place(one.by)} thick goes under its ${one.side}, ${work.place(other.by)} thick under its ${other.side}`;
  });
  return `Put it together lying flat, on two straight battens, ${down}${flush ? ", where all is flush" : under.length > 0 ? `: ${under.join("; ")}` : ""}.`;
}
