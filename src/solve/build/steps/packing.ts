/** What reaches farther down than what the work rests on: the work is raised for it. */
import type { Length } from "../../../units/length.ts";
import { equal, max, min, sign, subtract } from "../../../units/rational.ts";
import { INDICES } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { definite, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { isSteady, liesAnyhow } from "./resting.ts";

/** How far some of what comes reaches below what the work rests on, and which of it does. */
interface Past {
  readonly by: Length;
  readonly ids: readonly string[];
}

/** Null where all ends on the bench, or above it. */
export function pastTheBench(work: Work, moves: readonly Move[], up: Direction): Past | null {
  const [first] = moves;
  const axis = INDICES.find((i) => up[i] !== 0);
  if (!first || first.starts || axis === undefined) return null;
  const under = (ids: readonly string[]): Length => {
    const bodies = ids.map((id) => work.part(id).body);
    return up[axis] > 0
      ? bodies.map(({ low }) => low[axis]).reduce(min)
      : bodies.map(({ high }) => high[axis]).reduce(max);
  };
  const arriving = moves.flatMap((move) => move.arriving);
  const [rests, reaches] = [under(first.present), under(arriving)];
  const by = up[axis] > 0 ? subtract(rests, reaches) : subtract(reaches, rests);
  return sign(by) > 0 ? { by, ids: arriving.filter((id) => equal(under([id]), reaches)) } : null;
}

/** What stands by itself only when more is on it. Two parts that are joined lie as they are put. */
export function heldTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const last = moves.at(-1) as Move;
  const all = [...last.present, ...last.arriving];
  if (up[2] === 0 || all.length < 3 || liesAnyhow(work, moves) || isSteady(work, all, up)) return [];
  return ["It does not stand by itself yet: prop it, or let a second person hold it, until more is on it."];
}

/** What hangs, runs or lies loose is told of by itself, and a frame lies flat. */
export function packingTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  const past = liesAnyhow(work, moves) ? null : pastTheBench(work, moves, up);
  if (!past) return [];
  const [they, reach] = past.ids.length > 1 ? ["they", "reach"] : ["it", "reaches"];
  return [
    `Raise the work on blocks more than ${work.print(past.by)} high, clear of ${definite(work, past.ids)}: ${they} ${reach} so far below what is there.`,
  ];
}
