import {
  type Bounds,
  boundsOfAll,
  type Convex,
  hullBlocked,
  hullHits,
  type Solid,
  shifted,
  shiftedBounds,
  type Vec,
} from "../../../geometry/index.ts";
import { boundsDepth } from "../../../geometry/separation.ts";
import { TOLERANCE } from "../../../units/length.ts";

/** What stays. */
export interface Obstacles {
  /** All that was in the way so far. */
  readonly met: ReadonlySet<Solid>;
  /** What is in the way, or null. */
  hitBy(moving: readonly Convex[]): Solid | null;
  /** `from`: how far it was moved already. */
  sweptBy(moving: readonly Convex[], travel: Vec, from?: Vec, among?: (solid: Solid) => boolean): Solid | null;
  /** The same, looked at only: what is in the way does not count as met. */
  isSwept(moving: readonly Convex[], travel: Vec, from: Vec): boolean;
}

/** Not moved at all. */
export const STILL: Vec = [0, 0, 0];

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
    hitBy: (moving) => {
      const around = boundsOfAll(moving);
      return first((solid) => boundsDepth(around, solid) > TOLERANCE && moving.some((hull) => hullHits(hull, solid)));
    },
    sweptBy: (moving, travel, from = STILL, among = () => true) => {
      const around = shiftedBounds(boundsOfAll(moving), from);
      const sweeps = sweeping(moving, travel, from);
      return first((solid) => boundsDepth(around, solid, travel) > TOLERANCE && among(solid) && sweeps(solid));
    },
    isSwept: (moving, travel, from) => {
      const around = shiftedBounds(boundsOfAll(moving), from);
      const sweeps = sweeping(moving, travel, from);
      return solids.some((solid) => boundsDepth(around, solid, travel) > TOLERANCE && sweeps(solid));
    },
  };
}

/** Whether something that was moved passes through a solid. It is moved only where its bounds do. */
export function sweeping(
  moving: readonly Convex[],
  travel: Vec,
  from: Vec,
): (solid: Pick<Solid, "pieces"> & Bounds) => boolean {
  const around = moving.map((body) => shiftedBounds(body, from));
  const there: Convex[] = [];
  return (solid) => {
    for (let i = 0; i < moving.length; i++) {
      if (boundsDepth(around[i] as Bounds, solid, travel) <= TOLERANCE) continue;
      there[i] ??= shifted(moving[i] as Convex, from);
      if (hullBlocked(there[i] as Convex, solid, travel)) return true;
    }
    return false;
  };
}
