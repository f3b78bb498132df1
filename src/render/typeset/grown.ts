/** White space that a page leaves goes to its pictures. */
import { type Sizes, USUAL } from "./alike.ts";
import { type Band, type Columns, nextOf, onPage, type Unit } from "./bands.ts";

/** Less is not seen, in points. */
const LEAST = 24;
/** So many are given at a time, the most first. */
const STEPS = [120, 96, 72, 48, LEAST] as const;

/** The units of a page with their first atoms higher, all by as much as goes in, and then each by more; null where none can be. */
export function grown(
  columns: Columns,
  from: number,
  height: number,
  empty: boolean,
  bands: readonly Band[],
): { readonly bands: readonly Band[]; readonly sizes: Sizes } | null {
  const { units, taller } = columns;
  const next = nextOf(bands, from);
  if (!taller || next >= units.length) return null;
  const can = units.slice(from, next).flatMap((_, i) => {
    const found = taller(from + i);
    return found && found.most >= LEAST ? [{ i: from + i, ...found }] : [];
  });
  const parted = (all: readonly Band[]): number => all.filter((band) => band.parted !== null).length;
  const set = (made: readonly Unit[]): readonly Band[] | null => {
    const found = onPage({ ...columns, units: made }, from, height, empty);
    return nextOf(found, from) >= next && parted(found) <= parted(bands) ? found : null;
  };
  const by = new Map<number, number>();
  const tried = (more: ReadonlyMap<number, number>): boolean =>
    set(units.map((unit, i) => higher(unit, more.get(i) ?? 0))) !== null;
  const give = (to: typeof can): void => {
    for (const step of STEPS) {
      const more = new Map([
        ...by,
        ...to.map(({ i, most }) => [i, Math.max(by.get(i) ?? 0, Math.min(step, most))] as const),
      ]);
      if (!tried(more)) continue;
      for (const [i, points] of more) by.set(i, points);
      return;
    }
  };
  give(can);
  for (const each of can) give([each]);
  if (by.size === 0) return null;
  const drawn = new Map(
    can.flatMap(({ i, by: made }) => {
      const unit = by.has(i) ? made(by.get(i) ?? 0) : null;
      return unit ? [[i, unit] as const] : [];
    }),
  );
  const found = drawn.size === 0 ? null : set(units.map((unit, i) => drawn.get(i) ?? unit));
  const sizes = new Map([...drawn.keys()].map((i) => [i, { ...USUAL, more: by.get(i) ?? 0 }] as const));
  return found && { bands: found, sizes };
}

const higher = (unit: Unit, by: number): Unit =>
  unit.map((atom, i) => (i === 0 ? { ...atom, height: atom.height + by } : atom));
