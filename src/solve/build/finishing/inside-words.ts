/** Where fewer coats do, or more are wanted, because it is inside: the same in a step and on the page of finishing. */
import type { Part } from "../../design.ts";
import type { Finishing } from "../model/purchase.ts";
import { numberWord, series } from "../steps/draft.ts";

/** Of those of its parts that are given. `mark`: of a part, by its id. */
export function insideTexts(
  { inside, coats, insideFaces = [] }: Pick<Finishing, "inside" | "coats" | "insideFaces">,
  parts: readonly Part[],
  mark: (id: string) => string,
): readonly string[] {
  if (inside === undefined || inside === coats) return [];
  const ids = new Set(parts.map(({ id }) => id));
  const own = insideFaces.filter(({ part }) => ids.has(part));
  // Nothing shuts it: the plan alone knows what it means.
  if (own.length === 0 && insideFaces.length > 0) return [];
  const marks = (whole: boolean): readonly string[] =>
    [...new Set(own.flatMap(({ part, sides }) => ((sides.length === 0) === whole ? [mark(part)] : [])))].toSorted();
  const [all, faces] = [marks(true), marks(false)];
  const where = [
    ...(all.length > 0 ? [`all of ${series(all)}`] : []),
    ...(faces.length > 0 ? [`of ${series(faces)} what looks inwards`] : []),
  ];
  const told = where.length > 0 ? ` where it is shut in: ${where.join("; ")}` : "";
  return [
    `Inside${own.length > 0 ? "" : ","} ${inside === 1 ? "one coat does" : `${numberWord(inside)} coats do`}${told}.`,
  ];
}
