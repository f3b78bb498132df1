import { type Length, toMillimetres } from "../../units/length.ts";
import { less } from "../../units/rational.ts";
import type { Check } from "../build.ts";
import type { Units } from "../design.ts";
import { firstOf, marksTowards, type Range, stepOf } from "./range.ts";
import type { SolvedAt } from "./solved-at.ts";

/** The checks; those that hold, but not where a stock is thin, with the least mark of its range at which they do. */
export const withHoldsFrom = (
  checks: readonly Check[],
  ranges: readonly Range[],
  solved: SolvedAt,
  units: Units,
): readonly Check[] =>
  checks.map((check) => {
    if (check.verdict !== "holds") return check;
    const least = ranges.flatMap((range) => leastOf(check, range, solved, units) ?? [])[0];
    return least ? { ...check, holdsFrom: toMillimetres(least) } : check;
  });

/** Null where it holds at the thin end. */
function leastOf({ rule, subject }: Check, { stock, low, drawn }: Range, solved: SolvedAt, units: Units) {
  const broken = (mark: Length): boolean =>
    solved
      .checks(new Map([[stock, mark]]))
      .some((other) => other.rule === rule && other.subject === subject && other.verdict !== "holds");
  if (!less(low, drawn) || !broken(low)) return null;
  const marks = marksTowards(drawn, low, stepOf(units));
  return marks[firstOf(marks, broken) - 1] ?? drawn;
}
