/** What earlier steps cut into a part: it is drawn thin, and told where it was cut. */
import { realEdges, type View } from "../../../geometry/picture/index.ts";
import type { Edge, Point2, Vec } from "../../../geometry/types.ts";
import { dot, minus, norm, plus, times } from "../../../geometry/vec.ts";
import type { PartInWork } from "../../../solve/build/part-after.ts";
import { TOLERANCE } from "../../../units/index.ts";
import { linesAlone } from "./lines-alone.ts";

type Run = readonly [Point2, Point2];

/** Whether an edge was there before. */
export function wasThere({ earlier }: PartInWork, { from, to }: Pick<Edge, "from" | "to">): boolean {
  return earlier !== undefined && realEdges(earlier).some((edge) => [from, to].every((p) => liesOn(p, edge)));
}

/** The runs of a view that are the work of the step, or the outline of the board, and those that were cut before. */
export function apartFromEarlier(
  part: PartInWork,
  view: View,
  runs: readonly Run[],
): readonly [readonly Run[], readonly Run[]] {
  const { earlier, solid } = part;
  if (earlier === undefined) return [runs, []];
  const before = linesAlone(earlier, view);
  const old = [...before.visible, ...before.hidden].map(inSpace);
  const all = runs.flat();
  const bounds = ([0, 1] as const).map((i) => [Math.min(...all.map((p) => p[i])), Math.max(...all.map((p) => p[i]))]);
  const isOutline = ([p, q]: Run): boolean =>
    ([0, 1] as const).some((i) => bounds[i]?.some((at) => [p, q].every((r) => Math.abs(r[i] - at) <= TOLERANCE)));
  const isOld = (run: Run): boolean =>
    !isOutline(run) && run.every((p) => old.some((edge) => liesOn([p[0], p[1], 0], edge)));
  return solid === earlier ? [runs, []] : [runs.filter((run) => !isOld(run)), runs.filter(isOld)];
}

const inSpace = ([p, q]: Run): Pick<Edge, "from" | "to"> => ({ from: [p[0], p[1], 0], to: [q[0], q[1], 0] });

/** Seen along one axis, so that most edges are done with at once. */
const isBeside = (p: Vec, from: Vec, to: Vec, i: 0 | 1 | 2): boolean =>
  p[i] < Math.min(from[i], to[i]) - 3 * TOLERANCE || p[i] > Math.max(from[i], to[i]) + 3 * TOLERANCE;

function liesOn(p: Vec, { from, to }: Pick<Edge, "from" | "to">): boolean {
  if (isBeside(p, from, to, 0) || isBeside(p, from, to, 1) || isBeside(p, from, to, 2)) return false;
  const along = minus(to, from);
  const long = norm(along);
  if (long === 0) return false;
  const t = Math.max(0, Math.min(1, dot(minus(p, from), along) / (long * long)));
  return norm(minus(p, plus(from, times(along, t)))) <= 2 * TOLERANCE;
}
