/**
 * Assembly by disassembly: a body comes apart into two bodies, one of which leaves in a straight line, and so on down to single
 * nodes; what came off last goes on first. The best split is followed first. Where a half turns out to be stuck the next is tried.
 */
import type { Refusal, Taken } from "./choices.ts";
import { type Graphs, graphsOf, type Leaving, type Node, partsOf } from "./graphs.ts";
import type { Halves } from "./links.ts";
import { bodyOf, type Closed, close, closingOf, type Piece, type Split, splitOf } from "./splits.ts";

export type Taking =
  | { readonly node: number }
  | { readonly split: Split; readonly staying: Taking; readonly moving: Taking };

export interface Apart {
  readonly tree: Taking;
  readonly taken: Taken;
}

/** The first body that did not come apart. */
export interface Stuck {
  readonly nodes: readonly number[];
  /** Joints that forbid splits which would have been free to move; none when nothing can move. */
  readonly refusals: readonly Refusal[];
  /** Given up after too many tries: perhaps there is an order after all. */
  readonly exhausted: boolean;
}

/** Splits judged before giving up, far more than real pieces need. */
const tries = (nodes: number): number => 10_000 + 2 * nodes * nodes;

interface Way extends Leaving {
  readonly split: Split;
}

/** `nodes`: parts that are handled as one; every node hangs together. `start`: arrangements that are taken already. */
export function takeApart(piece: Piece, nodes: readonly Node[], start: Taken): Apart | Stuck {
  const graphs = graphsOf(piece, nodes);
  const dead = new Set<string>();
  let left = tries(nodes.length);
  let stuck: Stuck | null = null;
  let hopeless = false;

  const judge = (sets: readonly Leaving[], taken: Taken, refusals: Refusal[]): readonly Way[] => {
    const ways = new Map<string, Way>();
    const known = new Map<Halves, Closed | Refusal | null>();
    for (const leaving of sets) {
      let closed = known.get(leaving.halves);
      if (closed === undefined) {
        if (left-- <= 0) break;
        closed = close(piece, leaving.halves, taken);
        known.set(leaving.halves, closed);
        if (closed !== null && "why" in closed) refusals.push(closed);
      }
      if (closed === null || "why" in closed) continue;
      ways.set(`${leaving.moving.join()}|${leaving.direction}`, { ...leaving, split: splitOf(piece, leaving, closed) });
    }
    return [...ways.values()].sort((a, b) => compareCosts(a.split.cost, b.split.cost));
  };

  /**
   * What leaves easily; else all that can leave, nearly all of it soon found. Ways out with a tilt are looked for only where no straight
   * one is sure to be better.
   */
  const waysOf = (body: readonly number[], taken: Taken, refusals: Refusal[]): readonly (() => readonly Way[])[] => {
    const straight = graphs.smallest(body);
    const ways = judge(straight, taken, refusals);
    const [best] = ways;
    const tilted = (): readonly Way[] => {
      const found = graphs.tilted(body);
      return found.length > 0 ? judge([...straight, ...found], taken, refusals) : ways;
    };
    const sure = best?.split.light && !partsOf(nodes, graphs.stuck(body)).some((part) => piece.waiting.has(part));
    return [...(sure ? [() => [best]] : []), tilted, () => judge(graphs.all(body).sets, taken, refusals)];
  };

  const solve = (body: readonly number[], taken: Taken): Apart | null => {
    const [only] = body;
    if (only !== undefined && body.length === 1) return { tree: { node: only }, taken };
    const key = `${body.join()}|${chosenIn(piece, partsOf(nodes, body), taken)}`;
    if (dead.has(key)) return null;
    const refusals: Refusal[] = [];
    for (const ways of waysOf(body, taken, refusals)) {
      for (const { split, staying, moving } of ways()) {
        const stays = solve(staying, split.taken);
        const moves = stays && solve(moving, stays.taken);
        if (moves) return { tree: { split, staying: stays.tree, moving: moves.tree }, taken: moves.taken };
        if (hopeless || left <= 0) return null;
      }
    }
    dead.add(key);
    if (stuck === null) {
      stuck = { nodes: body, refusals, exhausted: false };
      hopeless = neverComesApart(piece, graphs, body, start);
    }
    return null;
  };

  const all = nodes.map((_, i) => i);
  const apart = solve(all, start);
  if (apart) return apart;
  const nothing: Stuck = { nodes: all, refusals: [], exhausted: true };
  return { ...(stuck ?? nothing), exhausted: !hopeless && left <= 0 };
}

/**
 * Whether every way in which the body could move closes a joint that cannot be made. More parts around it would only be more in
 * the way, so then no larger body comes apart either.
 */
function neverComesApart(piece: Piece, graphs: Graphs, body: readonly number[], start: Taken): boolean {
  const { sets, complete } = graphs.all(body);
  return (
    complete &&
    sets.every(({ halves }) => {
      const whole = bodyOf(piece, halves);
      return closingOf(piece, halves).some((link) => "why" in piece.choices.make([link], whole, start));
    })
  );
}

function compareCosts(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

/** The arrangements taken at joints of the body's parts, as a key: they decide what is still open inside the body. */
function chosenIn({ links }: Piece, body: readonly number[], taken: Taken): string {
  const inside = new Set(body);
  return links
    .flatMap(({ index, joint, members }) => {
      const own = taken.get(index);
      return own && members.some((part) => inside.has(part)) ? [`${index}:${joint.arrangements.indexOf(own)}`] : [];
    })
    .join();
}
