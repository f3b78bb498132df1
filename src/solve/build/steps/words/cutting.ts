import { multiply, rational } from "../../../../units/rational.ts";
import type { Blank } from "../../../build.ts";
import { sayBand } from "../../../design/making/banding.ts";
import { makingOf } from "../../../design/making/plain.ts";
import { faceAxis, indexOf } from "../../../design/space.ts";
import { called, listed, plural, type Work } from "../draft.ts";

/** "the shelf (C)", "two shelves (C)"; without the article or the number: "shelf (C)", "shelves (C)". */
export function counted(work: Work, ids: readonly string[], article = true): string {
  if (article) return listed(work, ids);
  const [first = ""] = ids;
  return ids.length === 1 ? called(work, first) : plural(work, first);
}

/** "5 1/8 in wide, 53 in long" */
export const sized = (work: Work, { width, length }: Pick<Blank, "width" | "length">): string =>
  `${work.print(width)} wide, ${work.print(length)} long`;

/** The size that a part is cut to. Bands are told apart: nobody marks 5.98 in, but a piece of the band beside the stop gives it. */
export function cutSize(work: Work, id: string): string {
  const part = work.part(id);
  const bands = makingOf(part).banding.filter(({ deducted }) => deducted);
  const [first] = bands;
  if (!first) return sized(work, work.bare(id));
  const less = (["width", "length"] as const).flatMap((size) => {
    const n = bands.filter(({ edge }) => faceAxis(edge) === indexOf(part.axes[size])).length;
    const off = sayBand(multiply(first.thickness, rational(n)), work.design.units);
    return n === 0 ? [] : [`${off} off the ${size}`];
  });
  return `${sized(work, work.line(id))}, less ${less.join(" and ")} for the bands (lay ${bands.length === 1 ? "a piece" : "pieces"} of the band against fence or stop)`;
}
