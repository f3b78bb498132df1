/** The parts drawn apart: in one picture, or what stands, and below it or beside it each door or drawer that is not like another. */
import type { Item } from "../document.ts";
import { type Assembly, assembliesOf } from "../drawing/exploded/assemblies.ts";
import { MARGIN } from "../drawing/exploded/exploded.ts";
import { heightOf, widthOf } from "../drawing/fit.ts";
import { type TakenApart, takeApart } from "../drawing/index.ts";
import { TYPE } from "../style.ts";
import { baseline } from "../typeset/atom.ts";
import { label } from "../typeset/lines.ts";
import { explodedPicture, type Picture, type Size } from "./pictures.ts";
import type { Plan } from "./plan.ts";

/** One figure or several. */
export interface Figures {
  readonly height: number;
  readonly paint: (x: number, y: number) => readonly Item[];
}

/** Between pictures, and for the words below one. */
const BETWEEN = 12;
const WORDS = 20;
const MOST_IN_ROW = 3;

/** In the plane of view. */
interface Around {
  readonly wide: number;
  readonly high: number;
}

interface Apart extends Around, Pick<Assembly, "count"> {
  readonly taken: TakenApart | null;
}

/** In a frame as much higher than the room as its margins stay empty: what is drawn fills the room. */
export function takenApart(plan: Plan, size: Size): Figures {
  const assemblies = apart(plan);
  let best = figures(plan, assemblies, size);
  for (const share of SHARES_OF_EMPTY) {
    const empty = size.height - best.height;
    if (empty < WORTH) return best;
    const larger = figures(plan, assemblies, { ...size, height: size.height + share * empty });
    // It is as wide as it goes.
    if (larger.height <= best.height) return best;
    if (larger.height <= size.height) best = larger;
  }
  return best;
}

/** Less empty height, in points, is not seen; the rest is given to the frame, or half of it where that is too much. */
const WORTH = 40;
const SHARES_OF_EMPTY = [1, 0.5] as const;

const apart = ({ build }: Plan): readonly Apart[] =>
  assembliesOf(build).map(({ parts, count }): Apart => {
    const taken = takeApart(build, parts);
    return { taken, count, wide: taken ? widthOf(taken.extent) : 1, high: taken ? heightOf(taken.extent) : 1 };
  });

function figures(plan: Plan, assemblies: readonly Apart[], size: Size): Figures {
  const [first, ...others] = assemblies;
  if (!first) return { height: 0, paint: () => [] };
  if (others.length === 0) {
    const { height, paint } = explodedPicture(plan, size, first.taken);
    return { height, paint: (x, y) => [paint(x, y)] };
  }
  const set = best(first, others, size);
  const cells = others.map(({ taken, count }, i) => cellOf(plan, set.frames[i] ?? set.standing, taken, count));
  return placed(explodedPicture(plan, set.standing, first.taken), set, cells);
}

interface Place extends Size {
  readonly x: number;
  readonly y: number;
}

interface SetOut {
  readonly standing: Place;
  readonly frames: readonly Place[];
}

/** Of the height or of the width, for what stands. */
const SHARES: readonly number[] = [0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8];

/** What stands as large as it goes, and what goes on it not much smaller: of the two the first counts twice. */
export function best(first: Around, others: readonly Around[], size: Size): SetOut {
  const rows = Array.from({ length: Math.min(MOST_IN_ROW, others.length) }, (_, i) => i + 1);
  const tried = SHARES.flatMap((share) => [
    ...rows.map((inRow) => inRows(others.length, inRow, share, size)),
    inColumn(others.length, share, size),
  ]);
  const scale = ({ wide, high }: Around, place: Place): number =>
    Math.max(0, Math.min((place.width - 2 * MARGIN) / wide, (place.height - 2 * MARGIN) / high));
  const worth = ({ standing, frames }: SetOut): number => {
    const one = scale(first, standing);
    const least = Math.min(...others.map((other, i) => scale(other, frames[i] ?? standing)));
    return one * one * Math.min(one, least);
  };
  return tried.reduce((so, each) => (worth(each) > worth(so) ? each : so));
}

/** The doors and drawers below what stands. */
function inRows(count: number, inRow: number, share: number, { width, height }: Size): SetOut {
  const rows = Math.ceil(count / inRow);
  const wide = (width - (inRow - 1) * BETWEEN) / inRow;
  const standing = height * share;
  const pitch = (height - standing) / rows;
  return {
    standing: { x: 0, y: 0, width, height: standing },
    frames: Array.from({ length: count }, (_, i) => ({
      x: (i % inRow) * (wide + BETWEEN),
      y: standing + BETWEEN + Math.floor(i / inRow) * pitch,
      width: wide,
      height: Math.max(1, pitch - BETWEEN - WORDS),
    })),
  };
}

/** The doors and drawers to the right of what stands, one below the other. */
function inColumn(count: number, share: number, { width, height }: Size): SetOut {
  const pitch = height / count;
  const wide = width * (1 - share) - BETWEEN;
  return {
    standing: { x: 0, y: 0, width: width * share, height },
    frames: Array.from({ length: count }, (_, i) => ({
      x: width - wide,
      y: i * pitch,
      width: wide,
      height: Math.max(1, pitch - BETWEEN - WORDS),
    })),
  };
}

interface Cell {
  readonly picture: Picture;
  readonly place: Place;
  readonly count: number;
}

const cellOf = (plan: Plan, place: Place, taken: TakenApart | null, count: number): Cell => ({
  picture: explodedPicture(plan, place, taken),
  place,
  count,
});

/** What stands, and close below it or to its right the others; each with how many there are of it. */
function placed(top: Picture, { standing, frames }: SetOut, cells: readonly Cell[]): Figures {
  const high = Math.max(...cells.map(({ picture }) => picture.height));
  const below = frames.every(({ y }) => y >= standing.height);
  const levels = [...new Set(frames.map(({ y }) => y))];
  const foot = ({ place }: Cell): number =>
    below ? top.height + (levels.indexOf(place.y) + 1) * (BETWEEN + high + WORDS) - WORDS : place.y + place.height;
  const height = Math.max(top.height, ...cells.map((cell) => foot(cell) + (cell.count > 1 ? WORDS : 0)));
  return {
    height,
    paint: (x, y) => [
      top.paint(x, below ? y : y + (height - top.height) / 2),
      ...cells.flatMap((cell) => {
        const { picture, place, count } = cell;
        const end = y + foot(cell);
        const middle = x + place.x + place.width / 2;
        const words = label(`${count} like this`, TYPE.caption, middle, end + 4 + baseline(TYPE.caption), "centre");
        return [
          picture.paint(x + place.x, end - picture.height),
          ...(count > 1 ? [{ kind: "group", role: "paragraph", items: [words] } as const] : []),
        ];
      }),
    ],
  };
}
