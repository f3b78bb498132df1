/** What goes wrong within the range of thickness of a stock, but not at the thickness for which the plan is drawn. */
import type { Finding } from "../../findings/finding.ts";
import type { Length } from "../../units/length.ts";
import { less } from "../../units/rational.ts";
import { sayThickness } from "../../units/say-thickness.ts";
import type { Units } from "../design.ts";
import { corners, firstOf, marksTowards, type Range, stepOf } from "./range.ts";
import type { SolvedAt, Thicknesses } from "./solved-at.ts";

/** Of more stock than this each end is tried alone. */
const MOST_IN_CORNERS = 4;

/** Errors and warnings from the ends of each range and from all corners of several, each told once. */
export function foundAtEnds(
  ranges: readonly Range[],
  drawn: readonly Finding[],
  solved: SolvedAt,
  units: Units,
): readonly Finding[] {
  const told = new Set(drawn.map(keyOf));
  const found: Finding[] = [];
  const several = ranges.length > 1 && ranges.length <= MOST_IN_CORNERS;
  const isNew = (finding: Finding): boolean => matters(finding) && !told.has(keyOf(finding));
  const tell = (at: Thicknesses, when: (finding: Finding) => NonNullable<Finding["where"]>): void => {
    for (const finding of solved.findings(at)) {
      if (!isNew(finding)) continue;
      told.add(keyOf(finding));
      found.push(within(finding, when(finding)));
    }
  };
  // What is sound at every corner is taken to be sound at the ends of one range alone.
  if (several && !corners(ranges).some((corner) => solved.findings(corner).some(isNew))) return [];
  for (const range of ranges)
    for (const end of [range.low, range.high].filter((each) => less(each, range.drawn) || less(range.drawn, each)))
      tell(new Map([[range.stock, end]]), (finding) => [from(finding, range, end, solved, units)]);
  if (several)
    for (const corner of corners(ranges))
      tell(corner, () => [...corner].map(([stock, end]) => ({ stock, measures: sayThickness(end, { units }) })));
  return found;
}

/** What the maker accepts may be found at an end only: of what is accepted in vain, only that which is so at every thickness. */
export const inVainEverywhere = (ranges: readonly Range[], drawn: readonly Finding[], solved: SolvedAt): Finding[] => {
  const ends = ranges.flatMap(({ stock, low, high }) => [low, high].map((end) => new Map([[stock, end]])));
  const everywhere = (finding: Finding): boolean =>
    ends.every((end) => solved.findings(end).some((other) => keyOf(other) === keyOf(finding)));
  return drawn.filter((finding) => finding.rule !== IN_VAIN || everywhere(finding));
};

const IN_VAIN = "nothing-to-accept";
const matters = ({ rule, severity }: Finding): boolean => severity !== "advice" && rule !== IN_VAIN;
const keyOf = ({ rule, severity, at }: Finding): string => `${rule} ${severity} ${at.start} ${at.end}`;

/** From which mark on towards an end a finding is given. */
function from(finding: Finding, { stock, drawn }: Range, end: Length, solved: SolvedAt, units: Units) {
  const marks = marksTowards(drawn, end, stepOf(units));
  const given = (mark: Length): boolean =>
    solved.findings(new Map([[stock, mark]])).some((other) => keyOf(other) === keyOf(finding));
  const last = firstOf(marks, given);
  const measures = sayThickness(marks[last] as Length, { units });
  const on = last === marks.length - 1 ? "" : less(drawn, end) ? " or more" : " or less";
  return { stock, measures: `${measures}${on}` };
}

function within({ fix: _, ...finding }: Finding, when: NonNullable<Finding["where"]>): Finding {
  const where = when.map(({ stock, measures }) => `${stock} measures ${measures}`).join(" and ");
  return { ...finding, message: `where ${where}, ${finding.message}`, where: when };
}
