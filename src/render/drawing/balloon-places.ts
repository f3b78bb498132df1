/**
 * The places where a balloon may stand: on rings around each point that its leader may end at. What each costs by the picture is
 * worked out once; what other balloons leave free is asked each time.
 */
import { circlePoint } from "../../geometry/angle.ts";
import { balloonBox, balloonReach, isName, LARGE, type Look, leaderOf } from "./balloon.ts";
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

export interface Place {
  readonly centre: Spot;
  readonly target: Spot;
  readonly box: Box;
  readonly leader: Segment;
  /** Around the leader's end, which other leaders keep off. */
  readonly dot: Box;
  readonly cost: number;
  /** Its number: of places that cost the same the first is taken. */
  readonly at: number;
}

export interface Surroundings {
  /** No line is added to it as long as places are looked for. */
  readonly plate: Plate;
  readonly pen: Pen;
  readonly ground: (spot: Spot) => number;
  readonly look: Look;
  readonly toll: (label: Label, centre: Spot, leader: Segment) => number;
}

const DIRECTIONS = Array.from({ length: 24 }, (_, i) => circlePoint(i, 24));
const DISTANCES: readonly number[] = [18, 24, 30, 38, 48, 60, 74, 90, 110, 135, 165, 200, 240, 290];
const OF_TARGET = DISTANCES.length * DIRECTIONS.length;
/** What a point of a leader's length costs. */
const LENGTH = 0.12;
const AIR = 2.5;

/** A place as far as it was looked at. Each cost includes the one before. */
interface Candidate {
  readonly target: Spot;
  readonly centre: Spot;
  /** For its distance, its slant and what it stands on. */
  readonly open: number;
  readonly box: Box;
  leader: Segment | null;
  /** For the lines that the balloon covers, those that the leader crosses, and the toll. */
  covered: number | null;
  crossed: number | null;
  cost: number | null;
}

export class BalloonPlaces {
  private readonly label: Label;
  private readonly around: Surroundings;
  private readonly isName: boolean;
  private readonly reach: number;
  private readonly known: (Candidate | undefined)[] = [];

  constructor(label: Label, around: Surroundings) {
    this.label = label;
    this.around = around;
    this.isName = isName(label.mark);
    this.reach = balloonReach(around.pen, label.mark, around.look);
  }

  /** `before`: where it stood, if it did. `crowded`: leaders may cross, since no other place is left. */
  best(before: Place | null, crowded: boolean): Place | null {
    let best = before && this.better(before.at, null, crowded);
    for (const rank of this.label.targets.keys())
      for (const ring of DISTANCES.keys()) {
        const first = rank * OF_TARGET + ring * DIRECTIONS.length;
        const least = LENGTH * this.distance(ring) + 2 * rank;
        for (let at = first; at < first + DIRECTIONS.length && beats(least, at, best); at++)
          best = this.better(at, best, crowded) ?? best;
      }
    return best;
  }

  /** A place by its number, where it is free and better than another. */
  private better(at: number, than: Place | null, crowded: boolean): Place | null {
    const { plate, toll } = this.around;
    const known = this.known[at] ?? this.candidate(at);
    this.known[at] = known;
    const { centre, target, box } = known;
    if (!beats(known.open, at, than) || !plate.isFree(grown(box, AIR))) return null;
    known.leader ??= leaderOf(this.reach, this.label.mark, centre, target, this.around.look);
    const { leader } = known;
    if (!crowded && plate.blocks(leader)) return null;
    known.covered ??= known.open + this.covering(plate.linesThrough(grown(box, 1)));
    if (!beats(known.covered, at, than)) return null;
    known.crossed ??= known.covered + 2.5 * plate.linesAcross(leader);
    if (!beats(known.crossed, at, than)) return null;
    known.cost ??= known.crossed + LENGTH * toll(this.label, centre, leader);
    const { cost } = known;
    return beats(cost, at, than)
      ? { centre, target, box, leader, cost, at, dot: boxAround(target[0], target[1], 4, 4) }
      : null;
  }

  private candidate(at: number): Candidate {
    const rank = Math.floor(at / OF_TARGET);
    const distance = this.distance(Math.floor((at % OF_TARGET) / DIRECTIONS.length));
    const [cos, sin] = DIRECTIONS[at % DIRECTIONS.length] as Spot;
    const target = this.label.targets[rank] as Spot;
    const centre: Spot = [target[0] + cos * distance, target[1] - sin * distance];
    // Leaders at a slant tell from the edges of the picture; level and upright ones do not.
    const slant = Math.min(Math.abs(cos), Math.abs(sin)) < 0.1 ? 3 : 0;
    const open = LENGTH * distance + 2 * rank + slant + 14 * this.around.ground(centre);
    const box = balloonBox(this.reach, this.label.mark, centre, this.around.look);
    return { target, centre, open, box, leader: null, covered: null, crossed: null, cost: null };
  }

  /** A circle covers what lies behind it, a name does not; the text has it where it finds no place. */
  private covering(lines: number): number {
    return this.isName && lines > 0 ? Infinity : 5 * lines;
  }

  private distance(ring: number): number {
    return ((DISTANCES[ring] as number) * this.around.look.radius) / LARGE.radius;
  }
}

const beats = (cost: number, at: number, best: Place | null): boolean =>
  best === null ? cost < Infinity : cost < best.cost || (cost === best.cost && at < best.at);
