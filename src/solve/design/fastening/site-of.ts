import {
  type Contact,
  exactBounds,
  inverse,
  type Placement,
  placedSolid,
  turnedVec,
  turnInto,
  type Vec,
} from "../../../geometry/index.ts";
import type { JointDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import type { Frame } from "../placing/attitude.ts";
import { type AxisIndex, faceAxis, INDICES, otherAxes, triple, unit } from "../space.ts";
import { contactBox } from "./row.ts";
import type { Member, Site } from "./site.ts";

/** A site, and where its coordinates lie in the room; null: they are those of the room. */
export interface PlacedSite {
  readonly site: Omit<Site, "still">;
  readonly placement: Placement | null;
}

/**
 * The site of a joint: its largest contact, or of what is let in the largest that faces as the heads do, told in coordinates in which that faces along an axis. They are the room's if that does, else
 * those of the part that it is square to, else any.
 */
export function siteOf(
  joint: string,
  draft: JointDraft,
  head: Member,
  hold: Member,
  contacts: readonly Contact[],
  headIsFirst: boolean,
): PlacedSite | null {
  const square = head.placement === null && hold.placement === null;
  const facing = contacts.filter(({ normal }) => axisOf(normal) !== null);
  const housed = ["rabbet", "dado", "groove"].includes(draft.with.value);
  const side = housed && draft.fasteners?.side ? faceAxis(draft.fasteners.side.value) : undefined;
  const headed = facing.filter(({ normal }) => axisOf(normal) === side);
  const [first, ...others] = square && headed.length > 0 ? headed : square && facing.length > 0 ? facing : contacts;
  if (!first) return null;
  const largest = others.reduce((best, c) => (c.area > best.area ? c : best), first);
  const placement = placementFor(largest.normal, head, hold);
  const back = placement && inverse(placement);
  const normal = back ? turnedVec(back, largest.normal) : largest.normal;
  const axis = axisOf(normal);
  if (axis === null) return null;
  const sign = normal[axis] > 0 === headIsFirst ? 1 : -1;
  const [one, other] = [memberIn(head, back), memberIn(hold, back)];
  const polygons = largest.polygons.map((polygon) => polygon.map((p) => moved(back, p)));
  const area =
    square && !back ? contactBox(head.body, hold.body, largest) : crossOf(polygons, moved(back, largest.centre), axis);
  return area && { site: { joint, draft, head: one, hold: other, axis, sign, area }, placement };
}

/** The axis that a unit vector lies along. */
const axisOf = (normal: Vec): AxisIndex | null =>
  normal.filter((n) => Math.abs(n) < 1e-9).length === 2
    ? (normal.findIndex((n) => Math.abs(n) > 0.5) as AxisIndex)
    : null;

function placementFor(normal: Vec, head: Member, hold: Member): Placement | null {
  if (axisOf(normal) !== null) return null;
  const own = [head.placement, hold.placement].find(
    (placement) => placement && axisOf(turnedVec(inverse(placement), normal)) !== null,
  );
  if (own) return own;
  const axis = INDICES.reduce<AxisIndex>((best, i) => (Math.abs(normal[i]) > Math.abs(normal[best]) ? i : best), 0);
  return turnInto(axis, normal[axis] < 0 ? -1 : 1, normal);
}

const moved = (back: Placement | null, p: Vec): Vec => {
  if (!back) return p;
  const at = turnedVec(back, p);
  return [at[0] + toNumber(back.shift[0]), at[1] + toNumber(back.shift[1]), at[2] + toNumber(back.shift[2])];
};

/** A member in other coordinates. Where it is not square to them its body is the box around its solid. */
function memberIn(member: Member, back: Placement | null): Member {
  const { placement, solid } = member;
  if (back === null && placement === null) return member;
  const here = back ? placedSolid(solid, back) : solid;
  const way = (axis: AxisIndex): Vec => {
    const inRoom = placement ? turnedVec(placement, unit(axis, 1)) : unit(axis, 1);
    return back ? turnedVec(back, inRoom) : inRoom;
  };
  const axes = ([member.frame.thickness, member.frame.width, member.frame.length] as const).map((axis) =>
    axisOf(way(axis)),
  );
  const [thickness, width, length] = axes as [AxisIndex | null, AxisIndex | null, AxisIndex | null];
  const even = thickness !== null && width !== null && length !== null;
  const box = exactBounds(here);
  const frame: Frame = even
    ? { thickness, width, length }
    : { ...member.frame, thickness: thickness ?? member.frame.thickness };
  return { ...member, solid: here, body: box, frame, slanting: thickness === null, askew: !even };
}

/** The stretches of a contact through its middle, along its two directions: where rows of fasteners may lie. Null for a mere point. */
function crossOf(polygons: readonly (readonly Vec[])[], centre: Vec, axis: AxisIndex): Box | null {
  const [a, b] = otherAxes(axis);
  const stretches = new Map([
    [a, chord(polygons, centre, a, b)],
    [b, chord(polygons, centre, b, a)],
  ]);
  if ([...stretches.values()].includes(null)) return null;
  const level = rational(Math.round(centre[axis]));
  const side = (i: AxisIndex, end: 0 | 1): Length =>
    i === axis ? level : rational(Math.round(stretches.get(i)?.[end] ?? 0));
  return { low: triple((i) => side(i, 0)), high: triple((i) => side(i, 1)) };
}

/** The run of the line through the centre along axis `a` inside the polygons, as far as it hangs together. */
function chord(
  polygons: readonly (readonly Vec[])[],
  centre: Vec,
  a: AxisIndex,
  b: AxisIndex,
): readonly [number, number] | null {
  const runs = polygons.flatMap((polygon): (readonly [number, number])[] => {
    const crossings = polygon.flatMap((from, i): number[] => {
      const to = polygon[(i + 1) % polygon.length] ?? from;
      const [s, t] = [from[b] - centre[b], to[b] - centre[b]];
      return s > 0 === t > 0 ? [] : [from[a] + ((to[a] - from[a]) * s) / (s - t)];
    });
    return crossings.length < 2 ? [] : [[Math.min(...crossings), Math.max(...crossings)]];
  });
  runs.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  let best: readonly [number, number] | null = null;
  let so: readonly [number, number] | null = null;
  for (const run of runs) {
    so = so && run[0] <= so[1] + 1 ? [so[0], Math.max(so[1], run[1])] : run;
    if (!best || so[1] - so[0] > best[1] - best[0]) best = so;
  }
  return best;
}
