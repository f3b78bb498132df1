/** Whether one clamp closes several joints. */
import { equal, type Length, less } from "../../../units/index.ts";
import { otherAxes } from "../../design/space.ts";
import type { Joint, Part } from "../../design.ts";
import { type ClampAt, reachOf } from "./clamp-ends.ts";
import { overlapOf } from "./clamp-points.ts";
import { isNear } from "./clamp-reach.ts";
import type { Work } from "./draft.ts";
import type { Move } from "./moves.ts";

/** Whether a clamp that is there presses on what another one would. */
export function pressesToo(
  work: Work,
  moves: readonly Move[],
  parts: readonly Part[],
  there: ClampAt,
  own: ClampAt,
): boolean {
  if (there.axis !== own.axis || !oneClamp(own.joint, there.at, own.at)) return false;
  const [one, other] = [reachOf(parts, there), reachOf(parts, own)];
  if (one === null || other === null) return true;
  const over = !less(other.low.at, one.low.at) && !less(one.high.at, other.high.at);
  return over && isInLine(work, moves, there, own);
}

/** Whether a clamp stands over a joint; beside it only what was made one before passes the pressure on. */
function isInLine(work: Work, moves: readonly Move[], there: ClampAt, { joint }: ClampAt): boolean {
  const shared = overlapOf(work, joint);
  const over = otherAxes(there.axis).every((i, k) => {
    const here = there.at[k] as Length;
    return !less(here, shared.low[i]) && !less(shared.high[i], here);
  });
  const bodies = [moves[0]?.present ?? [], ...moves.map(({ arriving }) => arriving)];
  const bodyOf = (id: string): number => bodies.findIndex((ids) => ids.includes(id));
  const between = ({ parts }: Joint): string =>
    parts
      .map(bodyOf)
      .toSorted((a, b) => a - b)
      .join();
  return over || between(joint) === between(there.joint);
}

/** These are pressed one by one: a clamp on one leaves the next open. */
const ONE_BY_ONE: ReadonlySet<Joint["method"]> = new Set<Joint["method"]>(["half lap", "bridle"]);

/** The clamp that is there presses on this as well. */
const oneClamp = ({ method }: Joint, there: readonly Length[], at: readonly Length[]): boolean =>
  ONE_BY_ONE.has(method) ? there.every((value, i) => equal(value, at[i] as Length)) : isNear(there, at);
