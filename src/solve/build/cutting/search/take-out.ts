import type { Chance } from "./chance.ts";
import { without } from "./free.ts";
import { type Piece, partsIn } from "./problem.ts";

/** Most parts taken out of one bin, unless all are. */
const MOST = 12;
/** How often a bin of few parts is emptied, and how often, if it is not, the parts are neighbours; the rest is any parts. */
const EMPTIED = 0.3;
const NEIGHBOURS = 0.7;
/** How often strips become as narrow as what is left in them. */
const TIGHT = 0.5;

/** A bin without some of its parts, and these; null when none is left. */
export function takenOut(
  root: Piece,
  chance: Chance,
): { readonly left: Piece | null; readonly out: readonly number[] } {
  const inside = partsIn(root);
  const most = Math.min(inside.length, MOST);
  const share = chance.next();
  if (most === inside.length && share < EMPTIED) return { left: null, out: inside };
  const [count, from] = [1 + chance.below(most), chance.below(inside.length)];
  const chosen = new Set<number>();
  for (let i = 0; i < count; i += 1) {
    const at = share < NEIGHBOURS ? (from + i) % inside.length : chance.below(inside.length);
    chosen.add(inside[at] as number);
  }
  const keep = (part: number): boolean => !chosen.has(part);
  return { left: without(root, keep, chance.next() < TIGHT, root.width, root.length), out: [...chosen] };
}
