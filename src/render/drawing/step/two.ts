/** Two pictures of a step in one frame, each with its words below it: beside or below each other, whichever lets them be larger. */
import type { View } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { type Length, negate } from "../../../units/index.ts";
import type { Frame } from "../../style.ts";
import type { Pen } from "../drawing.ts";
import { heightOf, widthOf } from "../fit.ts";
import { captionUnder, inLines, underLines } from "./captions.ts";
import { drawnOnce, type OnPage, type Painted } from "./drawn.ts";
import type { OtherSide } from "./other-side.ts";
import { highestFor, sizeFor, type Taken } from "./shot.ts";
import { sideSeen } from "./side-seen.ts";

/** Between them, in points. */
const GAP = 8;
/** Neither gets a smaller share of the frame, even where it needs less. */
const LEAST = 0.42;
/** No lower than this: what is shown would be no more than marks. */
export const LOWEST_OF_TWO = 176;

/** One of them, and what is said below it. */
export interface OneOfTwo {
  readonly taken: Taken;
  readonly words: readonly string[];
  /** What the second one shows, in its description; else how it is fastened. */
  readonly shows?: string;
}

/** What they say of themselves, so that the two are not taken for two things. */
export function wordsOfTwo(
  first: View,
  { view, only, past }: OtherSide,
  { ceiling, say }: { readonly ceiling: Vec; readonly say: (length: Length) => string },
): readonly (readonly string[])[] {
  const seen = (from: View): readonly string[] => [sideSeen(from, ceiling) ?? `Seen from ${from.name}`];
  const edge = past
    ? `, its front end ${say(past.n > 0n ? past : negate(past))} ${past.n > 0n ? "past" : "behind"} the edge`
    : "";
  const alone = only === null ? [] : [`Only ${only}${edge}`];
  return [seen(first), [...(view.name === first.name ? [] : seen(view)), ...alone]];
}

export function drawnTwice(two: readonly [OneOfTwo, OneOfTwo], page: OnPage): Painted {
  const [first, second] = placed(page.frame, two, page.pen);
  const one = drawnOnce(two[0].taken, { ...page, frame: first.frame, isOneOfTwo: true });
  const other = drawnOnce(two[1].taken, { ...page, frame: second.frame, before: null, isOneOfTwo: true });
  const captions = [first, second].flatMap(({ lines, frame }) => captionUnder(lines, frame, page.pen));
  return {
    ...one,
    items: [...one.items, ...other.items, ...captions],
    alt: `${one.alt} A second picture shows ${two[1].shows ?? "how it is fastened"}. ${two[1].words.join(". ")}.`,
  };
}

/** In a frame so wide they get no larger where it is higher. */
export const highestOfTwo = (two: readonly OneOfTwo[], width: number): number =>
  two.reduce((sum, { taken, words }) => sum + highestFor(taken.extent, width) + underLines(words), GAP);

interface Place {
  readonly frame: Frame;
  readonly lines: readonly string[];
}

function placed(frame: Frame, two: readonly [OneOfTwo, OneOfTwo], pen: Pen): readonly [Place, Place] {
  const [one, other] = [two[0].taken.extent, two[1].taken.extent];
  const { x, y, width, height } = frame;
  const left = (width - GAP) * shareOf(widthOf(one), widthOf(other));
  const top = (height - GAP) * shareOf(heightOf(one), heightOf(other));
  const over = (where: Frame, i: 0 | 1): Place => {
    const lines = two[i].words.flatMap((words) => inLines(words, where.width, pen));
    return { lines, frame: { ...where, height: Math.max(1, where.height - underLines(lines)) } };
  };
  const most = [left, width - GAP - left].map((each, i) => highestFor(two[i as 0 | 1].taken.extent, each));
  const level = ({ lines, frame: own }: Place): Place => ({
    lines,
    frame: { ...own, height: Math.min(own.height, Math.max(...most)) },
  });
  // No higher than they are, so that their words follow them.
  const beside = [
    level(over({ ...frame, width: left }, 0)),
    level(over({ ...frame, x: x + left + GAP, width: width - GAP - left }, 1)),
  ] as const;
  const below = [
    over({ ...frame, height: top }, 0),
    over({ ...frame, y: y + top + GAP, height: height - GAP - top }, 1),
  ] as const;
  const large = ([a, b]: readonly [Place, Place]): number =>
    sizeFor(one, a.frame, null) * sizeFor(other, b.frame, null);
  return large(beside) > large(below) ? beside : below;
}

const shareOf = (one: number, other: number): number =>
  Math.max(LEAST, Math.min(1 - LEAST, one / Math.max(1, one + other)));
