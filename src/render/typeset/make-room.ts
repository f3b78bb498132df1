/** Drawings of a page that are all a little lower, so that one more goes below them. */
import type { Frame } from "../style.ts";
import type { FlowAtom, Placed, Sheet } from "./sheet.ts";

/** Together they are no lower than this share of their usual height. */
const LOWEST = 0.72;

/** The page and what comes next, with what can be lower as low as it takes; null where that goes in anyway, or cannot. */
export function madeRoom(
  sheet: Sheet,
  clump: readonly FlowAtom[],
  frame: Frame,
): { readonly sheet: Sheet; readonly clump: readonly FlowAtom[] } | null {
  const needed = clump.reduce((sum, atom) => sum + atom.above + atom.height, 0);
  const over = sheet.y + needed - (frame.y + frame.height);
  if (over <= 0 || sheet.placed.length === 0) return null;
  const all: readonly FlowAtom[] = [...sheet.placed.map(({ atom }) => atom), ...clump];
  const low = lowered(all, over);
  if (!low) return null;
  let gained = 0;
  const placed = sheet.placed.map((each): Placed => {
    const atom = low.get(each.atom) ?? each.atom;
    const at = { ...each, atom, y: each.y - gained };
    gained += each.atom.height - atom.height;
    return at;
  });
  return { sheet: { ...sheet, placed, y: sheet.y - gained }, clump: clump.map((atom) => low.get(atom) ?? atom) };
}

/** Those that can be lower, by the same share each, so that they save so many points; null where they cannot. */
function lowered(all: readonly FlowAtom[], over: number): ReadonlyMap<unknown, FlowAtom> | null {
  for (let able = all.filter(({ lower }) => lower !== undefined); able.length > 0; ) {
    const whole = able.reduce((sum, { height }) => sum + height, 0);
    const share = 1 - over / whole;
    if (share < LOWEST) return null;
    const low = able.map((atom) => ({ atom, found: atom.lower?.(Math.floor(atom.height * share)) ?? null }));
    const still = low.filter(({ found }) => found !== null);
    if (still.length === able.length) {
      const saved = low.reduce((sum, { atom, found }) => sum + atom.height - (found?.height ?? atom.height), 0);
      return saved >= over ? new Map(low.map(({ atom, found }) => [atom, found ?? atom])) : null;
    }
    able = still.map(({ atom }) => atom);
  }
  return null;
}
