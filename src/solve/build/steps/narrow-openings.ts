/** Sides of parts that look into openings where no hand with a block gets in, when the glue-up that closes them is done. */
import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { type AxisIndex, INDICES, indexOf } from "../../design/space.ts";
import type { Part } from "../../design.ts";
import { sideWord } from "./words/measured.ts";

const INCH = 25.4 * UNITS_PER_MM;

/** Between two sides that face each other a block and the fingers that hold it need so much. Common practice, no source. */
const ACROSS = 3 * INCH;
/** In an opening that is closed all round a block is run no shorter than this, where it is less than this high. Common practice, no source. */
const [ALONG, HIGH] = [4 * INCH, 6 * INCH];
/** What stands out of a side by less keeps no block off it. Common practice, no source. */
const OUT = INCH;
/** What lies closer touches: nothing of it is seen. */
const TOUCHES = INCH / 16;
/** Shorter bits are sanded with a fold of paper. */
const LEAST = INCH / 2;

/** From which ends an opening along an axis is looked into, low and high: not from behind, nor from below. */
const SEEN: Readonly<Record<AxisIndex, readonly (0 | 1)[]>> = { 0: [0, 1], 1: [0], 2: [1] };

export interface NarrowSide {
  readonly id: string;
  readonly word: "face" | "edge" | "end";
}

/** Of some parts that are together, the sides along their lengths that look into narrow openings somewhere. */
export function narrowSides(parts: readonly Part[]): readonly NarrowSide[] {
  const square = parts.filter(({ turned }) => !turned);
  return square.flatMap((part) =>
    INDICES.filter((axis) => axis !== indexOf(part.axes.length)).flatMap((axis) =>
      [false, true]
        .filter((high) => isNarrow(part, axis, high, square))
        .map(() => ({ id: part.id, word: sideWord(part, axis) })),
    ),
  );
}

/** Along the length of a part. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What lies before a side, along its length and outwards from it. Units of length as doubles. */
interface Before {
  readonly along: Stretch;
  readonly out: Stretch;
  /** Past the middle line of the side, on its low and on its high side. */
  readonly hides: readonly [low: boolean, high: boolean];
}

const span = ({ body }: Part, i: AxisIndex): Stretch => ({
  from: toNumber(body.low[i]),
  to: toNumber(body.high[i]),
});

function isNarrow(part: Part, axis: AxisIndex, high: boolean, all: readonly Part[]): boolean {
  const along = indexOf(part.axes.length);
  const third = (3 - along - axis) as AxisIndex;
  const own = span(part, axis);
  const { from, to } = span(part, third);
  const middle = (from + to) / 2;
  const before = all.flatMap((each): readonly Before[] => {
    const across = span(each, axis);
    const out = high
      ? { from: across.from - own.to, to: across.to - own.to }
      : { from: own.from - across.to, to: own.from - across.from };
    const beside = span(each, third);
    return each === part || out.to <= TOUCHES
      ? []
      : [{ along: span(each, along), out, hides: [beside.from < middle, beside.to > middle] }];
  });
  return isNarrowBehind(span(part, along), before, SEEN[third]);
}

const covers = ({ from, to }: Stretch, at: number): boolean => from < at && at < to;

/** Looked at along the middle line of the side, from one thing on it to the next. */
function isNarrowBehind(own: Stretch, all: readonly Before[], seen: readonly (0 | 1)[]): boolean {
  const inLine = all.filter(({ hides: [low, high] }) => low && high);
  const on = inLine.filter(({ out }) => out.from <= TOUCHES);
  const walls = on.filter(({ out }) => out.to > OUT).map((each) => each.along);
  const cuts = inLine.flatMap((each) => [each.along.from, each.along.to]).filter((at) => covers(own, at));
  const places = [own.from, ...cuts.toSorted((a, b) => a - b), own.to];
  return places.slice(1).some((to, i) => {
    const from = places[i] as number;
    const at = (from + to) / 2;
    const here = all.filter((each) => covers(each.along, at));
    if (to - from < LEAST || on.some((each) => here.includes(each))) return false;
    if (!seen.some((way) => !here.some(({ out, hides }) => hides[way] && covers(out, LEAST / 2)))) return false;
    const across = Math.min(...here.filter((each) => inLine.includes(each)).map(({ out }) => out.from));
    const below = Math.max(...walls.map((each) => each.to).filter((end) => end <= at));
    const above = Math.min(...walls.map((each) => each.from).filter((end) => end >= at));
    return across < ACROSS || above - below < (across < HIGH ? ALONG : ACROSS);
  });
}
