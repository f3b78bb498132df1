/** What is in the way of what: for each direction of travel, which parts block which. */
import { blocks, type Vec } from "../../../geometry/index.ts";
import { dot } from "../../../geometry/vec.ts";
import type { Arrangement, Design, Direction } from "../../design.ts";
import { hangsOn } from "./links.ts";
import { pegsOf, reversed } from "./pegs.ts";

export interface Blocking {
  /** Unit vectors. */
  readonly directions: readonly Direction[];
  /** The place in `directions` of each direction's opposite. */
  readonly opposite: readonly number[];
  /** Part `a` cannot leave along direction `d` while part `b` stays. */
  blocked(a: number, b: number, d: number): boolean;
}

/** Up first, then towards the reader: of two ways out that are equally good the earlier one is taken. */
const SIX: readonly Direction[] = [
  [0, 0, 1],
  [0, 0, -1],
  [0, -1, 0],
  [0, 1, 0],
  [1, 0, 0],
  [-1, 0, 0],
];

/** Two unit vectors are the same when they part by less than 0.001 mm over a metre. */
const SAME = 1e-6;
const same = (a: Vec, b: Vec): boolean => 1 - dot(a, b) < (SAME * SAME) / 2;

/** `pegged`: the arrangements whose fasteners travel in their parts. Each pair of parts is judged when it is first asked for. */
export function blockingOf(design: Pick<Design, "parts" | "joints">, pegged: readonly Arrangement[]): Blocking {
  const { parts } = design;
  const pegs = pegsOf(parts, pegged);
  const directions = [...SIX];
  // What hangs comes down its bevel, never square to it.
  const skew = design.joints.flatMap((joint) => [
    ...(hangsOn(joint) ? [] : joint.contact.map(({ normal }) => normal)),
    ...(joint.insertion ? [joint.insertion] : []),
  ]);
  for (const way of [...skew, ...pegs.flat().map(({ out }) => out)])
    if (!directions.some((other) => same(other, way))) directions.push(way, reversed(way));
  const opposite = directions.map((_, d) => d ^ 1);

  /** Whether a, with its pegs, meets b when it moves. */
  const meets = (a: number, b: number, way: Direction): boolean => {
    const [moving, still] = [parts[a], parts[b]];
    if (!moving || !still) return false;
    const inPegs = (pegs[a] ?? []).some(({ solid, out, mates }) =>
      mates.includes(still.id) ? !same(reversed(out), way) : blocks(solid, still.solid, way),
    );
    return inPegs || blocks(moving.solid, still.solid, way);
  };
  const crossing = (a: number, b: number, way: Direction): boolean =>
    (pegs[a] ?? []).some((p) => (pegs[b] ?? []).some((q) => blocks(p.solid, q.solid, way)));

  const known = directions.map(() => new Int8Array(parts.length * parts.length));
  return {
    directions,
    opposite,
    blocked(a, b, d) {
      const row = known[d];
      const way = directions[d];
      if (!row || !way || a === b) return false;
      const at = a * parts.length + b;
      if (row[at] === 0) {
        const yes = meets(a, b, way) || meets(b, a, reversed(way)) || crossing(a, b, way);
        row[at] = yes ? 1 : -1;
        const mirrored = known[d ^ 1];
        if (mirrored) mirrored[b * parts.length + a] = yes ? 1 : -1;
      }
      return row[at] === 1;
    },
  };
}
