/** Paragraphs set in a column of their own, beside something else. */
import type { Item } from "../document.ts";
import type { Atom } from "./atom.ts";
import { nest } from "./sheet.ts";

export interface Stack {
  readonly height: number;
  readonly atoms: readonly Atom[];
}

/** The atoms one below the other; the space above the first is dropped. */
export const stack = (atoms: readonly Atom[]): Stack => ({
  atoms,
  height: atoms.reduce((sum, atom, i) => sum + (i === 0 ? 0 : atom.above) + atom.height, 0),
});

/** The items with the top left corner of the column at (x, y). */
export function paintStack({ atoms }: Stack, x: number, y: number): Item[] {
  let at = y;
  const placed = atoms.map((atom, i) => {
    const top = at + (i === 0 ? 0 : atom.above);
    at = top + atom.height;
    return { atom, x, y: top };
  });
  return nest(placed);
}

/** As much from the top as the height holds, at least one atom, and the rest. Atoms that keep together are not parted where that can be. */
export function cutStack({ atoms }: Stack, height: number): readonly [Stack, Stack | null] {
  let used = 0;
  let end = 0;
  for (const [i, atom] of atoms.entries()) {
    used += (i === 0 ? 0 : atom.above) + atom.height;
    if (used > height) break;
    end = i + 1;
  }
  if (end >= atoms.length) return [stack(atoms), null];
  let cut = Math.max(1, end);
  while (cut > 1 && atoms[cut - 1]?.keep === true) cut--;
  if (cut === 1 && atoms[0]?.keep === true) cut = Math.max(1, end);
  return [stack(atoms.slice(0, cut)), stack(atoms.slice(cut))];
}

/** The atoms with no more than so much white space above each. */
export const closely = <T extends Atom>(atoms: readonly T[], most: number): readonly T[] =>
  atoms.map((atom) => ({ ...atom, above: Math.min(atom.above, most) }));

/** As `cutStack`; all of it with no more than so much above each atom where that goes in. */
export function cutClosely(whole: Stack, height: number, most: number): readonly [Stack, Stack | null] {
  const usual = cutStack(whole, height);
  const tight = stack(closely(whole.atoms, most));
  return usual[1] && tight.height <= height ? [tight, null] : usual;
}
