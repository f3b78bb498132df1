/** Whether work stays as it is put on the bench. */
import { centroid, type Vec } from "../../../geometry/index.ts";
import { inches, UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { type AxisIndex, axisOf, INDICES } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import { isCarried, STEADY } from "./carried.ts";
import type { Work } from "./draft.ts";
import { isFlat } from "./lying.ts";
import { type Move, togetherAfter } from "./moves.ts";

/** All that lies so near to the bench stands on it: what is set back a little is packed. */
export const ON_BENCH = 6 * UNITS_PER_MM;

/** Nearer, two levels are one. */
const NEAR = UNITS_PER_MM / 10;

/** Blocks that are no higher are at hand. */
export const BLOCKS = inches(6);

/** Of parts that are together, on the bench or on blocks under what lies a little above it. */
export function isSteady(work: Work, ids: readonly string[], up: Direction): boolean {
  const on = standingOn(work, ids, up);
  return on !== null && isCarried(work, ids, up, on.blocks);
}

/** What a body stands on. */
export interface Standing {
  /** Ids of what reaches the bench, and of what blocks lie under, if it stands on those. */
  readonly lowest: readonly string[];
  readonly blocked: readonly string[];
  /** How high the blocks are, in units of length; 0 without any. */
  readonly blocks: number;
}

/** The least high blocks on which it does not turn over; null where none do. */
export function standingOn(work: Work, ids: readonly string[], up: Direction): Standing | null {
  const axis = axisOf(up);
  const way = up[axis] > 0 ? 1 : -1;
  const around = INDICES.filter((i) => i !== axis);
  const solids = ids.map((id) =>
    work.part(id).solid.pieces.flatMap(({ vertices }) => vertices.map(({ x, y, z }): Vec => [x, y, z])),
  );
  const lowest = (points: readonly Vec[]): number =>
    points.reduce((low, at) => Math.min(low, at[axis] * way), Number.POSITIVE_INFINITY);
  const points = solids.flat();
  const bench = lowest(points);
  const weight = centreOf(work, ids);
  const levels = solids.map(lowest);
  const found = levels
    .filter((level) => level <= bench + toNumber(BLOCKS))
    .toSorted((a, b) => a - b)
    .find((level) => {
      // A part touches where it is lowest: what of it slopes away from there does not.
      const feet = solids.flatMap((own, i) => {
        const foot = levels[i] as number;
        return foot < level + ON_BENCH ? own.filter((at) => at[axis] * way < foot + ON_BENCH) : [];
      });
      const sway = STEADY * (weight[axis] * way - bench);
      return around.every((i) => {
        const at = feet.map((point) => point[i]);
        return weight[i] - Math.min(...at) > sway && Math.max(...at) - weight[i] > sway;
      });
    });
  if (found === undefined) return null;
  const at = (level: number): readonly string[] => ids.filter((_, i) => Math.abs((levels[i] as number) - level) < NEAR);
  return { lowest: at(bench), blocked: at(found), blocks: found - bench };
}

/** Where the weight of parts lies, in units of length. */
export function centreOf(work: Work, ids: readonly string[]): Vec {
  const all = ids.map((id) => ({ kg: work.mass(id), at: centroid(work.part(id).solid) }));
  const kg = all.reduce((so, each) => so + each.kg, 0);
  const along = (i: AxisIndex): number => all.reduce((so, each) => so + each.kg * each.at[i], 0) / kg;
  return [along(0), along(1), along(2)];
}

/** What only hangs or runs comes to work that stands; a frame that is only glued lies on its flat side from its first parts on. */
export function liesAnyhow(work: Work, moves: readonly Move[]): boolean {
  const all = togetherAfter(moves);
  const joined = moves.flatMap((move) => move.work);
  const [first] = moves;
  const isFrame = (axis: AxisIndex): boolean =>
    isFlat(work, all, axis) && (first?.starts === true || isFlat(work, first?.present ?? [], axis));
  return (
    joined.every(({ joint }) => LOOSE.includes(joint.kind)) ||
    (joined.every(({ drives }) => drives.length === 0) && INDICES.some(isFrame))
  );
}
