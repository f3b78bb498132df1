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
  /** Nothing is added to it, as long as places are looked for, but balloons that may go elsewhere again. */
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
/** What a leader costs that does not run at a slant. */
const SLANT = 3;
const AIR = 2.5;

/** A place as far as it was looked at. Each cost includes the one before. */
interface Candidate {
  readonly target: Spot;
  readonly centre: Spot;
  readonly box: Box;
  /** With some air around it. */
  readonly room: Box;
  /** Nothing is in that room that stays where it is. */
  readonly isOpen: boolean;
  leader: Segment | null;
  /** Whether the leader passes through what stays where it is. */
  barred: boolean | null;
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
  /** What each place costs for its distance, its slant and what it stands on; NaN: not asked yet. */
  private readonly open: Float64Array;

  constructor(label: Label, around: Surroundings) {
    this.label = label;
    this.around = around;
    this.isName = isName(label.mark);
    this.reach = balloonReach(around.pen, label.mark, around.look);
    this.open = new Float64Array(label.targets.length * OF_TARGET).fill(Number.NaN);
  }

  /** `before`: where it stood, if it did. `crowded`: leaders may cross, since no other place is left. */
  best(before: Place | null, crowded: boolean): Place | null {
    let best = before && this.better(before.at, null, crowded);
    // What stands beside the picture mostly is better than all that stand on it: those are looked at last.
    for (const dear of [false, true])
      for (let rank = 0; rank < this.label.targets.length; rank++)
        for (let ring = 0; ring < DISTANCES.length; ring++) {
          const first = rank * OF_TARGET + ring * DIRECTIONS.length;
          const least = this.least(rank, ring);
          for (let at = first; at < first + DIRECTIONS.length && beats(least, at, best); at++) {
            const open = this.openAt(at);
            if (open > least + SLANT === dear && beats(open, at, best)) best = this.better(at, best, crowded) ?? best;
          }
        }
    return best;
  }

  /** A place by its number, where it is free and better than another. */
  private better(at: number, than: Place | null, crowded: boolean): Place | null {
    const { plate, toll } = this.around;
    const known = this.candidate(at);
    const { centre, target, box } = known;
    if (!known.isOpen) return null;
    const least = known.cost ?? known.crossed ?? known.covered;
    if (least !== null && !beats(least, at, than)) return null;
    if (!plate.isClear(known.room)) return null;
    known.leader ??= leaderOf(this.reach, this.label.mark, centre, target, this.around.look);
    const { leader } = known;
    if (!crowded) {
      known.barred ??= plate.bars(leader);
      if (known.barred || plate.hinders(leader)) return null;
    }
    known.covered ??= this.openAt(at) + this.covering(plate.linesThrough(grown(box, 1)));
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
    const known = this.known[at];
    if (known) return known;
    const target = this.label.targets[Math.floor(at / OF_TARGET)] as Spot;
    const centre = this.centre(at);
    const box = balloonBox(this.reach, this.label.mark, centre, this.around.look);
    const room = grown(box, AIR);
    const isOpen = this.around.plate.isOpen(room);
    const [leader, barred, covered, crossed, cost] = [null, null, null, null, null];
    const fresh = { target, centre, box, room, isOpen, leader, barred, covered, crossed, cost };
    this.known[at] = fresh;
    return fresh;
  }

  private openAt(at: number): number {
    const known = this.open[at] as number;
    if (!Number.isNaN(known)) return known;
    const [rank, ring] = [Math.floor(at / OF_TARGET), ringOf(at)];
    const [cos, sin] = DIRECTIONS[at % DIRECTIONS.length] as Spot;
    // Leaders at a slant tell from the edges of the picture; level and upright ones do not.
    const slant = Math.min(Math.abs(cos), Math.abs(sin)) < 0.1 ? SLANT : 0;
    const open = this.least(rank, ring) + slant + 14 * this.around.ground(this.centre(at));
    this.open[at] = open;
    return open;
  }

  private centre(at: number): Spot {
    const target = this.label.targets[Math.floor(at / OF_TARGET)] as Spot;
    const distance = this.distance(ringOf(at));
    const [cos, sin] = DIRECTIONS[at % DIRECTIONS.length] as Spot;
    return [target[0] + cos * distance, target[1] - sin * distance];
  }

  /** For its distance alone, and for how good a target it has. */
  private least(rank: number, ring: number): number {
    return LENGTH * this.distance(ring) + 2 * rank;
  }

  /** A circle covers what lies behind it, a name does not; the text has it where it finds no place. */
  private covering(lines: number): number {
    return this.isName && lines > 0 ? Infinity : 5 * lines;
  }

  private distance(ring: number): number {
    return ((DISTANCES[ring] as number) * this.around.look.radius) / LARGE.radius;
  }
}

const ringOf = (at: number): number => Math.floor((at % OF_TARGET) / DIRECTIONS.length);

const beats = (cost: number, at: number, best: Place | null): boolean =>
  best === null ? cost < Infinity : cost < best.cost || (cost === best.cost && at < best.at);
