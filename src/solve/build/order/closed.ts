/**
 * Closed sets of a blocking graph: sets of nodes of which none is blocked by a node outside, so that the set can leave.
 * `blocked(a, b)` says that a cannot leave while b stays.
 */

type Blocked = (a: number, b: number) => boolean;

/** The closed sets that contain no smaller one, by the depth-first search of R. Tarjan, SIAM J. Comput. 1 (1972) 146–160. */
export function smallestClosed(body: readonly number[], blocked: Blocked): readonly (readonly number[])[] {
  const found: number[][] = [];
  const order = new Map<number, number>();
  const done = new Set<number>();
  const stack: number[] = [];

  /** The lowest place on the stack that a can reach, and whether what it leads to is still open. */
  const visit = (a: number): { readonly low: number; readonly leaves: boolean } => {
    const place = order.size;
    const height = stack.length;
    order.set(a, place);
    stack.push(a);
    let [low, leaves] = [place, false];
    for (const b of body) {
      if (b === a || !blocked(a, b)) continue;
      const before = order.get(b);
      if (done.has(b)) leaves = true;
      else if (before !== undefined) low = Math.min(low, before);
      else {
        const below = visit(b);
        low = Math.min(low, below.low);
        leaves ||= below.leaves || done.has(b);
      }
    }
    if (low === place) {
      const together = stack.splice(height);
      for (const b of together) done.add(b);
      if (!leaves) found.push(together.sort((x, y) => x - y));
    }
    return { low, leaves };
  };
  for (const a of body) if (!order.has(a)) visit(a);
  return found;
}

/** Everything that must go with a node. */
function closure(start: number, body: readonly number[], blocked: Blocked): readonly number[] {
  const set = new Set([start]);
  for (const a of set) for (const b of body) if (!set.has(b) && blocked(a, b)) set.add(b);
  return [...set].sort((x, y) => x - y);
}

/** Closed sets other than the whole body, what must go with each node first, then their unions; at most `limit` of them. */
export function closedSets(body: readonly number[], blocked: Blocked, limit: number): readonly (readonly number[])[] {
  const closures = new Map(body.map((a) => [a, closure(a, body, blocked)]));
  const found = new Map<string, readonly number[]>();
  const keep = (set: readonly number[]): void => {
    if (set.length < body.length && found.size < limit) found.set(set.join(), set);
  };
  for (const set of closures.values()) keep(set);
  for (const set of found.values()) {
    for (const [a, more] of closures) if (!set.includes(a)) keep([...new Set([...set, ...more])].sort((x, y) => x - y));
  }
  return [...found.values()];
}
