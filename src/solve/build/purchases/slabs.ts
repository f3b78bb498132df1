/** The boards of edge-glued slabs, as they are chosen at the yard. */

import type { Length } from "../../../units/length.ts";
import type { Blank, CutLine } from "../../build.ts";
import { makingOf } from "../../design/making/plain.ts";
import type { Part, Stock } from "../../design.ts";

/** A sentence for each slab that is glued up from a stock: how many boards, how wide and long, and how they lie. */
export function slabNotes(
  stock: Stock,
  lines: readonly CutLine[],
  { part, blanks, print }: { part: (id: string) => Part; blanks: readonly Blank[]; print: (length: Length) => string },
): readonly string[] {
  return lines.flatMap((line) => {
    const [first] = line.parts as [string, ...string[]];
    const { boards } = makingOf(part(first));
    const blank = blanks.find((each) => each.part === first);
    if (line.stock !== stock.name || boards < 2 || blank?.jointed === undefined) return [];
    const copies = line.parts.length;
    const many = copies === 1 ? `${boards} boards` : `${copies} × ${boards} boards`;
    return [
      `for ${line.mark}, ${many} at least ${print(blank.width)} wide and ${print(blank.length)} long, ${print(blank.jointed)} wide when their edges are jointed`,
    ];
  });
}
