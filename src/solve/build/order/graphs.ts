/** Blocking between nodes, each a part or a unit of parts that travel together. */
import { closedSets, smallestClosed } from "./closed.ts";
import { type Halves, hangsOn } from "./links.ts";
import type { Parting, Piece } from "./splits.ts";

/** Parts that are handled as one, in source order. */
export type Node = readonly number[];

/** A set of nodes that is free to leave a body. */
export interface Leaving extends Parting {
  readonly moving: readonly number[];
  readonly staying: readonly number[];
}

export interface Graphs {
  /** The smallest sets that can leave in a straight line. */
  smallest(body: readonly number[]): readonly Leaving[];
  /** Nodes that lie loose on the rest, and that no straight line frees. */
  stuck(body: readonly number[]): readonly number[];
  /** Those of them that one tilt frees, which takes long to find. */
  tilted(body: readonly number[]): readonly Leaving[];
  /** Every set that can leave, unless there are too many to look at. */
  all(body: readonly number[]): { readonly sets: readonly Leaving[]; readonly complete: boolean };
}

/** Sets looked at in one direction. */
const LIMIT = 256;

export function graphsOf(piece: Piece, nodes: readonly Node[]): Graphs {
  const { directions, opposite, blocked } = piece.blocking;
  const graphs = directions.map((_, d) => {
    // 0: not asked yet.
    const known = new Int8Array(nodes.length * nodes.length);
    return (a: number, b: number): boolean => {
      const at = a * nodes.length + b;
      if (known[at] === 0) known[at] = nodes[a]?.some((p) => nodes[b]?.some((q) => blocked(p, q, d))) ? 1 : -1;
      return known[at] === 1;
    };
  });

  const waits = (half: readonly number[]): boolean => partsOf(nodes, half).some((part) => piece.waiting.has(part));
  const woodOf = (half: readonly number[]): number =>
    partsOf(nodes, half).reduce((sum, part) => sum + (piece.volumes[part] ?? 0), 0);
  const later = (a: readonly number[], b: readonly number[]): boolean => {
    if (waits(a) !== waits(b)) return waits(a);
    const alike = partsOf(nodes, a).length === partsOf(nodes, b).length;
    return alike ? first(a) > first(b) : woodOf(a) < woodOf(b);
  };

  /** The piece comes to the cleat on the wall, however large it is. */
  const nodeOf = (part: number): number => nodes.findIndex((node) => node.includes(part));
  const hanging = piece.links
    .filter(({ joint }) => hangsOn(joint))
    .map(({ ends: [joined, cleat] }) => ({ joined: nodeOf(joined), cleat: nodeOf(cleat) }));
  const hung = (a: readonly number[], b: readonly number[]): boolean =>
    hanging.some(({ joined, cleat }) => a.includes(joined) && b.includes(cleat));

  /** Sets that leave in several directions share their halves. */
  const leaving = (body: readonly number[], found: readonly (readonly (readonly number[])[])[]): readonly Leaving[] => {
    const known = new Map<string, Halves>();
    return found.flatMap((sets, d) =>
      sets.flatMap((set) => {
        const rest = body.filter((node) => !set.includes(node));
        // The smaller half is the one that moves; of equal halves what is cut to the piece, the lighter of a part and a unit, or what comes later in the source.
        const shorter = rest.length < set.length || (rest.length === set.length && later(rest, set));
        const swap = hung(rest, set) || (shorter && !hung(set, rest));
        const [moving, staying] = swap ? [rest, set] : [set, rest];
        const way = swap ? d : (opposite[d] ?? d);
        const along = directions[way];
        if (moving.length === 0 || !along) return [];
        const halves = known.get(moving.join()) ?? { moving: partsOf(nodes, moving), staying: partsOf(nodes, staying) };
        known.set(moving.join(), halves);
        return [{ moving, staying, halves, along, nodes: moving.length, direction: opposite[way] ?? way }];
      }),
    );
  };

  const restOf = (body: readonly number[], node: number) => body.filter((other) => other !== node);
  const stuck = (body: readonly number[]): readonly number[] =>
    body.filter((node) => {
      const rest = restOf(body, node);
      return (
        rest.length > 0 &&
        liesLoose(piece, nodes[node] ?? [], partsOf(nodes, rest)) &&
        graphs.every((graph) => rest.some((other) => graph(node, other)))
      );
    });

  return {
    smallest: (body) =>
      leaving(
        body,
        graphs.map((graph) => smallestClosed(body, graph)),
      ),
    stuck,
    tilted: (body) =>
      stuck(body).flatMap((node): readonly Leaving[] => {
        const staying = restOf(body, node);
        const halves = { moving: nodes[node] ?? [], staying: partsOf(nodes, staying) };
        const legs = piece.tilt(halves.moving, halves.staying);
        const last = legs?.find((leg) => "along" in leg && leg.distance === null);
        if (!legs || !last || !("along" in last)) return [];
        return [{ moving: [node], staying, halves, along: last.along, nodes: 1, direction: directions.length, legs }];
      }),
    all(body) {
      const found = graphs.map((graph) => closedSets(body, graph, LIMIT));
      return { sets: leaving(body, found), complete: found.every((sets) => sets.length < LIMIT) };
    },
  };
}

/** Whether nothing but its weight holds a part or body to others. */
function liesLoose({ links }: Piece, own: readonly number[], others: readonly number[]): boolean {
  const inside = new Set(own);
  const outside = new Set(others);
  const between = links.filter(({ ends: [a, b] }) =>
    inside.has(a) ? outside.has(b) : inside.has(b) && outside.has(a),
  );
  return between.length > 0 && between.every(({ joint }) => joint.kind === "resting");
}

export const partsOf = (nodes: readonly Node[], of: readonly number[]): readonly number[] =>
  of.flatMap((node) => nodes[node] ?? []).sort((a, b) => a - b);

const first = (of: readonly number[]): number => of[0] ?? 0;
