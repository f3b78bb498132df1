/** Which parts lock each other, and what would free them. */
import type { Joint } from "../../design.ts";
import type { Blocking } from "./blocking.ts";
import { smallestClosed } from "./closed.ts";
import type { Link } from "./links.ts";

export interface Lock {
  /** As few as lock each other, by their places. */
  readonly parts: readonly number[];
  /** The joints between them of which any one frees them when it no longer reaches into the wood. */
  readonly keys: readonly Joint[];
}

type Blocked = (a: number, b: number, d: number) => boolean;

/** Whether nothing of a body leaves in any direction. */
const isLocked = (body: readonly number[], { directions }: Blocking, blocked: Blocked): boolean =>
  body.length > 1 &&
  directions.every((_, d) =>
    smallestClosed(body, (a, b) => blocked(a, b, d)).every((set) => set.length === body.length),
  );

/** The core of a body in which nothing can move; null where something can, and other things forbid it. */
export function lockOf(body: readonly number[], links: readonly Link[], blocking: Blocking): Lock | null {
  const { blocked } = blocking;
  if (!isLocked(body, blocking, blocked)) return null;
  const core = body.reduce((so, part) => {
    const less = so.filter((other) => other !== part);
    return isLocked(less, blocking, blocked) ? less : so;
  }, body);
  const keys = links.filter(({ ends }) => {
    if (!ends.every((end) => core.includes(end))) return false;
    const opened: Blocked = (a, b, d) => !(ends.includes(a) && ends.includes(b)) && blocked(a, b, d);
    return !isLocked(core, blocking, opened);
  });
  return { parts: core, keys: keys.map(({ joint }) => joint) };
}
