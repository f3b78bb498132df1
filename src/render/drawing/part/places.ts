/** Places of a part that are measured: its edges, the ends of its curves, the middles of its holes. */
import { picturePoint, realEdges } from "../../../geometry/picture/index.ts";
import type { Vec } from "../../../geometry/types.ts";
import { dot, minus, norm, times } from "../../../geometry/vec.ts";
import type { Feature, Hole } from "../../../solve/design.ts";
import { TOLERANCE, toNumber } from "../../../units/index.ts";
import { boxOf, inBox, toVec } from "../feature-box.ts";
import { wasThere } from "./earlier.ts";
import type { Ladder } from "./ladders.ts";
import type { Lying } from "./lying.ts";
import { type InPart, type Row, runsOf } from "./rows.ts";

/** From the piece's coordinates into the frame of the face view; directions too. */
export const framed =
  ({ face, edge }: Pick<Lying, "face" | "edge">) =>
  (p: Vec): InPart => {
    const [u, v] = picturePoint(face, p);
    return [u, v, picturePoint(edge, p)[1]];
  };

export interface Places {
  /** Along, across and through the part, each sorted and told once; those in rows left out. */
  readonly along: readonly number[];
  readonly across: readonly number[];
  readonly through: readonly number[];
  /** Along the part, of what is cut and bored into the edge that is drawn, and of nothing else. */
  readonly below: readonly number[];
  /** Edges at equal distances. */
  readonly runs: Readonly<Record<"along" | "across" | "through", readonly Row[]>>;
  /** Stretches of the length that must be drawn whole; and those without the holes inside long rows, of which the first and the last tell enough. */
  readonly kept: readonly (readonly [number, number])[];
  readonly least: readonly (readonly [number, number])[];
}

/** Lines that lean are measured at their ends only from this length on, 5 mm. */
const LONG = 80_000;

/** Rows of holes have numbers of their own. */
export function placesOf(lying: Lying, ladders: readonly Ladder[]): Places {
  const { part, holes } = lying;
  const frame = framed(lying);
  const at: [number[], number[], number[]] = [[], [], []];
  const kept: [number, number][] = [];
  const middles: [number[], number[], number[]] = [[], [], []];
  const onEdge: [number[], number[], number[]] = [[], [], []];
  const intoEdge = (way: Vec): boolean => dot(way, lying.edge.towards) < -0.9 * norm(way) * norm(lying.edge.towards);
  const edgeCuts = part.features.flatMap((f) => ("into" in f && intoEdge(f.into) ? [boxOf(f)] : []));
  const add = (p: InPart, which: readonly boolean[], to = at): void => {
    which.forEach((wanted, i) => {
      if (wanted) to[i]?.push(p[i] as number);
    });
  };
  const curves = part.features.flatMap((feature) =>
    "radius" in feature ? [{ kind: feature.kind, ...boxOf(feature) }] : [],
  );
  for (const edge of realEdges(part.solid)) {
    if (edge.smooth) continue;
    if (wasThere(part, edge)) {
      // Told where it was cut: a figure of it beside those of now would be taken for one of them.
      kept.push(...[edge.from, edge.to].map(frame).map(([u]) => [u, u] as [number, number]));
      continue;
    }
    if (part.features.some((feature) => feature.kind === "chamfer" && onPlane(feature, edge.from, edge.to))) continue;
    const [from, to] = [frame(edge.from), frame(edge.to)];
    const level = [0, 1, 2].map((i) => Math.abs((from[i] as number) - (to[i] as number)) <= TOLERANCE);
    if (level.filter(Boolean).length < 2) kept.push([Math.min(from[0], to[0]), Math.max(from[0], to[0])]);
    if (curves.some((box) => inBox(box, edge.from) && inBox(box, edge.to))) continue;
    add(from, level, edgeCuts.some((box) => inBox(box, edge.from) && inBox(box, edge.to)) ? onEdge : at);
    if (level.filter(Boolean).length < 2 && norm(minus(edge.to, edge.from)) > LONG) {
      add(from, [true, true, true]);
      add(to, [true, true, true]);
    }
  }
  for (const box of curves.filter(({ kind }) => kind !== "round-over"))
    for (const corner of [box.low, box.high]) {
      const p = frame(corner);
      add(p, [true, true, false]);
      kept.push([p[0], p[0]]);
    }
  const ends = [part.solid.low, part.solid.high].map(frame);
  for (const end of ends) add(end, [true, true, true]);
  const inRow = ([0, 1] as const).map((axis) => new Set(ladders.flatMap((l) => (l.axis === axis ? l.holes : []))));
  const inner = new Set(ladders.flatMap((ladder) => insideOf(ladder, (hole) => frame(toVec(hole.at))[0])));
  const between: [number, number][] = [];
  for (const hole of holes) {
    const [p, way] = [frame(toVec(hole.at)), frame(hole.direction)];
    add(
      p,
      [0, 1, 2].map((i) => Math.abs(way[i] as number) < 0.95 && !inRow[i]?.has(hole)),
      intoEdge(hole.direction) ? onEdge : middles,
    );
    const reach = Math.max(...hole.stages.map(({ diameter }) => toNumber(diameter))) / 2;
    const deep = way[0] * Math.max(...hole.stages.map(({ depth }) => toNumber(depth)));
    const own: [number, number] = [Math.min(p[0], p[0] + deep) - reach, Math.max(p[0], p[0] + deep) + reach];
    (inner.has(hole) ? between : kept).push(own);
  }
  const told = ([0, 1, 2] as const).map((i) => {
    const all = once([...at[i], ...(i === 0 ? [] : onEdge[i]), ...middles[i]]);
    const runs = runsOf(all);
    const inside = new Set(runs.flatMap((run) => run.inside));
    return { all, places: all.filter((value) => !inside.has(value)), runs: runs.map(({ row }) => row) };
  });
  const [along, across, through] = told as unknown as readonly [Told, Told, Told];
  const below = once(onEdge[0]).filter((u) => along.all.every((other) => Math.abs(other - u) > 2 * TOLERANCE));
  const marks = [...along.all, ...below].map((u) => [u, u] as const);
  const isNear = (u: number): boolean => along.places.some((other) => Math.abs(other - u) < NEARLY);
  const crowd = along.places.length + below.length > CROWD || below.some(isNear);
  return {
    along: crowd ? along.places : once([...along.places, ...below]),
    ...{ across: across.places, through: through.places, below: crowd ? below : [] },
    runs: { along: along.runs, across: across.runs, through: through.runs },
    kept: [...kept, ...between, ...marks],
    least: [...kept, ...marks],
  };
}

/** So many spaces of a row are drawn at either end. */
const SPACES = 1;

/** Of a row along the part those holes that are not near its ends. */
function insideOf({ axis, row, holes }: Ladder, along: (hole: Hole) => number): readonly Hole[] {
  const near = ((SPACES + 0.5) * (row.to - row.from)) / row.spaces;
  if (axis !== 0) return [];
  return holes.filter((hole) => along(hole) > row.from + near && along(hole) < row.to - near);
}

/** With more numbers above the face, those of the edge stand below it. */
const CROWD = 12;
/** And where one is as near to one of the face as this, 10 mm: nobody could tell whose is whose. */
const NEARLY = 160_000;

/** Of one axis. */
interface Told {
  readonly all: readonly number[];
  readonly places: readonly number[];
  readonly runs: readonly Row[];
}

/** Sorted, what lies within twice the tolerance of the one before left out. */
function once(values: readonly number[]): number[] {
  const out: number[] = [];
  for (const value of [...values].sort((a, b) => a - b))
    if (out.length === 0 || value - (out.at(-1) as number) > 2 * TOLERANCE) out.push(value);
  return out;
}

function onPlane(feature: Feature, ...points: readonly Vec[]): boolean {
  if (!("normal" in feature)) return false;
  const normal = times(feature.normal, 1 / norm(feature.normal));
  return points.every((p) => Math.abs(dot(normal, minus(p, toVec(feature.origin)))) <= TOLERANCE);
}
