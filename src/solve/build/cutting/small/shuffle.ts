/** Numbers that look random and are the same in every run (a 32-bit mixer, "mulberry32", with a fixed seed). */
export function shuffler(): {
  /** A whole number from 0 up to but not including `limit`. */
  readonly below: (limit: number) => number;
  /** The list with one to three pairs exchanged. */
  readonly exchanged: <T>(list: readonly T[]) => readonly T[];
} {
  let state = 1;
  const below = (limit: number): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
  };
  const exchanged = <T>(list: readonly T[]): readonly T[] => {
    const changed = [...list];
    for (let pairs = 1 + below(3); pairs > 0; pairs -= 1) {
      const [a, b] = [below(list.length), below(list.length)];
      const [first, second] = [changed[a], changed[b]];
      if (first !== undefined && second !== undefined) [changed[a], changed[b]] = [second, first];
    }
    return changed;
  };
  return { below, exchanged };
}
