/** What is done with one drawer after another, told of the first. */
import type { Move } from "../moves.ts";

/** Told before all else. */
export const ONE_BY_ONE =
  "Do all that follows with one drawer and its front, then with the next, of those one above another the lowest first: place, pull out, clamp, bore, screw on.";

/** Told of one, and counted for all; of all together where they differ. */
export function toldOnce(moves: readonly Move[], told: (own: readonly Move[]) => readonly string[]): readonly string[] {
  const count = ({ work }: Move): number => work.reduce((so, { drives }) => so + drives.length, 0);
  const [first] = moves as readonly [Move];
  if (!moves.every((move) => count(move) === count(first))) return told(moves);
  return told([first]).map((text) =>
    /^Drive \d+ /u.test(text) ? text.replace(/\.$/u, `: ${count(first) * moves.length} in all.`) : text,
  );
}
