import { type Hull, hullBlocked, hullHits, type Solid, type Vec } from "../../../geometry/index.ts";

/** What stays. */
export interface Obstacles {
  /** All that was in the way so far. */
  readonly met: ReadonlySet<Solid>;
  /** What is in the way, or null. */
  hitBy(moving: readonly Hull[]): Solid | null;
  sweptBy(moving: readonly Hull[], travel: Vec, among?: (solid: Solid) => boolean): Solid | null;
}

function sweeps(moving: readonly Hull[], solid: Solid, travel: Vec): boolean {
  for (const hull of moving) if (hullBlocked(hull, solid, travel)) return true;
  return false;
}

/** What was in the way last is asked first: it mostly is again. */
export function obstacles(staying: readonly Solid[]): Obstacles {
  const solids = [...staying];
  const met = new Set<Solid>();
  const first = (meets: (solid: Solid) => boolean): Solid | null => {
    const place = solids.findIndex(meets);
    const found = solids[place];
    if (!found) return null;
    solids.copyWithin(1, 0, place);
    solids[0] = found;
    met.add(found);
    return found;
  };
  return {
    met,
    hitBy: (moving) => first((solid) => moving.some((hull) => hullHits(hull, solid))),
    sweptBy: (moving, travel, among = () => true) => first((solid) => among(solid) && sweeps(moving, solid, travel)),
  };
}
