/**
 * Finds a place for each balloon: candidates on rings around the part, scored by what they would cover and cross. Each is
 * placed in turn and then, with all others in place, looked at again, until nothing improves.
 */
import { circlePoint } from "../../geometry/angle.ts";
import type { Item } from "../document.ts";
import { balloon, balloonBox, balloonReach, isName, LARGE, type Look, leader, leaderOf } from "./balloon.ts";
import type { Pen, Spot } from "./drawing.ts";
import { type Box, boxAround, grown, type Plate, type Segment } from "./plate.ts";

export interface Label {
  readonly mark: string;
  /** The ids of what it marks, where that matters. */
  readonly parts?: readonly string[];
  /** Points on the part that the leader may end at, best first. */
  readonly targets: readonly Spot[];
  /** The part lies behind others: its leader is dashed. */
  readonly hidden: boolean;
  /** Of what was there before: drawn finer, and only where it has room. */
  readonly isPresent?: boolean;
}

interface Place {
  readonly centre: Spot;
  readonly target: Spot;
  readonly box: Box;
  readonly leader: Segment;
  /** Around the leader's end, which other leaders keep off. */
  readonly dot: Box;
  readonly cost: number;
}

const DIRECTIONS = Array.from({ length: 24 }, (_, i) => circlePoint(i, 24));
const DISTANCES: readonly number[] = [18, 24, 30, 38, 48, 60, 74, 90, 110, 135, 165, 200, 240, 290];
/** What a point of a leader's length costs. */
const LENGTH = 0.12;
const AIR = 2.5;
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
  const manner = { look, toll };
  const places: (Place | null)[] = labels.map(() => null);
  for (let round = 0; round < ROUNDS; round++) {
    let changed = false;
    labels.forEach((label, i) => {
      const old = places[i] ?? null;
      if (old) {
        plate.removeBox(old.box);
        plate.removeBox(old.dot);
        plate.removeLeader(old.leader);
      }
      const found = bestPlace(label, plate, pen, ground, manner) ?? old;
      const best = found ?? (label.isPresent ? null : bestPlace(label, plate, pen, ground, manner, true));
      if (best && (best.centre[0] !== old?.centre[0] || best.centre[1] !== old?.centre[1])) changed = true;
      if (best) {
        plate.addBox(best.box);
        plate.addBox(best.dot);
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

/** `crowded`: leaders may cross, since no other place is left. */
function bestPlace(
  label: Label,
  plate: Plate,
  pen: Pen,
  ground: (spot: Spot) => number,
  { look, toll }: Required<Manner>,
  crowded = false,
): Place | null {
  let best: Place | null = null;
  const name = isName(label.mark);
  const reach = balloonReach(pen, label.mark, look);
  label.targets.forEach((target, rank) => {
    for (const far of DISTANCES) {
      const distance = (far * look.radius) / LARGE.radius;
      const least = LENGTH * distance + 2 * rank;
      for (const [cos, sin] of DIRECTIONS) {
        if (best && least >= best.cost) break;
        const centre: Spot = [target[0] + cos * distance, target[1] - sin * distance];
        // Leaders at a slant tell from the edges of the picture; level and upright ones do not.
        const slant = Math.min(Math.abs(cos), Math.abs(sin)) < 0.1 ? 3 : 0;
        const open = least + slant + 14 * ground(centre);
        if (best && open >= best.cost) continue;
        const box = balloonBox(reach, label.mark, centre, look);
        if (!plate.isFree(grown(box, AIR))) continue;
        const line = leaderOf(reach, label.mark, centre, target, look);
        if (!crowded && plate.blocks(line)) continue;
        const struck = plate.linesThrough(grown(box, 1));
        // A circle covers what lies behind it, a name does not; the text has it where it finds no place.
        if (name && struck > 0) continue;
        const covered = open + 5 * struck;
        if (best && covered >= best.cost) continue;
        const crossed = covered + 2.5 * plate.linesAcross(line);
        if (best && crossed >= best.cost) continue;
        const cost = crossed + LENGTH * toll(label, centre, line);
        if (!best || cost < best.cost)
          best = { centre, target, box, leader: line, cost, dot: boxAround(target[0], target[1], 4, 4) };
      }
    }
  });
  return best;
}
