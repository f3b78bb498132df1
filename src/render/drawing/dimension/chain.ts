/** Which stations become a chain of dimensions, and what is written in it. */
import { add, compare, equal, type Length, subtract, TOLERANCE, toNumber } from "../../../units/index.ts";
import { clearOpenings } from "./clear-openings.ts";
import { closing, type Printing } from "./closing.ts";
import { MATTERS, type Station } from "./stations.ts";

/** One dimension of a chain; `text` is what is printed. */
export interface Span {
  readonly from: Length;
  readonly to: Length;
  readonly text: string;
}

export interface ChainRules {
  /** Points on paper for each unit. */
  readonly scale: number;
  /** Two places nearer to each other on paper cannot both have a line. */
  readonly gap: number;
  /** What a number takes of the row, in points. */
  readonly pitch: number;
  /** Which face of a thin part counts where both cannot: the low one or the high one. */
  readonly face: "low" | "high";
}

/** Dimensions in a chain; more where each number finds its room in it. */
const MOST = 7;
const EVER = 9;

/** In points: a number at the end of a row stands outside it, so that only the lines need be told apart there. */
const AT_END = 3;

/** Whether a place lies so near to an end of the whole, at so many points for each unit, that it has no line of its own there. */
export const isAtEnd = (at: Length, end: Length, scale: number): boolean =>
  Math.abs(toNumber(at) - toNumber(end)) * scale < AT_END;

/** Where only one of the two sides of a gap has a line, it is the outside of what moves that matters so much more. */
const BEFORE = 0.1;

/**
 * The stations that a chain from `low` to `high` stops at, sorted; without its two ends. What lies as far from one end as
 * something else from the other is taken with it or not at all, so that a piece that is alike on both sides is measured alike;
 * one face of each of several alike in a row, where more of them are told in one number by that, even if some show a little more.
 */
export function chosen(all: readonly Station[], low: Length, high: Length, rules: ChainRules): readonly Station[] {
  const [from, to] = [toNumber(low), toNumber(high)];
  const within = all.filter((s) => s.weight >= MATTERS && toNumber(s.at) >= from && toNumber(s.at) <= to);
  const alike = taken(inPairs(within, from + to, rules), low, high, rules);
  const oneFace = within.map((station) => ({
    ...station,
    gap: false,
    weight: station.weight + (station.gap ? BEFORE : 0),
  }));
  const plain = taken(inOrder(oneFace, rules.face), low, high, rules);
  const coarse = oneFace.map((station) => ({ ...station, weight: Math.round(2 * station.weight) / 2 }));
  const even = taken(inOrder(coarse, rules.face), low, high, rules);
  const repeated = (stops: readonly Station[]): number => {
    const told = spans(
      stops.map((s) => s.at),
      low,
      high,
      { print: String },
    );
    return stops.length + 1 - told.length;
  };
  const best = [plain, even].reduce((most, each) => (repeated(each) > repeated(most) ? each : most), alike);
  if (best !== alike) return best;
  const clear = clearOpenings(alike, within, { scale: rules.scale, gap: rules.gap, least: AT_END });
  return clear.length + 1 <= EVER ? clear : alike;
}

/** Of sets in their order those that go in beside the ones before, and no more than a chain holds. */
function taken(
  order: readonly (readonly Station[])[],
  low: Length,
  high: Length,
  { scale, gap, pitch }: ChainRules,
): readonly Station[] {
  const sets: (readonly Station[])[] = [];
  const tooNear = (a: Station, other: Length, gapped: boolean): boolean => {
    const apart = Math.abs(toNumber(a.at) - toNumber(other));
    return apart * scale < gap && !(apart > TOLERANCE && (a.gap || gapped));
  };
  for (const set of order) {
    const there = sets.flat();
    const fits =
      !set.some(
        (station) =>
          [low, high].some((end) => isAtEnd(station.at, end, scale) && !(station.gap && !equal(station.at, end))) ||
          there.some((other) => tooNear(station, other.at, other.gap)),
      ) && bothGoIn(set, tooNear);
    if (fits) sets.push(set);
  }
  const count = () =>
    spans(
      sets.flat().map((s) => s.at),
      low,
      high,
      { print: String },
    ).length;
  const roomy = ((toNumber(high) - toNumber(low)) * scale) / pitch;
  const most = Math.max(MOST, Math.min(EVER, Math.floor(roomy)));
  while (sets.length > 0 && count() > most) sets.pop();
  return sets.flat().sort((a, b) => compare(a.at, b.at));
}

/** A pair lies apart, or is the two faces of what stands in the middle: without the second of them its two sides would not be alike. */
function bothGoIn(
  [one, other]: readonly Station[],
  tooNear: (a: Station, other: Length, gapped: boolean) => boolean,
): boolean {
  if (!one || !other || !tooNear(one, other.at, other.gap)) return true;
  return one.twins.some((twin) => equal(twin, other.at));
}

/** In tenths: lines of about the same length matter alike, and the face decides. */
const rank = (s: Station): number => Math.round(s.weight * 10);

function inOrder(all: readonly Station[], face: ChainRules["face"]): readonly (readonly Station[])[] {
  const toward = face === "low" ? 1 : -1;
  return [...all].sort((a, b) => rank(b) - rank(a) || toward * compare(a.at, b.at)).map((station) => [station]);
}

/** Stations alone or with the one across the middle, those that matter most first; of a pair the outer face, that of the frame around. */
function inPairs(
  all: readonly Station[],
  sum: number,
  { face, scale, gap }: ChainRules,
): readonly (readonly Station[])[] {
  const toward = face === "low" ? 1 : -1;
  const free = new Set(all);
  const sets = all.flatMap((station): (readonly Station[])[] => {
    if (!free.delete(station)) return [];
    const mirror = [...free].find(
      (other) =>
        Math.abs(rank(other) - rank(station)) <= 1 &&
        (Math.abs(toNumber(other.at) + toNumber(station.at) - sum) <= TOLERANCE ||
          isAround(station, other, sum / 2, gap / scale)),
    );
    if (mirror) free.delete(mirror);
    return [mirror ? [station, mirror] : [station]];
  });
  // Of a shelf the side counts that things stand on, wherever it lies.
  const last = new Set(face === "low" ? all.filter((station) => isOutermost(station, all, sum / 2)) : []);
  const outermost = (station: Station): number => (last.has(station) ? 1 : 0);
  return sets.sort(([a, twin], [b, other]) => {
    if (!a || !b) return 0;
    return (
      rank(b) - rank(a) ||
      (twin || other ? 0 : outermost(b) - outermost(a)) ||
      (twin && other ? 1 : toward) * compare(a.at, b.at)
    );
  });
}

/** Whether two places are the faces of something thin that stands in the middle, be it a little to one side. */
const isAround = ({ at, twins }: Station, other: Station, middle: number, thin: number): boolean => {
  const [one, two] = [toNumber(at) - middle, toNumber(other.at) - middle];
  return one * two < 0 && Math.abs(one - two) < thin && twins.some((twin) => equal(twin, other.at));
};

/** Whether nothing that stands beside it lies farther out: there the outside of what stands back is measured. */
function isOutermost(station: Station, all: readonly Station[], middle: number): boolean {
  const out = ({ at }: Station): number => toNumber(at) - middle;
  return !all.some(
    (other) =>
      out(other) * out(station) > 0 &&
      Math.abs(out(other)) > Math.abs(out(station)) + TOLERANCE &&
      Math.min(other.high, station.high) > Math.max(other.low, station.low),
  );
}

/**
 * The dimensions between the stops, or of those between `from` and `to` alone; three or more alike in a row become one,
 * "5 × 3 1/2", or "4 equal: 21 5/16" where a rule has no mark for one of them. As they are printed they add up to the whole.
 */
export function spans(
  stops: readonly Length[],
  low: Length,
  high: Length,
  printing: Printing,
  { from, to: end }: { readonly from: Length; readonly to: Length } = { from: low, to: high },
): readonly Span[] {
  const { print } = printing;
  const all = [low, ...[...stops].sort(compare), high];
  const sizes = closing(all, printing);
  const single: readonly Single[] = all
    .slice(1)
    .map((to, i) => ({ from: all[i] ?? low, to, size: sizes[i] ?? subtract(to, all[i] ?? low) }))
    .filter((one) => compare(one.from, from) >= 0 && compare(one.to, end) <= 0);
  const out: Span[] = [];
  for (let i = 0; i < single.length; ) {
    const first = single[i];
    if (!first) break;
    const alike = (same: (one: Single) => boolean): number => {
      const next = single.findIndex((one, j) => j > i && !same(one));
      return (next < 0 ? single.length : next) - i;
    };
    const [printed, exact] = [
      alike(({ size }) => equal(size, first.size)),
      alike((one) => equal(subtract(one.to, one.from), subtract(first.to, first.from))),
    ];
    const count = Math.max(printed, exact);
    const run = single.slice(i, count >= ALIKE ? i + count : i + 1);
    const text =
      count < ALIKE
        ? print(first.size)
        : printed === count
          ? `${count} × ${print(first.size)}`
          : `${count} equal: ${print(run.map(({ size }) => size).reduce(add))}`;
    out.push({ from: first.from, to: run.at(-1)?.to ?? first.to, text });
    i += run.length;
  }
  return out;
}

/** So many alike in a row are told in one. */
const ALIKE = 3;

interface Single {
  readonly from: Length;
  readonly to: Length;
  /** As it is printed. */
  readonly size: Length;
}
