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

/** Between pictures, and above and below the words that stand below one. */
const BETWEEN = 12;
const GAP = 8;
const MOST_IN_ROW = 3;

/** In the plane of view. */
interface Around {
  readonly wide: number;
  readonly high: number;
}

interface Apart extends Around, Pick<Assembly, "count" | "others"> {
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
  assembliesOf(build).map(({ parts, count, others }): Apart => {
    const taken = takeApart(build, parts);
    return { taken, count, others, wide: taken ? widthOf(taken.extent) : 1, high: taken ? heightOf(taken.extent) : 1 };
  });

function figures(plan: Plan, assemblies: readonly Apart[], size: Size): Figures {
  const [first, ...others] = assemblies;
  if (!first) return { height: 0, paint: () => [] };
  if (others.length === 0) {
    const { height, paint } = explodedPicture(plan, size, first.taken);
    return { height, paint: (x, y) => [paint(x, y)] };
  }
  const under = Math.max(...others.map((each) => wordsBelow(each).length)) * TYPE.caption.leading + GAP;
  const set = best(first, others, size, under);
  const cells = others.map((each, i) => cellOf(plan, set.frames[i] ?? set.standing, each));
  return placed(explodedPicture(plan, set.standing, first.taken), set, cells, under);
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

/** What stands as large as it goes, and what goes on it not much smaller: of the two the first counts twice. `under`: the height of the words below each of these. */
export function best(first: Around, others: readonly Around[], size: Size, under: number): SetOut {
  const rows = Array.from({ length: Math.min(MOST_IN_ROW, others.length) }, (_, i) => i + 1);
  const tried = SHARES.flatMap((share) => [
    ...rows.map((inRow) => inRows(others.length, inRow, share, size, under)),
    inColumn(others.length, share, size, under),
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
function inRows(count: number, inRow: number, share: number, { width, height }: Size, under: number): SetOut {
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
      height: Math.max(1, pitch - BETWEEN - under),
    })),
  };
}

/** The doors and drawers to the right of what stands, one below the other. */
function inColumn(count: number, share: number, { width, height }: Size, under: number): SetOut {
  const pitch = height / count;
  const wide = width * (1 - share) - BETWEEN;
  return {
    standing: { x: 0, y: 0, width: width * share, height },
    frames: Array.from({ length: count }, (_, i) => ({
      x: width - wide,
      y: i * pitch,
      width: wide,
      height: Math.max(1, pitch - BETWEEN - under),
    })),
  };
}

interface Cell {
  readonly picture: Picture;
  readonly place: Place;
  /** Lines below it, of the others that are like it. */
  readonly words: readonly string[];
}

const cellOf = (plan: Plan, place: Place, each: Apart): Cell => ({
  picture: explodedPicture(plan, place, each.taken),
  place,
  words: wordsBelow(each),
});

/** "2 like this"; "The other in the mirror, / with F for E, G for D". */
const wordsBelow = ({ count, others }: Pick<Apart, "count" | "others">): readonly string[] => [
  ...(count > 1 ? [`${count} like this`] : []),
  ...others.flatMap(({ mirrored, marks }) => [
    `${others.length > 1 ? "Another" : "The other"} ${mirrored ? "in the mirror" : "like this"},`,
    `with ${marks.map(([own, instead]) => `${own} for ${instead}`).join(", ")}`,
  ]),
];

/** What stands, and close below it or to its right the others; each with how many there are of it. */
function placed(top: Picture, { standing, frames }: SetOut, cells: readonly Cell[], under: number): Figures {
  const high = Math.max(...cells.map(({ picture }) => picture.height));
  const below = frames.every(({ y }) => y >= standing.height);
  const levels = [...new Set(frames.map(({ y }) => y))];
  const foot = ({ place, picture }: Cell): number =>
    below
      ? top.height + (levels.indexOf(place.y) + 1) * (BETWEEN + high + under) - under
      : place.y + (place.height + picture.height) / 2;
  const height = Math.max(
    top.height,
    ...cells.map((cell) => foot(cell) + (cell.words.length === 0 ? 0 : GAP + cell.words.length * TYPE.caption.leading)),
  );
  return {
    height,
    paint: (x, y) => [
      top.paint(x, below ? y : y + (height - top.height) / 2),
      ...cells.flatMap((cell) => {
        const { picture, place, words } = cell;
        const end = y + foot(cell);
        const middle = x + place.x + place.width / 2;
        const lines = words.map((text, i) =>
          label(text, TYPE.caption, middle, end + 4 + i * TYPE.caption.leading + baseline(TYPE.caption), "centre"),
        );
        const told = lines.length === 0 ? [] : [{ kind: "group", role: "paragraph", items: lines } as const];
        return [picture.paint(x + place.x, end - picture.height), ...told];
      }),
    ],
  };
}
