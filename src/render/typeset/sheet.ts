/** A page that is being filled. */
import type { Item } from "../document.ts";
import type { Atom } from "./atom.ts";

export type FlowAtom = Atom & {
  /** What the atom shows, for `Page.of`. */
  readonly of?: string;
  /** The same no higher than so many points, for the foot of a page that would stay white; null where it cannot be so low. */
  readonly lower?: (height: number) => FlowAtom | null;
  /** The same larger, no higher than so many points, for a page that would stay white below; null where it gets no larger. */
  readonly higher?: (height: number) => FlowAtom | null;
};

export interface Placed {
  readonly atom: FlowAtom;
  readonly x: number;
  readonly y: number;
}

export interface Sheet {
  readonly kind: string;
  readonly of: string[];
  readonly begins: string[];
  readonly placed: Placed[];
  /** Lower edge of what is placed. */
  y: number;
}

export const blank = (kind: string, y: number): Sheet => ({ kind, of: [], begins: [], placed: [], y });

/** To try something on. */
export const copyOf = (sheet: Sheet): Sheet => ({
  ...sheet,
  of: [...sheet.of],
  begins: [...sheet.begins],
  placed: [...sheet.placed],
});

/** Below what is placed. */
export function put(sheet: Sheet, atom: FlowAtom, x: number, above: number): void {
  const y = sheet.y + above;
  sheet.placed.push({ atom, x, y });
  sheet.y = y + atom.height;
  if (atom.of !== undefined && !sheet.of.includes(atom.of)) sheet.of.push(atom.of);
}

/** The items of the atoms, inside a group for each paragraph, list or table that they belong to. */
export function nest(placed: readonly Placed[], depth = 0): Item[] {
  const items: Item[] = [];
  for (let i = 0; i < placed.length; ) {
    const { atom, x, y } = placed[i] as Placed;
    const wrap = atom.within[depth];
    if (wrap === undefined) {
      items.push(...atom.paint(x, y));
      i++;
      continue;
    }
    let end = i + 1;
    while (placed[end]?.atom.within[depth] === wrap) end++;
    const own = nest(placed.slice(i, end), depth + 1);
    items.push(...(wrap.role === null ? own : [{ kind: "group", role: wrap.role, items: own } as const]));
    i = end;
  }
  return items;
}
