/** What goes in or comes out at a slope is drawn as it slopes, before its place: the hard move that no arrow tells. */
import { placedSolid, type Solid, type Vec } from "../../../geometry/index.ts";
import { dot, minus, plus, times } from "../../../geometry/vec.ts";
import { wayIn } from "../../../solve/build/order/tilt.ts";
import type { Leg, Step } from "../../../solve/build.ts";
import { toNumber } from "../../../units/index.ts";
import { placementOf } from "./opened.ts";

export interface Tilted {
  /** Ids of what slopes together. */
  readonly parts: readonly string[];
  /** Which way is out. */
  readonly out: Vec;
  readonly slope: (solid: Solid) => Solid;
}

/** The first that slopes, since others do alike; null where all goes straight, or something straight would stand before it. */
export function tiltedIn({ actions }: Step): Tilted | null {
  const goings = actions.flatMap((action) => {
    if (action.do !== "add" && action.do !== "remove") return [];
    const legs = action.do === "remove" ? action.legs : wayIn(action.legs);
    const last = legs.at(-1);
    const turn = legs.find((leg) => "about" in leg);
    return last && "along" in last ? [{ action, legs, last, turn }] : [];
  });
  for (const { action, legs, last, turn } of goings) {
    if (!turn || !("about" in turn)) continue;
    if (goings.some((other) => !other.turn && dot(other.last.along, last.along) > 1 - 1e-9)) return null;
    const at = legs.indexOf(turn);
    const [before, after] = [moved(legs.slice(0, at)), moved(legs.slice(at))];
    // It is turned where it has been moved to.
    const about = [minus(turn.about[0], before), turn.about[1]] as const;
    const placement = placementOf({ at: 0, rotate: { about, degrees: turn.degrees }, shift: plus(before, after) });
    if (!placement) continue;
    return { parts: action.parts, out: last.along, slope: (solid) => placedSolid(solid, placement) };
  }
  return null;
}

/** By all straight legs that end. */
const moved = (legs: readonly Leg[]): Vec =>
  legs.reduce<Vec>(
    (sum, leg) => ("along" in leg && leg.distance !== null ? plus(sum, times(leg.along, toNumber(leg.distance))) : sum),
    [0, 0, 0],
  );
