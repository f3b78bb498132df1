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

/** Of more than this many those at the ends and the one in the middle have the letter. */
const MOST = 5;

export interface Around {
  readonly plate: Plate;
  readonly pen: Pen;
  /** Where numbers stand one below the other. */
  readonly columns: readonly Box[];
}

/** Letters beside the holes that the view looks into, or that run across it; farther off in a crowd, with a leader. */
export function letters(
  bores: readonly Bore[],
  { spot, scale, towards }: Shown,
  { plate, pen, columns }: Around,
): readonly Item[] {
  const put = (hole: Hole, letter: string, isMore: boolean): readonly Item[] => {
    const wide = hole.slot?.length ?? hole.stages[0]?.diameter ?? { n: 0n, d: 1n };
    const r = (toNumber(wide) * scale) / 2;
    const bottom = spot(bottomOf(hole));
    const seen = comesOut(hole, towards) ? { at: bottom, r: r / 2 } : { at: spot(toVec(hole.at)), r };
    const ends = [seen, ...(hole.through ? [] : [{ at: bottom, r: 1 }])];
    const place = lettered(letter, ends, { plate, pen, columns });
    // One of several alike does without rather than be in the way.
    if (!place || (isMore && place.cost >= BLOCKED)) return [];
    plate.addBox(place.box);
    if (place.leader) plate.addLeader(place.leader);
    return [
      ...strokes(place.leader ? [place.leader] : [], NARROW),
      centred(pen, letter, place.spot, { font: "italic", ink: BLACK }).item,
    ];
  };
  const told = bores.map(({ holes, letter }) => {
    const some = holes.length <= MOST ? holes : endsOf(holes, (hole) => spot(toVec(hole.at)));
    // Each letter has its first before any has more.
    const [first, ...more] = some;
    return { letter, more, items: first ? put(first, letter, false) : [] };
  });
  return told.flatMap(({ letter, more, items }) => [
    ...items,
    ...more.flatMap((hole) => put(hole, letter, items.length > 0)),
  ]);
}

/** The first, the last and the middle one as they stand on the page, from the left and from above. */
function endsOf(holes: readonly Hole[], spot: (hole: Hole) => Spot): readonly Hole[] {
  const all = holes.map((hole) => ({ hole, at: spot(hole) }));
  const sorted = all.sort(({ at: a }, { at: b }) => (Math.abs(a[0] - b[0]) > SAME ? a[0] - b[0] : a[1] - b[1]));
  return [0, sorted.length - 1, Math.floor(sorted.length / 2)].flatMap((i) => sorted[i]?.hole ?? []);
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
const WAYS = Array.from({ length: 24 }, (_, i) => circlePoint(i, 24));

/** The nearest place with nothing through it, from the mouth or the bottom; where none is free, that with least through it. */
function lettered(
  letter: string,
  ends: readonly { readonly at: Spot; readonly r: number }[],
  { plate, pen, columns }: Around,
): Lettered | null {
  const width = pen.measure(letter, "italic", 10);
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
        const cost = struck + (leader ? 2 * plate.linesAcross(leader) + (plate.blocks(leader) ? BLOCKED : 0) : 0);
        if (beats(cost)) best = { spot, box, leader, cost };
      }
  }
  return best;
}
