/** The end of a part in a view of its own, larger and at a stated scale, where the equal spaces of its edges would run together. */
import type { Item } from "../../document.ts";
import { GREY } from "../../palette.ts";
import type { Pen, Spot } from "../drawing.ts";
import { heightOf } from "../fit.ts";
import { boxAround, type Plate } from "../plate.ts";
import type { Scale } from "../scale.ts";
import type { Ladder } from "./ladders.ts";
import { sideWord } from "./lying.ts";
import {
  apart,
  LEADER,
  leaderFor,
  ordinates,
  ordinatesAlong,
  ordinatesLeft,
  PITCH,
  SIZE,
  type Told,
  widest,
} from "./ordinates.ts";
import type { Sheet } from "./sheet.ts";

/** In points: spaces that are drawn closer are one blot; and so far apart they stand in the larger view at least. */
const [BLOT, CLEAR] = [4, 8] as const;
/** Of more spaces the figures would stand far from their places; and no larger is drawn, in points. */
const MOST_SPACES = 8;
const LARGEST = 12 * PITCH;

export interface CloseEnd {
  readonly scale: Scale;
  /** Every place across and through the part that its row told only together. */
  readonly across: readonly Told[];
  readonly through: readonly Told[];
  /** The rows that keep their line. */
  readonly ladders: Sheet["ladders"];
}

/** The smallest of the scales, which come largest first, at which the spaces are clear; null where they are so at the scale of the part, or at none. */
export function closeEnd(sheet: Sheet, { points }: Scale, scales: readonly Scale[]): CloseEnd | null {
  const { lies, numbers, ladders, face, edge } = sheet;
  const space = ({ row }: Ladder): number => (row.to - row.from) / row.spaces;
  const isBlot = (ladder: Ladder): boolean =>
    ladder.axis > 0 && ladder.holes.length === 0 && ladder.row.spaces <= MOST_SPACES && space(ladder) * points < BLOT;
  const blots = ladders.filter(isBlot);
  if (!lies.end || blots.length === 0) return null;
  const least = CLEAR / Math.min(...blots.map(space));
  const scale = scales.findLast((each) => each.points >= least);
  const high = Math.max(heightOf(face.extent), heightOf(edge.extent));
  if (!scale || high * scale.points > LARGEST) return null;
  const all = (axis: 1 | 2, others: readonly Told[]): readonly Told[] =>
    [...others, ...blots.filter((ladder) => ladder.axis === axis).flatMap(({ inside }) => inside)].sort(
      (a, b) => a.value - b.value,
    );
  return {
    scale,
    across: all(1, numbers.across),
    through: all(2, numbers.through),
    ladders: ladders.filter((ladder) => !blots.includes(ladder)),
  };
}

/** Its numbers and what it is called, around it; from the left and the top of where it stands. */
export interface CloseSet extends CloseEnd {
  /** Of the view itself. */
  readonly left: number;
  readonly top: number;
  /** Down the page from the top of the view, where the numbers left of it stand, and how long their leaders are. */
  readonly bent: readonly number[];
  readonly long: number;
  readonly caption: string;
  /** Of all. */
  readonly width: number;
  readonly height: number;
}

/** From the view to what it is called. */
const BELOW = 16;

export function setEnd(close: CloseEnd, { lies, face, edge }: Sheet, pen: Pen): CloseSet {
  const k = close.scale.points;
  const wanted = close.across.map(({ value }) => (face.extent.high[1] - value) * k).reverse();
  const bent = apart(wanted, Number.NEGATIVE_INFINITY);
  const long = leaderFor(wanted, bent);
  const caption = `${name(lies.end?.view.towards)} end, scale ${close.scale.text}`;
  const over = LEADER + widest(close.through, pen);
  const top = Math.max(over, SIZE / 2 - (bent[0] ?? 0));
  const left = long + widest(close.across, pen) + 2;
  const deep = heightOf(edge.extent) * k;
  const spread = (close.through.length * PITCH - deep) / 2;
  const foot = Math.max(heightOf(face.extent) * k, (bent.at(-1) ?? 0) + SIZE / 2);
  return {
    ...{ ...close, left, top, bent, long, caption },
    width: left + Math.max(deep + Math.max(0, spread), pen.measure(caption, "regular", SIZE) - left),
    height: top + foot + BELOW,
  };
}

const name = (side: Parameters<typeof sideWord>[0] | undefined): string => {
  const word = side ? sideWord(side) : "";
  return `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`;
};

/** `spot`: of places across and through the part, on the page. */
export function drawEnd(
  set: CloseSet,
  at: Spot,
  { x, y }: { readonly x: (through: number) => number; readonly y: (across: number) => number },
  plate: Plate,
  pen: Pen,
): readonly Item[] {
  const [left, top] = [at[0] + set.left, at[1] + set.top];
  const width = pen.measure(set.caption, "regular", SIZE);
  const base = at[1] + set.height - 4;
  plate.addBox(boxAround(at[0] + width / 2, base - SIZE / 3, width, SIZE));
  const along = [...ordinates(set.through, x)].sort((a, b) => a.at - b.at);
  const bent = set.bent.map((each) => top + each);
  return [
    ...ordinatesAlong(along, "above", top, at[0], plate, pen),
    ...ordinatesLeft([...ordinates(set.across, y)].reverse(), { left, bent, long: set.long }, plate, pen),
    {
      ...{ kind: "text", x: at[0], y: base, text: set.caption, font: "regular", size: SIZE },
      ...{ ink: GREY, width },
    },
  ];
}
