import { type Board, contents, type Place } from "./place.ts";

/** What layouts are compared by, the most important first; smaller is better throughout. */
export interface Merit {
  /** Boards too many under blanks that should come from one. */
  readonly apart: number;
  readonly cost: number;
  readonly count: number;
  /** Different settings of fence and stop. */
  readonly settings: number;
  /** Area of the largest piece left over, negative. */
  readonly offcut: number;
}

export function judge(boards: readonly Board[]): Merit {
  const settings = new Set<string>();
  for (const board of boards)
    for (const { shape } of contents(board.whole)) settings.add(`rip ${shape.width}`).add(`cross ${shape.length}`);
  return {
    apart: [...boardsOfAlike(boards).values()].reduce((sum, { size }) => sum + size - 1, 0),
    cost: boards.reduce((sum, board) => sum + board.bin.cost, 0),
    count: boards.length,
    settings: settings.size,
    offcut: -Math.max(...boards.map((board) => largestOffcut(board.whole))),
  };
}

/** The boards that blanks to be alike lie on, by their common name. */
export function boardsOfAlike(boards: readonly Board[]): ReadonlyMap<string, ReadonlySet<number>> {
  const found = new Map<string, Set<number>>();
  for (const [i, { whole }] of boards.entries())
    for (const { item } of contents(whole)) {
      const { alike } = item.blank;
      if (alike !== undefined) found.set(alike, (found.get(alike) ?? new Set()).add(i));
    }
  return found;
}

const largestOffcut = (place: Place): number =>
  place.filled === null
    ? Math.max(0, place.width) * Math.max(0, place.length)
    : Math.max(largestOffcut(place.filled.beside), largestOffcut(place.filled.along));

export const better = (a: Merit, b: Merit): boolean => {
  const difference =
    a.apart - b.apart || a.cost - b.cost || a.count - b.count || a.settings - b.settings || a.offcut - b.offcut;
  return difference < 0;
};

/**
 * A finer measure while boards are being emptied: the more unequally they are filled, the nearer one of them is to being spared.
 * The sum of squares of the filled area, negative.
 */
export const evenness = (boards: readonly Board[]): number =>
  -boards.reduce((sum, { bin, whole }) => {
    const used = contents(whole).reduce((area, { shape }) => area + shape.width * shape.length, 0);
    const share = used / (bin.width * bin.length);
    return sum + share * share;
  }, 0);
