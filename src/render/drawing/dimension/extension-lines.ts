/** The lines from the picture out to the ends of dimension lines. */
import type { Spot } from "../drawing.ts";
import { apart } from "../part/ordinates.ts";
import type { Box, Segment } from "../plate.ts";
import type { Side } from "./side.ts";

/** They start this far from the picture and end this far beyond the dimension line. */
const START = 2;
const BEYOND = 2.5;
/** The least distance of two parallel lines, 0.7 mm (ISO 128-2); what would lie closer runs as one line up to just before the row. */
const APART = 0.7 * (72 / 25.4);
const FORK = 5;

/** Where along the side the extension lines stand, and how far out (≤ 0: inside) the wood ends there. */
export type Feet = ReadonlyMap<number, number>;

/** What would run deeper than this inside the view is broken there, or it would be taken for an edge; so much of it is drawn where it begins. */
const DEEP = 24;
const STUB = 6;

/** From a foot to the tip, on the way past where the view ends, all of them so far out: in one piece, or a stub and what is outside. */
export function pastTheView(foot: number, tip: number, end = 0): readonly (readonly [number, number])[] {
  if (end - foot < DEEP) return [[foot, tip]];
  return [
    [foot, foot + STUB],
    [end + START, tip],
  ];
}

/** From one end of a dimension to the next where they fork: their strokes are told apart. */
const TOLD_APART = 4;

/** Where along the side the ends of dimensions are drawn: as they lie, but forks a little wider, where what stands beside them leaves the room. */
export function forked(places: readonly number[]): ReadonlyMap<number, number> {
  const all = crowds([...new Set(places)]);
  return new Map(
    all.flatMap((crowd, i) => {
      const wide = apart(crowd, Number.NEGATIVE_INFINITY, TOLD_APART);
      const [low, high] = [(all[i - 1]?.at(-1) ?? -Infinity) + TOLD_APART, (all[i + 1]?.[0] ?? Infinity) - TOLD_APART];
      const goesIn = (wide[0] as number) >= low && (wide.at(-1) as number) <= high;
      return crowd.map((at, j) => [at, goesIn ? (wide[j] as number) : at] as const);
    }),
  );
}

/** `ends`: how far out the outermost row lies that ends at a place along the side; `drawn`: where along it that end is drawn. */
export function extensionLines(
  ends: ReadonlyMap<number, number>,
  feet: Feet,
  side: Side,
  drawn: ReadonlyMap<number, number> = new Map(),
): readonly Segment[] {
  const tip = (at: number): number => drawn.get(at) ?? at;
  return crowds([...ends.keys()]).flatMap((crowd): readonly Segment[] => {
    const foot = Math.max(...crowd.map((at) => feet.get(at) ?? 0)) + START;
    const tips = crowd.map((at): Segment => [side.spot(at, foot), side.spot(tip(at), (ends.get(at) ?? 0) + BEYOND)]);
    const straight = (at: number, to: number): readonly Segment[] =>
      pastTheView(foot, to).map(([from, end]) => [side.spot(at, from), side.spot(at, end)]);
    const [first] = crowd as readonly [number];
    if (crowd.length === 1) return straight(first, (ends.get(first) ?? 0) + BEYOND);
    const nearest = Math.min(...crowd.map((at) => ends.get(at) ?? 0)) - FORK;
    const middle = crowd.reduce((sum, at) => sum + at, 0) / crowd.length;
    const forks = tips.map(([, to], i): Segment => [side.spot(tip(crowd[i] ?? middle), nearest), to]);
    return [...straight(middle, nearest), ...forks];
  });
}

/** Places along the side, sorted into those that lie too close together for a line each. */
function crowds(places: readonly number[]): readonly (readonly number[])[] {
  const sorted = [...places].sort((a, b) => a - b);
  const found: number[][] = [];
  for (const at of sorted) {
    const last = found.at(-1);
    if (last && at - (last.at(-1) ?? at) < APART) last.push(at);
    else found.push([at]);
  }
  return found;
}

/** What is left of lines, level or upright, that break off round a text. */
export function roundAbout(lines: readonly Segment[], box: Box): Segment[] {
  return lines.flatMap((line): readonly Segment[] => {
    const [[x1, y1], [x2, y2]] = line;
    const upright = Math.abs(x1 - x2) < 1e-6;
    const [at, near, far] = upright ? [x1, box.left, box.right] : [y1, box.top, box.bottom];
    if ((!upright && Math.abs(y1 - y2) > 1e-6) || at <= near || at >= far) return [line];
    const [from, to] = upright ? [y1, y2] : [x1, x2];
    const [low, high] = upright ? [box.top, box.bottom] : [box.left, box.right];
    if (Math.max(from, to) <= low || Math.min(from, to) >= high) return [line];
    const spot = (along: number): Spot => (upright ? [at, along] : [along, at]);
    const [first, second] = from < to ? [low, high] : [high, low];
    const runs = [
      [from, first],
      [second, to],
    ] as const;
    return runs.filter(([a, b]) => (b - a) * (to - from) > 0).map(([a, b]): Segment => [spot(a), spot(b)]);
  });
}
