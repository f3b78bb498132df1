/** Sizes in a chain that add up to the whole as they are printed. */
import { add, equal, type Length, subtract, toNumber } from "../../../units/index.ts";

export interface Printing {
  readonly print: (length: Length) => string;
  /** The length that is printed for one; and the nearest that a rule has a mark for. */
  readonly printed?: (length: Length) => Length;
  readonly marked?: (length: Length) => Length;
  /** All are told to the marks of a rule, since somewhere else they have to be: a size is told alike everywhere. */
  readonly finely?: boolean;
}

/**
 * The sizes between places; where they would not add up as they are printed, those between the marks of a rule that are nearest to
 * the places, from the nearer end, so that both sides have the same.
 */
export function closing(all: readonly Length[], printing: Printing): readonly Length[] {
  const { printed, marked, finely = false } = printing;
  const sizes = sizesBetween(all);
  const [low, high] = [all[0], all.at(-1)];
  if (!printed || !marked || !low || !high || (!finely && closes(all, printing))) return sizes;
  const whole = printed(subtract(high, low));
  const middle = (toNumber(low) + toNumber(high)) / 2;
  return sizesBetween(
    all.map((at) => (toNumber(at) <= middle ? marked(subtract(at, low)) : subtract(whole, marked(subtract(high, at))))),
  );
}

/** Whether the sizes between places, the ends among them, add up to the whole as each is printed by itself. */
export function closes(all: readonly Length[], { printed }: Printing): boolean {
  const [low, high] = [all[0], all.at(-1)];
  if (!printed || !low || !high) return true;
  return equal(sizesBetween(all).map(printed).reduce(add), printed(subtract(high, low)));
}

const sizesBetween = (places: readonly Length[]): readonly Length[] =>
  places.slice(1).map((to, i) => subtract(to, places[i] as Length));
