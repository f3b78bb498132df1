import { inches, type Length, millimetres } from "../../units/length.ts";
import { add, ceil, compare, divide, equal, half, less, multiply, rational, subtract } from "../../units/rational.ts";
import { roundTo } from "../../units/round.ts";
import type { Design, Units } from "../design.ts";

/** A stock of which parts are made, and the thicknesses that the plan has to survive. */
export interface Range {
  readonly stock: string;
  readonly low: Length;
  /** That for which the plan is drawn. */
  readonly drawn: Length;
  readonly high: Length;
}

export const rangesOf = ({ stock, parts }: Design): readonly Range[] =>
  stock.flatMap(({ name, thickness, between }) => {
    const used = parts.some((part) => part.stock === name);
    return between && used && less(between.low, between.high)
      ? [{ stock: name, low: between.low, drawn: thickness, high: between.high }]
      : [];
  });

/** The step in which thicknesses are told: 1/64 in or 0.1 mm. */
export const stepOf = (units: Units): Length => (units === "inch" ? inches(1, 64) : millimetres(1, 10));

const MOST_MARKS = 1000n;

/** The marks of a caliper from `from` on (without it) to `to`, which is the last whether it is a mark or not. */
export function marksTowards(from: Length, to: Length, step: Length): readonly Length[] {
  const [low, high] = less(from, to) ? [from, to] : [to, from];
  if (ceil(divide(subtract(high, low), step)) > MOST_MARKS) return [to];
  const marks: Length[] = [];
  for (let mark = roundTo(low, step, "up"); less(mark, high); mark = add(mark, step))
    if (less(low, mark)) marks.push(mark);
  return [...(less(from, to) ? marks : marks.toReversed()), to];
}

/** The place of the first mark at which something is so: halved, since it is so at the last, and from somewhere on. */
export function firstOf(marks: readonly Length[], isSo: (mark: Length) => boolean): number {
  let [first, last] = [0, marks.length - 1];
  while (first < last) {
    const middle = Math.floor((first + last) / 2);
    if (isSo(marks[middle] as Length)) last = middle;
    else first = middle + 1;
  }
  return last;
}

/** Up to five thicknesses of a range, rising: its ends, that of the plan, and marks in the widest gaps between them. */
export function spread({ low, drawn, high }: Range, step: Length): readonly Length[] {
  const chosen = [low, drawn, high].filter((each, i, all) => i === 0 || !equal(each, all[i - 1] as Length));
  while (chosen.length < 5) {
    const gaps = chosen.slice(1).map((each, i) => ({ i, wide: subtract(each, chosen[i] as Length) }));
    const widest = gaps.toSorted((a, b) => compare(b.wide, a.wide) || a.i - b.i)[0];
    if (!widest || less(widest.wide, multiply(step, rational(2)))) break;
    const mark = roundTo(add(chosen[widest.i] as Length, half(widest.wide)), step);
    chosen.splice(widest.i + 1, 0, mark);
  }
  return chosen;
}

/** Every stock at an end of its range, in all combinations. */
export const corners = (ranges: readonly Range[]): readonly ReadonlyMap<string, Length>[] =>
  ranges.reduce<readonly ReadonlyMap<string, Length>[]>(
    (so, { stock, low, high }) => so.flatMap((corner) => [low, high].map((end) => new Map([...corner, [stock, end]]))),
    [new Map()],
  );
