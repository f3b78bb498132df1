/** Edges that a step takes off: which they are, and how the part lies so that they are seen. */
import { realEdges, type View } from "../../../geometry/picture/index.ts";
import type { Edge, Solid, Vec } from "../../../geometry/types.ts";
import { cross, dot, minus, norm, plus, times } from "../../../geometry/vec.ts";
import { partAfter, workIn } from "../../../solve/build/part-after.ts";
import type { Build, BuiltPart } from "../../../solve/build.ts";
import { onBench } from "../../../solve/design/turning.ts";
import type { Feature } from "../../../solve/design.ts";
import { TOLERANCE } from "../../../units/index.ts";

const OFF_EDGES: ReadonlySet<Feature["kind"]> = new Set(["chamfer", "round-over", "bevel"]);

/** The edges that there are after the step and were not before it, where it only takes edges off; else none. */
export function edgesCut(build: Build, part: BuiltPart, number: number): readonly Edge[] {
  const made = workIn(build, part.id, number, number);
  const kinds = [...made.features].map((i) => part.features[i]?.kind);
  if (made.holes.size > 0 || kinds.length === 0 || !kinds.every((kind) => kind && OFF_EDGES.has(kind))) return [];
  const at = (when: number): readonly Edge[] =>
    realEdges(onBench(partAfter(build, part, when)).solid).filter(({ smooth }) => !smooth);
  const before = at(number - 1);
  return at(number).filter(({ from, to }) => !before.some((old) => isOn(old, from) && isOn(old, to)));
}

/** Whether a point lies on the line of an edge. */
function isOn({ from, to }: Edge, point: Vec): boolean {
  const [along, off] = [minus(to, from), minus(point, from)];
  return norm(cross(along, off)) <= TOLERANCE * Math.max(1, norm(along));
}

export type Ways = Readonly<Record<"right" | "up" | "towards", Vec>>;

/** Farther out than this share of half its size an edge lies at that side of its part. */
const OUT = 0.6;

/** The part turned so that most of the edges lie on the sides that are seen from the front right and above. */
export function turnedTo(
  edges: readonly Edge[],
  { low, high }: Solid,
  { right, up, towards }: Pick<View, keyof Ways>,
): Ways {
  const [left, down, away] = [right, up, towards].map((way) => times(way, -1)) as [Vec, Vec, Vec];
  const all: readonly Ways[] = [
    { right, up, towards },
    { right: left, up: down, towards },
    { right, up: down, towards: away },
    { right: left, up, towards: away },
  ];
  const middle = times(plus(low, high), 0.5);
  const seen = (ways: Ways): number =>
    edges.reduce((sum, { from, to }) => {
      const off = minus(times(plus(from, to), 0.5), middle);
      const side = off.map((c, i) => {
        const half = ((high[i] as number) - (low[i] as number)) / 2;
        return Math.abs(c) > OUT * half ? Math.sign(c) : 0;
      }) as unknown as Vec;
      const hidden = dot(side, ways.right) < 0 || dot(side, ways.up) > 0 || dot(side, ways.towards) < 0;
      return sum + (hidden ? 0 : norm(minus(to, from)));
    }, 0);
  return all.reduce((best, ways) => (seen(ways) > seen(best) + 1 ? ways : best));
}
