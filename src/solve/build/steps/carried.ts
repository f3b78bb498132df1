/** Whether the joints of what stands on the bench carry what is above them. */
import { centroid } from "../../../geometry/index.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { axisOf, INDICES } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { boxOf } from "./box-of.ts";
import type { Work } from "./draft.ts";

/** The weight lies at least so far inside what carries it, of its height: a push of a tenth of the weight does not turn it over. */
export const STEADY = 0.1;

/** Nearer, two levels are one. */
const NEAR = UNITS_PER_MM / 10;

/**
 * Whether at every height what crosses it carries what is above: a board on one post hangs on its joint. None is pulled by more than the weight
 * above it, with a push of its tenth. What is below the `blocks` does not count.
 */
export function isCarried(work: Work, ids: readonly string[], up: Direction, blocks: number): boolean {
  const axis = axisOf(up);
  const way = up[axis] > 0 ? 1 : -1;
  const around = INDICES.filter((i) => i !== axis);
  const all = ids.map((id) => {
    const part = work.part(id);
    const body = boxOf(part);
    const [one, other] = [body.low, body.high].map((at) => toNumber(at[axis]) * way) as [number, number];
    return { body, low: Math.min(one, other), high: Math.max(one, other), kg: work.mass(id), at: centroid(part.solid) };
  });
  const bounds = [...new Set(all.flatMap(({ low, high }) => [low, high]))].toSorted((a, b) => a - b);
  const [bench = 0] = bounds;
  return bounds.slice(1).every((next, i) => {
    const level = ((bounds[i] as number) + next) / 2;
    const crossing = all.filter(({ low, high }) => low < level && level < high);
    if (level < bench + blocks + NEAR || next - (bounds[i] as number) < NEAR || crossing.length === 0) return true;
    // Of what crosses only that counts which is above.
    const above = all
      .filter(({ high }) => high > level)
      .map(({ low, high, kg, at }) => ({
        ...{ at, kg: kg * Math.min(1, (high - level) / (high - low)) },
        height: (Math.max(low, level) + high) / 2 - level,
      }));
    const kg = above.reduce((so, each) => so + each.kg, 0);
    const mean = (of: (each: (typeof above)[number]) => number): number =>
      above.reduce((so, each) => so + each.kg * of(each), 0) / kg;
    const sway = STEADY * mean(({ height }) => height);
    return around.every((j) => {
      const weight = mean(({ at }) => at[j]);
      const low = Math.min(...crossing.map(({ body }) => toNumber(body.low[j])));
      const high = Math.max(...crossing.map(({ body }) => toNumber(body.high[j])));
      const width = high - low;
      return weight - low + width > sway && high + width - weight > sway;
    });
  });
}
