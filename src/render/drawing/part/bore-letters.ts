/** The small letters of holes, each beside its hole. */
import { circlePoint } from "../../../geometry/angle.ts";
import type { Hole } from "../../../solve/design.ts";
import { toNumber } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Pen, Spot } from "../drawing.ts";
import { toVec } from "../feature-box.ts";
import { ahead, centred, strokes } from "../ink.ts";
import { type Box, boxAround, grown, meets, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import { type Bore, bottomOf, comesOut, type Shown } from "./bores.ts";
import { clusters, fromStretch } from "./near-holes.ts";

/** Of more than this many those at the ends and the one in the middle have the letter. */
const MOST = 5;
/** In points: what stands nearer to each other has one letter. */
const TOGETHER = 10;

export interface Around {
  readonly plate: Plate;
  readonly pen: Pen;
  /** Where numbers stand one below the other. */
  readonly columns: readonly Box[];
  /** The view. */
  readonly view?: Box;
}

/** Where a hole shows: its mouth and its bottom, half as wide as there. */
interface Shows {
  readonly ends: readonly { readonly at: Spot; readonly r: number }[];
  readonly stretch: readonly [Spot, Spot];
  readonly r: number;
}

/** Letters beside the holes that the view looks into, or that run across it; farther off in a crowd, with a leader. */
export function letters(
  bores: readonly Bore[],
  { spot, scale, towards }: Shown,
  { plate, pen, columns, view }: Around,
): readonly Item[] {
  const shows = (hole: Hole): Shows => {
    const wide = hole.slot?.length ?? hole.stages[0]?.diameter ?? { n: 0n, d: 1n };
    const r = (toNumber(wide) * scale) / 2;
    const [mouth, bottom] = [spot(toVec(hole.at)), spot(bottomOf(hole))];
    if (comesOut(hole, towards)) return { ends: [{ at: bottom, r: r / 2 }], stretch: [bottom, bottom], r: r / 2 };
    const ends = [{ at: mouth, r }, ...(hole.through ? [] : [{ at: bottom, r: 1 }])];
    return { ends, stretch: [mouth, bottom], r };
  };
  const all = bores.map((bore) => ({ bore, holes: new Map(bore.holes.map((hole) => [hole, shows(hole)])) }));
  const written: { letter: string; box: Box }[] = [];
  const put = (
    set: readonly Hole[],
    { letter, on }: Bore,
    isMore: boolean,
    sets: readonly (readonly Hole[])[],
  ): readonly Item[] => {
    const [own, others] = [
      all.filter(({ bore }) => bore.letter === letter),
      all.filter(({ bore }) => bore.letter !== letter),
    ];
    const ends = set.flatMap((hole) => own.flatMap(({ holes }) => holes.get(hole)?.ends ?? []));
    const place = lettered(letter, ends, {
      ...{ plate, pen, columns },
      // Two of one letter are told apart by which of their holes each is nearer to.
      written: written.flatMap((other) => (other.letter === letter ? [] : other.box)),
      others: others.flatMap(({ holes }) => [...holes.values()]),
      alike: sets.flatMap((each) =>
        each === set ? [] : each.flatMap((hole) => own.flatMap(({ holes }) => holes.get(hole) ?? [])),
      ),
      view: view && !on.endsWith("end") ? view : null,
    });
    // One of several alike does without rather than be in the way.
    if (!place || (isMore && place.cost >= BLOCKED)) return [];
    plate.addBox(place.box);
    written.push({ letter, box: place.box });
    if (place.leader) plate.addLeader(place.leader);
    return [
      ...strokes(place.leader ? [place.leader] : [], NARROW),
      centred(pen, letter, place.spot, { font: "italic", ink: BLACK }).item,
    ];
  };
  const told = bores.map((bore) => {
    const at = (hole: Hole): Spot => spot(toVec(hole.at));
    const sets = clusters(bore.holes, at, TOGETHER);
    const some = sets.length <= MOST ? sets : endsOf(sets, ([hole]) => at(hole as Hole));
    // Each letter has its first before any has more.
    const [first, ...more] = some;
    return { bore, more, items: first ? put(first, bore, false, some) : [], some };
  });
  return told.flatMap(({ bore, more, items, some }) => [
    ...items,
    ...more.flatMap((set) => put(set, bore, items.length > 0, some)),
  ]);
}

/** The first, the last and the middle one as they stand on the page, from the left and from above. */
function endsOf<T>(sets: readonly T[], spot: (one: T) => Spot): readonly T[] {
  const all = sets.map((one) => ({ one, at: spot(one) }));
  const sorted = all.sort(({ at: a }, { at: b }) => (Math.abs(a[0] - b[0]) > SAME ? a[0] - b[0] : a[1] - b[1]));
  return [0, sorted.length - 1, Math.floor(sorted.length / 2)].map((i) => (sorted[i] as (typeof sorted)[number]).one);
}
/** In points: what is no farther apart stands in one column. */
const SAME = 0.01;

interface Lettered {
  readonly spot: Spot;
  readonly box: Box;
  readonly leader: Segment | null;
  readonly cost: number;
}

/** From the rim of a hole to its letter: beside it, and with a leader. */
const NEAR = [6, 8] as const;
const FAR = [13, 17, 22, 28, 35, 44, 56, 70] as const;
/** What a leader counts for, a line through the letter, and a leader that crosses another or a break, in points of distance. */
const LED = 4;
const STRUCK = 200;
const BLOCKED = 90;
/** And a place in a column of numbers, where it would be taken for one. */
const AMONG_NUMBERS = 60;
/** A place that is nearer to another hole, so much or by less nearer to its own; or beside another letter, or past the end of the part. */
const MISTAKEN = 60;
const NEARER = 3;
/** The same of another hole of its own letter that has one too: less than a leader costs. */
const HALFWAY = 8;
const BESIDE_LETTER = 30;
const PAST_END = 60;
/** Or above or below the part, among its numbers: more than a leader costs. */
const OFF_VIEW = 12;
/** Of several holes together, for each point from their middle. */
const OFF_MIDDLE = 0.05;
const WAYS = Array.from({ length: 24 }, (_, i) => circlePoint(i, 24));

interface Among extends Omit<Around, "view"> {
  readonly written: readonly Box[];
  readonly others: readonly Shows[];
  /** What else has the same letter. */
  readonly alike: readonly Shows[];
  /** Past whose ends it would be taken for the letter of a hole into an end. */
  readonly view: Box | null;
}

/** What a letter costs for what it may be taken for: past an end wherever it is, beside others only without a leader. */
function mistaken([x, y]: Spot, far: number, box: Box, { written, others, alike, view }: Among): number {
  const isPast = view !== null && (x < view.left || x > view.right);
  const isOff = view !== null && (y < view.top || y > view.bottom);
  const past = isPast ? PAST_END : isOff ? OFF_VIEW : 0;
  if (far >= FAR[0]) return past;
  const isNear = ({ stretch, r }: Shows): boolean => fromStretch([x, y], stretch) - r < far + NEARER;
  const isBeside = written.some((other) => meets(grown(box, 4), other));
  return (
    (others.some(isNear) ? MISTAKEN : 0) + (alike.some(isNear) ? HALFWAY : 0) + (isBeside ? BESIDE_LETTER : 0) + past
  );
}

const mean = (all: readonly number[]): number => all.reduce((sum, each) => sum + each, 0) / Math.max(1, all.length);

/** The nearest place with nothing through it, from the mouth or the bottom; where none is free, that with least through it. */
function lettered(
  letter: string,
  ends: readonly { readonly at: Spot; readonly r: number }[],
  among: Among,
): Lettered | null {
  const { plate, pen, columns } = among;
  const width = pen.measure(letter, "italic", 10);
  const middle: Spot = [mean(ends.map(({ at }) => at[0])), mean(ends.map(({ at }) => at[1]))];
  let best: Lettered | null = null;
  const beats = (cost: number): boolean => !best || cost < best.cost - 1e-9;
  for (const far of [...NEAR, ...FAR]) {
    const least = far < FAR[0] ? far : far + LED;
    if (!beats(least)) break;
    for (const { at, r } of ends)
      for (const way of WAYS) {
        const spot = ahead(at, way, r + far);
        const box = grown(boxAround(spot[0], spot[1] + 0.5, width, 9), 1);
        if (!beats(least) || !plate.isFree(box)) continue;
        const struck =
          least + STRUCK * plate.linesThrough(box) + (columns.some((column) => meets(column, box)) ? AMONG_NUMBERS : 0);
        if (!beats(struck)) continue;
        const leader: Segment | null = far < FAR[0] ? null : [ahead(at, way, r + 1.5), ahead(spot, way, -6.5)];
        const led = leader ? 2 * plate.linesAcross(leader) + (plate.blocks(leader) ? BLOCKED : 0) : 0;
        const cost = struck + led + mistaken(spot, far, box, among) + OFF_MIDDLE * fromStretch(spot, [middle, middle]);
        if (beats(cost)) best = { spot, box, leader, cost };
      }
  }
  return best;
}
