/**
 * Finds a place for each balloon: candidates on rings around the part, scored by what they would cover and cross. Each is
 * placed in turn and then, with all others in place, looked at again, until nothing improves.
 */
import type { Item } from "../document.ts";
import { balloon, LARGE, type Look, leader } from "./balloon.ts";
import { BalloonPlaces, type Label, type Place } from "./balloon-places.ts";
import type { Pen, Spot } from "./drawing.ts";
import type { Plate, Segment } from "./plate.ts";

const ROUNDS = 3;

export interface Manner {
  readonly look?: Look;
  /** What it costs that a balloon stands so, and its leader runs so, in points of a leader's length. */
  readonly toll?: (label: Label, centre: Spot, leader: Segment) => number;
}

/** The leaders as items, then the balloons, in the order of the labels. `ground` tells how much of a place is taken by the picture, 0 to 1. */
export function placeBalloons(
  labels: readonly Label[],
  plate: Plate,
  pen: Pen,
  ground: (spot: Spot) => number,
  { look = LARGE, toll = () => 0 }: Manner = {},
): readonly Item[] {
  const candidates = labels.map((label) => new BalloonPlaces(label, { plate, pen, ground, look, toll }));
  const places: (Place | null)[] = labels.map(() => null);
  // A label is looked at again only where something else has moved since; `moves` counts.
  let moves = 0;
  const lookedAt = labels.map(() => -1);
  for (let round = 0; round < ROUNDS; round++) {
    let changed = false;
    labels.forEach((label, i) => {
      if (lookedAt[i] === moves) return;
      const old = places[i] ?? null;
      if (old) {
        plate.removeLoose(old.box);
        plate.removeLoose(old.dot);
        plate.removeLeader(old.leader);
      }
      const found = candidates[i]?.best(old, false) ?? old;
      const best = found ?? (label.isPresent ? null : (candidates[i]?.best(null, true) ?? null));
      if (best && (best.centre[0] !== old?.centre[0] || best.centre[1] !== old?.centre[1])) changed = true;
      if (best?.at !== old?.at) moves++;
      lookedAt[i] = moves;
      if (best) {
        plate.addLoose(best.box);
        plate.addLoose(best.dot);
        plate.addLeader(best.leader);
      }
      places[i] = best;
    });
    if (!changed) break;
  }
  // Where leaders have to cross a balloon it lies on top, and can be read.
  return [
    ...labels.flatMap(({ hidden }, i) => (places[i] ? leader(places[i].leader, hidden) : [])),
    ...labels.flatMap(({ mark, isPresent }, i) =>
      places[i] ? balloon(pen, mark, places[i].centre, isPresent ? { ...look, isFine: true } : look) : [],
    ),
  ];
}
