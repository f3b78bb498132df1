import { cylinder, type Solid, solidBox, type Vec } from "../../../geometry/index.ts";
import { dot, plus, times } from "../../../geometry/vec.ts";
import { toNumber } from "../../../units/rational.ts";
import { standsOut } from "../../design/shapes/kinds.ts";
import { AXES, triple } from "../../design/space.ts";
import type { Feature, Hole, Part } from "../../design.ts";
import { solidOfHull } from "../order/pegs.ts";
import { cylindersOf } from "../order/slots.ts";

/** The wood that a feature takes away, as a solid; null for plane cuts and for tenons, which take none. */
export function roomOf(feature: Feature): Solid | null {
  if (!("size" in feature) || standsOut(feature)) return null;
  const { origin, along, across, into, size } = feature;
  const skew = [along, across, into].some((way) => way.filter((part) => part !== 0).length > 1);
  if (skew) return skewRoom(feature);
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
  return solidBox(
    triple((i) => ends[i][0]),
    triple((i) => ends[i][1]),
  );
}

/** A slot that runs across a corner. */
function skewRoom({ origin, along, across, into, size }: Extract<Feature, { readonly size: unknown }>): Solid {
  const at = vec(origin);
  const ways = [along, across, into].map((way, k) => ({ way, long: toNumber(size[k as 0 | 1 | 2]) }));
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((bits) =>
    ways.reduce<Vec>((so, { way, long }, k) => ((bits >> k) & 1 ? plus(so, times(way, long)) : so), at),
  );
  const planes = ways.flatMap(({ way, long }) => [
    { normal: times(way, -1), d: -dot(way, at) },
    { normal: way, d: dot(way, at) + long },
  ]);
  return solidOfHull({ planes, vertices: corners });
}

/** The stages of a hole as envelopes. */
export const boresOf = (hole: Hole) =>
  cylindersOf(hole).map(({ mouth, diameter, depth }) => cylinder(mouth, hole.direction, diameter / 2, depth));

const vec = (point: Hole["at"]): Vec => [toNumber(point[0]), toNumber(point[1]), toNumber(point[2])];

/** Joint of a hole's fastener: fastener ids begin with it. */
export const jointOf = (hole: Hole): string | null => (hole.for === null ? null : (hole.for.split(".")[0] as string));

export const holesIn = (part: Part, holes: readonly Hole[]): readonly Hole[] => holes.filter((h) => h.part === part.id);
