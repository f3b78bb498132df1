/** Lines of numbers beside a view, one for each row: its holes as ticks, its ends named, and between them how many spaces of which size. */
import type { Pen } from "../drawing.ts";
import { SIZE } from "./ordinates.ts";

/** From line to line. */
export const LADDER = 14;

/** Along the side, in points: rightwards, or up the page. */
export interface Line {
  readonly from: number;
  readonly to: number;
  /** Where each of its places stands, the ends too. */
  readonly places: readonly number[];
  /** What its ends are called, and what stands between them. */
  readonly ends: readonly [string, string];
  readonly words: string;
}

interface Word {
  readonly text: string;
  readonly middle: number;
  readonly width: number;
  /** So many levels farther out than its line. */
  readonly down: number;
}

export interface SetLine {
  readonly line: Line;
  readonly words: readonly Word[];
  /** What it takes up, words and all. */
  readonly low: number;
  readonly high: number;
  /** Which line from the view on, from 0. */
  readonly level: number;
}

export const ARROW = 5;
const AIR = 4;
/** Between the words of two lines on one level; and where one of them stands in a line and the other below its own, or they read as one. */
const WORDS_APART = 10;
const UNLIKE_APART = 36;

/** So many places are tried. */
const MOST_TRIED = 4000;

/**
 * Where the lines and their texts stand between two limits, as near to the view as may be: no extension line runs through a text.
 * All of them are told in one form where that can be. Null where they do not go in.
 */
export function setLines(
  lines: readonly Line[],
  limits: readonly [number, number],
  pen: Pen,
): readonly SetLine[] | null {
  const all = lines.map((line) => fitted(line, limits, lines.length + 1, pen));
  const inForm = (form: (way: Way) => boolean) => searched(all.map((ways) => ways.filter(form)));
  const alike = [inForm(isApart), inForm(isUnder)].flatMap((set) => (set ? [set] : []));
  return alike.sort((a, b) => reachOf(a) - reachOf(b))[0] ?? searched(all);
}

/** The places of a line and its words, whichever the level. */
type Way = Omit<SetLine, "level">;

/** The ends of a line have figures of their own; or all that is told of it stands in one text below it. */
const isApart = ({ words }: Way): boolean => words.length > 1;
const isUnder = ({ words }: Way): boolean => words.every(({ down }) => down > 0);

/** The first places that go together, of the ways of each line. */
function searched(all: readonly (readonly Way[])[]): readonly SetLine[] | null {
  const places = all.map((ways) =>
    [...all, ...all].flatMap((_, level) => ways.map((way): SetLine => ({ ...way, level }))),
  );
  if (places.some((own) => own.length === 0)) return null;
  let tried = 0;
  const rest = (set: readonly SetLine[]): readonly SetLine[] | null => {
    const own = places[set.length];
    if (own === undefined) return set;
    for (const place of own) {
      if (++tried > MOST_TRIED) return null;
      if (!set.every((other) => goTogether(place, other))) continue;
      const found = rest([...set, place]);
      if (found !== null) return found;
    }
    return null;
  };
  return rest([]);
}

/** The same with each text on a level of its own below, in the order of the lines; null where that cannot be, or no text needs it. */
export function inSteps(
  lines: readonly Line[],
  limits: readonly [number, number],
  pen: Pen,
): readonly SetLine[] | null {
  const sorted = [...lines].sort((a, b) => a.from - b.from);
  const set = lines.map((line): SetLine | null => {
    const down = sorted.indexOf(line) + 1;
    const way = fitted(line, limits, lines.length + 1, pen).find(
      ({ words }) => words.length === 1 && words[0]?.down === down,
    );
    return way ? { ...way, level: 0 } : null;
  });
  const found = set.flatMap((one) => one ?? []);
  return found.length === lines.length && found.every((one, i) => found.slice(i + 1).every((o) => goTogether(one, o)))
    ? found
    : null;
}

/** Whether what is told of lines reads downwards in their order. */
export function readsDown(set: readonly SetLine[]): boolean {
  const lowest = [...set]
    .sort((a, b) => a.line.from - b.line.from)
    .map(({ level, words }) => Math.max(...words.map(({ down }) => level + down)));
  return lowest.every((at, i) => i === 0 || at >= (lowest[i - 1] as number));
}

interface Stretch {
  readonly level: number;
  readonly low: number;
  readonly high: number;
  /** A word: in its line, or so many levels below it. */
  readonly down?: number;
}

/** The line and its words, each on its level. */
const stretches = ({ line, words, level }: SetLine): readonly Stretch[] => [
  { level, low: line.from, high: line.to },
  ...words.map(({ middle, width, down }) => ({
    level: level + down,
    low: middle - width / 2,
    high: middle + width / 2,
    down,
  })),
];

function airOf({ down: a }: Stretch, { down: b }: Stretch): number {
  if (a === undefined || b === undefined) return AIR;
  return a > 0 === b > 0 ? WORDS_APART : UNLIKE_APART;
}

const goTogether = (one: SetLine, other: SetLine): boolean =>
  stretches(one).every((a) =>
    stretches(other).every(
      (b) => a.level !== b.level || b.low >= a.high + airOf(a, b) || a.low >= b.high + airOf(a, b),
    ),
  ) &&
  clears(one, other) &&
  clears(other, one);

/** Whether the extension lines of one run through no word of another that is nearer to the view. */
const clears = ({ line, level }: SetLine, other: SetLine): boolean =>
  other.words.every(
    ({ middle, width, down }) =>
      other.level + down >= level || [line.from, line.to].every((at) => Math.abs(at - middle) > width / 2 + AIR / 2),
  );

/**
 * The ends inside the line, else beside it; what stands between them in the line, or a level farther out; else all in one text after it,
 * before it, or up to `far` levels farther out.
 */
function fitted(line: Line, [low, high]: readonly [number, number], far: number, pen: Pen): readonly Way[] {
  const word = (text: string, middle: number): Word => ({
    text,
    middle,
    width: pen.measure(text, "regular", SIZE),
    down: 0,
  });
  const { from, to, ends, words } = line;
  const [first, between, last] = [word(ends[0], 0), word(words, (from + to) / 2), word(ends[1], 0)];
  const side = ARROW + 2;
  const of = (...set: readonly Word[]): Way => ({
    ...{ line, words: set },
    low: Math.min(from, ...set.map(({ middle, width }) => middle - width / 2)),
    high: Math.max(to, ...set.map(({ middle, width }) => middle + width / 2)),
  });
  const before = (each: Word): Word => ({ ...each, middle: from - AIR - each.width / 2 });
  const after = (each: Word): Word => ({ ...each, middle: to + AIR + each.width / 2 });
  const inside = (down: 0 | 1) =>
    of(
      { ...first, middle: from + side + first.width / 2 },
      { ...between, down },
      { ...last, middle: to - side - last.width / 2 },
    );
  const beside = (down: 0 | 1) => of(before(first), { ...between, down }, after(last));
  const all = word(`${words}, ${ends[0]} to ${ends[1]}`, 0);
  const inReach = Math.max(low + all.width / 2, Math.min(high - all.width / 2, (from + to) / 2));
  const under = Array.from({ length: far }, (_, i) => of({ ...all, middle: inReach, down: i + 1 }));
  const long = to - from;
  const twoIn = first.width + last.width + 2 * side + 2 * AIR;
  if (long >= twoIn + between.width + 4 * AIR) return [inside(0)];
  const ways = [
    ...(long >= between.width + 2 * side ? [beside(0)] : []),
    ...(long >= twoIn ? [inside(1)] : []),
    ...[beside(1), of(after(all)), of(before(all)), ...under],
  ];
  return ways.filter((way) => way.low >= low - 0.01 && way.high <= high + 0.01);
}

/** How far all levels reach from the view. */
export const reachOf = (set: readonly SetLine[]): number =>
  Math.max(0, ...set.flatMap(({ level, words }) => words.map(({ down }) => level + down + 1))) * LADDER;
