import type { BuiltMotion } from "../../build.ts";
import type { Pose } from "../../design.ts";
import type { Body } from "./bodies.ts";
import { firstStrike } from "./strike.ts";

/** Degrees. A door that is free so far is open for a hand at least; what is stopped before is shut for good. */
const OPEN = 30;

/**
 * Each motion tried pose by pose. What strikes something that opens itself is tried again with that open: it needs it. A swing that is free to 30° and
 * beyond ends where it would strike.
 */
export function freed(motions: readonly BuiltMotion[], bodies: readonly Body[]): readonly BuiltMotion[] {
  return motions.map((motion) => {
    const opened = new Map<BuiltMotion, Pose>();
    for (;;) {
      const strike = firstStrike(motion, bodies, opened);
      const needs = [...opened.keys()].map(({ name, range }) => ({ motion: name, open: range }));
      if (strike === null) return { ...motion, needs };
      const other = motions.find((each) => each !== motion && each.moves.includes(strike.other));
      const open = other?.poses.at(-1);
      if (other && open && !opened.has(other)) {
        opened.set(other, open);
        continue;
      }
      const before = motion.poses.filter(({ at }) => at < strike.at);
      const free = before.at(-1)?.at ?? 0;
      if (motion.kind === "slide" || free < OPEN) return { ...motion, needs, strikes: strike };
      return { ...motion, needs, range: free, poses: before, stoppedBy: strike };
    }
  });
}
