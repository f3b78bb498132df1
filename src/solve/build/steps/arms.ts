/** Two arms that a part between them holds at one end: nothing closes them yet, and a little askew there is far off at their other end. */
import { equal, less, max, multiply, rational, sign, subtract, toNumber } from "../../../units/rational.ts";
import { type AxisIndex, enclosing, extent, INDICES, indexOf, roomAlong, thirdAxis } from "../../design/space.ts";
import type { Joint, Part } from "../../design.ts";
import { isHeld, jointsAmong } from "./case-sides.ts";
import type { Work } from "./draft.ts";
import { type Move, togetherAfter } from "./moves.ts";

export interface Arms {
  readonly arms: readonly [Part, Part];
  /** Seen so, they and what is between them are a frame that is open; whether it is flat. */
  readonly thin: AxisIndex;
  readonly flat: boolean;
}

/** The others are so many times as large. */
const FLAT = 3;

/** Those that a glue-up puts together; null where there are none, or more than two. */
export function armsOf(work: Work, moves: readonly Move[]): Arms | null {
  const fresh = moves.flatMap((move) => move.work.map(({ joint }) => joint));
  const ids = togetherAfter(moves);
  if (!fresh.some(({ glue }) => glue) || ids.some((id) => work.part(id).turned)) return null;
  const parts = ids.map(work.part);
  const joints = jointsAmong(work, ids);
  const [mates, fresher] = [matesIn(joints), matesIn(fresh)];
  const pairs = parts.flatMap((a, i) =>
    parts.slice(i + 1).flatMap((b) => {
      const away = awayOf(a, b);
      if (away === null) return [];
      const isHolding = (id: string): boolean =>
        mates(b.id).has(id) &&
        (fresher(a.id).has(id) || fresher(b.id).has(id)) &&
        isAtOneEnd(work.part(id), a, b, away);
      return [...mates(a.id)].some(isHolding) && !isHeld(a, b, joints) ? [armed(work, [a, b], away, ids)] : [];
    }),
  );
  return pairs.length === 1 ? (pairs[0] as Arms) : null;
}

function armed(work: Work, arms: readonly [Part, Part], away: AxisIndex, ids: readonly string[]): Arms {
  const [{ axes }] = arms;
  const along = indexOf(axes.length);
  const thin = thirdAxis(along, away);
  const whole = ids.map((id) => work.part(id).body).reduce(enclosing);
  const deep = toNumber(extent(whole, thin)) * FLAT;
  return { arms, thin, flat: [along, away].every((axis) => deep <= toNumber(extent(whole, axis))) };
}

/** In which direction two that are as long stand apart, side by side; null where they do not. */
function awayOf(a: Part, b: Part): AxisIndex | null {
  const along = indexOf(a.axes.length);
  if (a.axes.length !== b.axes.length) return null;
  const [away, ...more] = INDICES.filter((i) => sign(roomAlong(a.body, b.body, i)) > 0);
  const alike = (i: AxisIndex): boolean => equal(a.body.low[i], b.body.low[i]) && equal(a.body.high[i], b.body.high[i]);
  if (away === undefined || away === along || more.length > 0) return null;
  return INDICES.every((i) => i === away || alike(i)) ? away : null;
}

/** What each part is joined to. */
function matesIn(joints: readonly Joint[]): (id: string) => ReadonlySet<string> {
  const mates = new Map<string, Set<string>>();
  for (const { parts } of joints)
    for (const id of parts) {
      const own = mates.get(id) ?? new Set();
      for (const other of parts) if (other !== id) own.add(other);
      mates.set(id, own);
    }
  return (id) => mates.get(id) ?? NONE;
}

const NONE: ReadonlySet<string> = new Set();

/** Whether a part goes from one to the other, and leaves more than half of their length free. */
function isAtOneEnd({ body }: Part, a: Part, b: Part, away: AxisIndex): boolean {
  const along = indexOf(a.axes.length);
  const [near, far] = less(a.body.low[away], b.body.low[away]) ? [a.body, b.body] : [b.body, a.body];
  const isBetween = !less(body.low[away], near.high[away]) && !less(far.low[away], body.high[away]);
  const free = max(subtract(body.low[along], a.body.low[along]), subtract(a.body.high[along], body.high[along]));
  return isBetween && less(extent(a.body, along), multiply(free, rational(2)));
}
