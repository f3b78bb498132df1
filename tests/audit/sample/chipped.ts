/** The slab with a corner off the front of its first board, and one off its last. */

import type { BuildRecord } from "../record.ts";
import { slab } from "./slab.ts";
import { weigh } from "./weigh.ts";
import { box } from "./wood.ts";

/**
 * The last board loses its top right corner, 10 × 10 × 10, in front (as the mirror image of the first) or at the back (as the first,
 * turned); its line may be the first board's own, or another that is called the mirror image.
 */
export function chipped(side: "front" | "back", ownLine: boolean): BuildRecord {
  const record = slab();
  const [first, last] = [record.parts[0], record.parts[3]];
  const [line, layout] = [record.cutList[0], record.layouts[3]];
  if (!first || !last || !line || !layout) throw new RangeError("the slab has four boards and two lines");
  first.solids = [box([0, 0, 0], [100, 20, 190]), box([10, 0, 190], [100, 20, 200]), box([0, 10, 190], [10, 20, 200])];
  const [from, to] = side === "front" ? [10, 20] : [0, 10];
  last.solids = [
    box([300, 0, 0], [400, 20, 190]),
    box([300, 0, 190], [390, 20, 200]),
    box([390, from, 190], [400, to, 200]),
  ];
  if (ownLine) {
    record.cutList.push({ ...line, mark: "C", quantity: 1, parts: ["d"], mirrorOf: "A" });
    Object.assign(line, { quantity: 1, parts: ["a"] });
    last.mark = "C";
    for (const placement of layout.placements) placement.mark = "C";
  }
  weigh(record);
  return record;
}
