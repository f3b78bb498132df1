/** Where cuts of one size are: many at even distances are told as one row. */
import { compare, equal, subtract } from "../../../../units/rational.ts";
import { axisOf, faceOf, INDICES } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { numberWord, series, type Work } from "../draft.ts";
import { type BoxFeature, placeText, sideOf, spanOf } from "./boxes.ts";
import { fromNearer, sideWord } from "./measured.ts";

/** So many at least. */
const ROW = 4;

/** "in the left end and in the right end: ten in each, 3/4 in between one and the next, the first 1 1/4 in from the bottom edge, the last 1 1/4 in from the top edge" */
export function placesOf(work: Work, part: Part, list: readonly BoxFeature[]): readonly string[] {
  const sides = [...new Set(list.map((box) => sideOf(part, box)))];
  const rows = new Map<string, string[]>();
  const single: string[] = [];
  for (const side of sides) {
    const own = list.filter((box) => sideOf(part, box) === side);
    const row = rowText(work, part, own);
    if (row === null) single.push(...own.map((box) => placeText(work, part, box)));
    else rows.set(row, [...(rows.get(row) ?? []), side]);
  }
  const told = [...rows].map(
    ([row, own]) => `${series(own)}: ${own.length > 1 ? row.replace(/^\w+/u, "$& in each") : row}`,
  );
  return [...told, ...new Set(single)];
}

/** Null where they are few, or not at even distances in one line. */
function rowText(work: Work, part: Part, list: readonly BoxFeature[]): string | null {
  const [first] = list;
  if (!first || list.length < ROW) return null;
  const into = axisOf(first.into);
  const others = INDICES.filter((i) => i !== into);
  const run = others.find((i) => list.some((box) => !equal(spanOf(box, i).low, spanOf(first, i).low)));
  const still = others.find((i) => i !== run);
  if (run === undefined || still === undefined) return null;
  if (!list.every((box) => equal(spanOf(box, still).low, spanOf(first, still).low))) return null;
  const spans = list.map((box) => spanOf(box, run)).toSorted((a, b) => compare(a.low, b.low));
  const gaps = spans.slice(1).map(({ low }, i) => subtract(low, (spans[i] as (typeof spans)[number]).high));
  const [gap] = gaps;
  const [from, to] = [spans[0], spans.at(-1)];
  if (!gap || !from || !to || gap.n <= 0n || gaps.some((each) => !equal(each, gap))) return null;
  const end = (high: boolean): string => `the ${faceOf(run, high)} ${sideWord(part, run)}`;
  const [before, behind] = [subtract(from.low, part.blank.low[run]), subtract(part.blank.high[run], to.high)];
  const at = (length: typeof gap, high: boolean): string =>
    length.n <= 0n ? `flush with ${end(high)}` : `${work.print(length)} from ${end(high)}`;
  const across = fromNearer(work, part, still, spanOf(first, still).low, spanOf(first, still).high);
  return `${numberWord(list.length)}, ${work.print(gap)} between one and the next, the first ${at(before, false)}, the last ${at(behind, true)}${across ? `; all ${across}` : ""}`;
}
