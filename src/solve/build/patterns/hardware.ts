/** The holes of hinges, slides, pulls and other hardware on a part, from the sides that they are measured from. */
import { cross, dot } from "../../../geometry/vec.ts";
import { inches, type Length } from "../../../units/length.ts";
import { compare, equal, less, max, min, subtract, ZERO } from "../../../units/rational.ts";
import { type AxisIndex, faceOf, INDICES, otherAxes, unit } from "../../design/space.ts";
import { holeOnBench } from "../../design/turning.ts";
import type { Hole, Part } from "../../design.ts";
import type { HolePattern, Side } from "../model/pattern.ts";
import { sideWord } from "../steps/words/measured.ts";

/** Sides that are farther off, along a row of holes and across it, are told for the first hole only, and the others measured from that. */
const NEAR = { along: inches(2), across: inches(3) } as const;
/** What is drawn in its true size goes on a sheet of either paper, beside its numbers. */
const LARGEST = { width: inches(11, 2), height: inches(3) } as const;

/** So many holes are measured as easily. Common practice, no source. */
const ROW = 2;

export type HoleDraft = Omit<HolePattern, "id" | "marks" | "uses" | "count" | "what" | "kind" | "of" | "over">;

/** Of holes into one side of a part that belong to one piece of hardware: two at least, else they are measured as easily. */
export function holesOf(part: Part, all: readonly Hole[], mark: string): HoleDraft | null {
  const holes = all.map((hole) => holeOnBench(part, hole));
  const [first] = holes;
  const normal = first && INDICES.find((i) => Math.abs(first.direction[i]) > 0.99);
  if (!first || holes.length < 2 || normal === undefined) return null;
  if (holes.some(({ direction }) => direction.some((d, i) => d !== first.direction[i]))) return null;
  const [a, b] = otherAxes(normal);
  const [x, y] = less(spread(holes, a), spread(holes, b)) ? [b, a] : [a, b];
  const [alongX, alongY] = [measured(part, holes, x, NEAR.along, mark), measured(part, holes, y, NEAR.across, mark)];
  const drawn = holes.map((hole) => {
    const { diameter, depth } = hole.stages.at(-1) as Hole["stages"][number];
    const way = hole.slot && (hole.slot.along[x] !== 0 ? "x" : "y");
    return {
      ...{ x: alongX.at(hole), y: alongY.at(hole), diameter, depth: hole.through ? null : depth },
      ...(hole.slot && way && { slot: [way, hole.slot.length] as const }),
    };
  });
  const reach = (of: "x" | "y"): Length => drawn.map((hole) => hole[of]).reduce(max, ZERO);
  return {
    ...{ x: alongX.side, y: alongY.side, into: sideWord(part, normal) },
    // Right and up on the page, and towards the reader: a right-handed set; else what is seen has y running down.
    down: dot(cross(unit(x, alongX.way), unit(y, alongY.way)), first.direction) > 0,
    ...{ width: reach("x"), height: reach("y") },
    full: holes.length > ROW && !less(LARGEST.width, reach("x")) && !less(LARGEST.height, reach("y")),
    holes: drawn.toSorted((p, q) => compare(p.x, q.x) || compare(p.y, q.y)),
  };
}

const spread = (holes: readonly Hole[], axis: AxisIndex): Length =>
  subtract(holes.map(({ at }) => at[axis]).reduce(max), holes.map(({ at }) => at[axis]).reduce(min));

const wide = ({ stages }: Hole): Length => stages[0]?.diameter ?? ZERO;

/** From the nearer side of the part, or from the hole that is nearest to it; of a cup and its screws the cup decides which side is nearer. */
function measured(
  part: Part,
  holes: readonly Hole[],
  axis: AxisIndex,
  near: Length,
  mark: string,
): { readonly side: Side; readonly way: 1 | -1; readonly at: (hole: Hole) => Length } {
  const from = (high: boolean) => (hole: Hole) =>
    high ? subtract(part.blank.high[axis], hole.at[axis]) : subtract(hole.at[axis], part.blank.low[axis]);
  const widest = holes.map(wide).reduce(max);
  const deciding = holes.filter((hole) => equal(wide(hole), widest));
  const [low, high] = [from(false), from(true)].map((of) => deciding.map(of).reduce(min)) as [Length, Length];
  const isHigh = less(high, low);
  const at = from(isHigh);
  const first = holes.map(at).reduce(min);
  const name = `${faceOf(axis, isHigh)} ${sideWord(part, axis)}`;
  const way = isHigh ? -1 : 1;
  if (!less(near, first)) return { side: { edge: [{ side: name, marks: [mark] }] }, way, at };
  return {
    way,
    side: { edge: null, first: [{ mark, at: first, from: name }] },
    at: (hole) => subtract(at(hole), first),
  };
}
