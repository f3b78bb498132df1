import { cylinder, intersect, planeThrough, type Solid, solidBox, type Vec } from "../../../geometry/index.ts";
import { add, subtract, toNumber } from "../../../units/rational.ts";
import { overChord } from "../../design/shapes/arc.ts";
import { type Corner, outlineCut } from "../../design/shapes/region.ts";
import { AXES, type AxisIndex, INDICES, middle, triple } from "../../design/space.ts";
import type { Box, Feature, Hole, Part } from "../../design.ts";

/** Cuts along an edge, which nobody takes for a hole's wall, and tenons, which take no wood. */
const OPEN: readonly Feature["kind"][] = ["tenon", "round-over", "rounded corner"];

/** The wood that a feature takes away, as a solid, slots and cut-outs with square corners; null for plane cuts and what is OPEN. */
export function roomOf(feature: Feature): Solid | null {
  if (!("size" in feature) || OPEN.includes(feature.kind)) return null;
  const box = boxOf(feature);
  const room = solidBox(box.low, box.high);
  if (feature.kind !== "arch") return room;
  const [run, into] = [feature.along, feature.into].map((way) => INDICES.find((i) => way[i] !== 0) as AxisIndex) as [
    AxisIndex,
    AxisIndex,
  ];
  const centre = middle(box, run);
  const corners = overChord(feature.size[0], feature.size[2]).map(([along, up]): Corner => {
    const edge = feature.origin[into];
    return [add(centre, along), (feature.into[into] as number) > 0 ? add(edge, up) : subtract(edge, up)];
  });
  const { planes } = outlineCut(corners, [run, into], box, () => false);
  return intersect(
    room,
    planes.map(({ point, normal }) => planeThrough(point, normal)),
  );
}

function boxOf(feature: Extract<Feature, { readonly size: unknown }>): Box {
  const { origin, along, across, into, size } = feature;
  const ends = AXES.map((_, i) => {
    const k = [along, across, into].findIndex((direction) => direction[i] !== 0) as 0 | 1 | 2;
    const way = ([along, across, into] as const)[k][i] as number;
    const from = origin[i as 0 | 1 | 2];
    const far = { n: from.n * size[k].d + BigInt(way) * size[k].n * from.d, d: from.d * size[k].d };
    return way > 0 ? [from, far] : [far, from];
  }) as [
    [Feature["origin"][0], Feature["origin"][0]],
    [Feature["origin"][0], Feature["origin"][0]],
    [Feature["origin"][0], Feature["origin"][0]],
  ];
  return { low: triple((i) => ends[i][0]), high: triple((i) => ends[i][1]) };
}

/** The stages of a hole as envelopes. */
export const boresOf = (hole: Hole) =>
  hole.stages.map(({ diameter, depth }) =>
    cylinder(vec(hole.at), hole.direction, toNumber(diameter) / 2, toNumber(depth)),
  );

const vec = (point: Hole["at"]): Vec => [toNumber(point[0]), toNumber(point[1]), toNumber(point[2])];

/** Joint of a hole's fastener: fastener ids begin with it. */
export const jointOf = (hole: Hole): string | null => (hole.for === null ? null : (hole.for.split(".")[0] as string));

export const holesIn = (part: Part, holes: readonly Hole[]): readonly Hole[] => holes.filter((h) => h.part === part.id);
