/**
 * Printed sizes close: whoever adds up what the cut list prints and how deep the cuts are, along any line of parts that touch or leave
 * the gap that is stated, comes to the same place by every way, and from one side of the piece to the other to its printed outside.
 * The solids say only what touches what; every distance is a printed one.
 */
import { type Model, near, pairsOf } from "./model.ts";
import { TOLERANCE } from "./overlap.ts";
import { isThrough, type Station, stationsOf } from "./stations.ts";
import { touches } from "./touch.ts";
import { plus, times } from "./vector.ts";

export interface Chains {
  /** How many ways round came back to where they began. */
  readonly closed: number;
  readonly open: readonly string[];
}

interface Link {
  /** The same there and back. */
  readonly key: string;
  readonly from: Node;
  readonly to: Node;
  readonly distance: number;
}
interface Node extends Station {
  readonly part: string;
}

const DIRECTIONS = [
  [0, "width"],
  [1, "depth"],
  [2, "height"],
] as const;

export function chains(model: Model): Chains {
  const all = DIRECTIONS.map(([axis, outside]) => alongAxis(model, axis, outside));
  return {
    closed: all.reduce((sum, { closed }) => sum + closed, 0),
    open: all.flatMap(({ open }) => open),
  };
}

function alongAxis(model: Model, axis: 0 | 1 | 2, outside: string): Chains {
  const parts = new Map(
    model.record.parts.map((part) => [
      part.id,
      stationsOf(model, part, axis).map((station): Node => ({ ...station, part: part.id })),
    ]),
  );
  const { links, lost } = linksOf(model, axis, parts);
  const open = [...lost];
  const places = new Map<string, number>();
  const walked = new Set<string>();
  let closed = 0;
  for (const first of parts.keys()) {
    if (places.has(first)) continue;
    places.set(first, 0);
    const reached = [first];
    for (const part of reached)
      for (const { key, from, to, distance } of links.get(part) ?? []) {
        if (walked.has(key)) continue;
        walked.add(key);
        const place = (places.get(part) as number) + from.printed + distance - to.printed;
        const known = places.get(to.part);
        if (known === undefined) {
          reached.push(to.part);
          places.set(to.part, place);
        } else if (near(known, place, 2 * TOLERANCE)) closed += 1;
        else open.push(`${outside}: by way of ${part}, ${to.part} is ${place - known} mm from where it is by another`);
      }
    open.push(
      ...acrossOutside(
        model,
        axis,
        outside,
        reached.flatMap((part) => parts.get(part) ?? []),
        places,
      ),
    );
  }
  return { closed, open };
}

/** What reaches from one side of the piece to the other measures what the plan says of its outside. */
function* acrossOutside(
  { record }: Model,
  axis: 0 | 1 | 2,
  outside: string,
  nodes: readonly Node[],
  places: ReadonlyMap<string, number>,
): Iterable<string> {
  const stated = (record.source.sizes as Record<string, number>)[outside];
  const at = (bound: number) => nodes.find((node) => near(node.at, bound));
  const [low, high] = [at(record.bounds.min[axis]), at(record.bounds.max[axis])];
  if (stated === undefined || low === undefined || high === undefined) return;
  const sum = (places.get(high.part) ?? 0) + high.printed - (places.get(low.part) ?? 0) - low.printed;
  if (!near(sum, stated, 2 * TOLERANCE)) yield `${outside}: its parts add up to ${sum} mm, the plan says ${stated}`;
}

/** Where parts touch, or leave what their joint says; and the fixed joints whose parts do neither. */
function linksOf(model: Model, axis: 0 | 1 | 2, parts: ReadonlyMap<string, readonly Node[]>) {
  const links = new Map<string, Link[]>();
  const lost: string[] = [];
  for (const [a, b] of pairsOf(model.record.parts.map(({ id }) => id))) {
    const joints = model.record.joints.filter((joint) => joint.parts.includes(a) && joint.parts.includes(b));
    const gap = Math.max(0, ...joints.map((joint) => joint.gap));
    const found = touches(model.solid(a), model.solid(b), gap + TOLERANCE);
    for (const touch of found.filter(({ normal }) => near(Math.abs(normal[axis]), 1, 1e-6))) {
      const way = touch.normal[axis];
      const distance = touch.gap <= TOLERANCE ? 0 : way * gap;
      if (distance !== 0 && !near(touch.gap, gap, TOLERANCE)) continue;
      const [ofA, ofB] = [parts.get(a) ?? [], parts.get(b) ?? []];
      // No printed size leads straight along a part that lies askew.
      if (ofA.length === 0 || ofB.length === 0) continue;
      const from = ofA.find((station) => isThrough(station, touch.centre, axis));
      const to = ofB.find((station) => isThrough(station, plus(touch.centre, times(touch.normal, touch.gap)), axis));
      if (from === undefined || to === undefined) {
        lost.push(`${a} and ${b} touch at ${touch.centre}, where no printed size leads`);
        continue;
      }
      const key = [a, from.printed, b, to.printed].join(" ");
      links.set(a, [...(links.get(a) ?? []), { key, from, to, distance }]);
      links.set(b, [...(links.get(b) ?? []), { key, from: to, to: from, distance: -distance }]);
    }
    const apart = found.length === 0 && joints.some(({ kind }) => kind === "fixed");
    if (apart) lost.push(`${a} and ${b} are joined, and lie farther apart than the ${gap} mm that are stated`);
  }
  return { links, lost };
}
