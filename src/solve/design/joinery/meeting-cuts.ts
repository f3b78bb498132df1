import { inches, type Length, millimetres } from "../../../units/length.ts";
import { less, subtract, ZERO } from "../../../units/rational.ts";
import type { Box, Feature } from "../../design.ts";
import { featureBox } from "../shapes/feature-box.ts";
import { boxFeature } from "../shapes/workpiece.ts";
import { type AxisIndex, axisOf, INDICES, withAxis } from "../space.ts";
import type { Bench, JoineryContext } from "./work.ts";

type BoxFeature = Extract<Feature, { readonly size: unknown }>;

const RUNS: readonly Feature["kind"][] = ["groove", "dado"];
const ROOMS: readonly Feature["kind"][] = ["groove", "dado", "rabbet", "mortise"];

/**
 * A groove or dado that ends just short of another cut of its part runs on into it: a wall of 1/32 in breaks out, and nobody could stop so
 * near. Thicker than 1/8 in or 3 mm it stays. Common practice, no source.
 */
export function meetCuts(ids: Iterable<string>, bench: Bench, { units }: JoineryContext): void {
  const thin = units === "inch" ? inches(1, 8) : millimetres(3);
  for (const id of ids) {
    const rooms = bench.piece(id).features.filter((each): each is BoxFeature => ROOMS.includes(each.kind));
    for (const run of rooms) {
      if (!RUNS.includes(run.kind) || run.for === null) continue;
      const axis = axisOf(run.along);
      const own = featureBox(run);
      const met = rooms.reduce(
        (box, other) => (other === run ? box : reaching(box, featureBox(other), axis, thin)),
        own,
      );
      if (met === own) continue;
      const into = axisOf(run.into);
      const sign = run.into[into] > 0 ? (1 as const) : (-1 as const);
      bench.changeCut(id, run, [own, met], boxFeature(run.kind, run.for, met, { axis: into, sign }, axis));
    }
  }
}

/** The box as far as the other along an axis, where that is in line with it and a thin wall away; else as it is. */
function reaching(box: Box, other: Box, axis: AxisIndex, thin: Length): Box {
  const inLine = INDICES.every(
    (i) => i === axis || (less(box.low[i], other.high[i]) && less(other.low[i], box.high[i])),
  );
  const isThin = (wall: Length): boolean => less(ZERO, wall) && !less(thin, wall);
  if (!inLine) return box;
  if (isThin(subtract(other.low[axis], box.high[axis])))
    return { ...box, high: withAxis(box.high, axis, other.low[axis]) };
  if (isThin(subtract(box.low[axis], other.high[axis])))
    return { ...box, low: withAxis(box.low, axis, other.high[axis]) };
  return box;
}
