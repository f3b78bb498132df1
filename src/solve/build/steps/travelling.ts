/** Which way what comes goes in the picture of its step, or what it comes to. */
import type { Step } from "../../build.ts";
import type { Direction } from "../../design.ts";
import type { Work } from "./draft.ts";
import { isClamped, type Lying } from "./lying.ts";
import type { Move } from "./moves.ts";

/** Nothing where it was put on and clamped while the work stood: that is turned over then, and goes nowhere. */
export function travelOf(
  work: Work,
  moves: readonly Move[],
  place: Lying,
  { lowered, glued }: { readonly lowered: boolean; readonly glued: boolean },
): Step["shows"]["travel"] {
  if (!glued && isClamped(work, moves, place)) return [];
  const [first] = moves;
  if (lowered && first)
    return [{ parts: first.present, along: first.along.map((c) => (c === 0 ? 0 : -c)) as unknown as Direction }];
  return moves.map((move) => ({ parts: move.arriving, along: move.along }));
}
