/** Where a part is held up, and how far it reaches between. Millimetres. */
import { TOLERANCE, UNITS_PER_MM } from "../../../../units/length.ts";
import { toNumber } from "../../../../units/rational.ts";
import type { AxisIndex } from "../../../design/space.ts";
import type { Design, Joint, Part } from "../../../design.ts";
import { bodyOf, type Support } from "./body.ts";
import { liesOn } from "./lying.ts";

/** The longest stretch of a part without support. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly supports: readonly Support[];
}

/** Everything that holds `part` up: what is under it or beside it, and would stand without it. */
function rests(part: Part, along: AxisIndex, beside: 0 | 1, design: Design): readonly Support[] {
  const { joints, parts } = design;
  const floor = Math.min(...parts.map(({ solid }) => solid.low[2]));
  const stands = (id: string): boolean =>
    joints.some((joint) => joint.parts.includes(id) && !joint.parts.includes(part.id)) ||
    (parts.find((each) => each.id === id)?.solid.low[2] ?? floor) - floor <= TOLERANCE;
  const joined = joints.flatMap((joint) => {
    if (!joint.parts.includes(part.id)) return [];
    const [first, second] = joint.parts;
    const by = first === part.id ? second : first;
    if (!stands(by)) return [];
    if (joint.kind === "resting" && onPins(joint).length > 0) return [pinned(joint, by, along, beside)];
    const way = first === part.id ? 1 : -1;
    // What lies loose is held from below alone; what lies on top of it is carried, and does not carry.
    const least = joint.kind === "resting" ? -0.5 : 0.5;
    return joint.contact.flatMap(({ normal, polygons }): Support[] => {
      if (normal[2] * way > least) return [];
      const points = polygons.flat();
      const reach = (axis: AxisIndex) => points.map((point) => point[axis] / UNITS_PER_MM);
      const [a, b] = [reach(along), reach(beside)];
      return [{ by, from: Math.min(...a), to: Math.max(...a), low: Math.min(...b), high: Math.max(...b) }];
    });
  });
  return along === 2 ? joined : [...joined, ...liesOn(part, along, beside, design)];
}

/** What counts as touching, mm. */
export const SLACK = TOLERANCE / UNITS_PER_MM;

const onPins = ({ arrangements }: Joint) =>
  (arrangements[0]?.fasteners ?? []).filter(({ kind }) => kind === "shelf pin");

/** What lies on pins is held along the line through those at each end. */
function pinned(joint: Joint, by: string, along: AxisIndex, beside: AxisIndex): Support {
  const reach = (axis: AxisIndex) => onPins(joint).map(({ head }) => toNumber(head.at[axis]) / UNITS_PER_MM);
  const [a, b] = [reach(along), reach(beside)];
  return { by, from: Math.min(...a), to: Math.max(...a), low: Math.min(...b), high: Math.max(...b) };
}

/** The longest gap between supports; null where fewer than two places hold it, zero long where one holds it throughout. */
function longest(supports: readonly Support[], [low, high]: readonly [number, number]): Span | null {
  const sorted = [...supports].sort((a, b) => a.from - b.from || a.to - b.to || (a.by < b.by ? -1 : 1));
  const [first, ...rest] = sorted;
  if (first === undefined) return null;
  let reached = first.to;
  let gap = { from: first.to, to: first.to };
  for (const { from, to } of rest) {
    if (from - reached > gap.to - gap.from) gap = { from: reached, to: from };
    reached = Math.max(reached, to);
  }
  const held = gap.to - gap.from > SLACK || reached - first.from > 0.8 * (high - low);
  return held ? { ...gap, supports: sorted } : null;
}

/** How a part reaches from support to support in a horizontal direction, whatever holds it. Null where fewer than two places do. */
export const spanOf = (part: Part, along: AxisIndex, design: Design): Span | null =>
  longest(rests(part, along, other(along), design), bodyOf(part, along));

/**
 * The same for a strip along the middle of a board that lies flat. The short way of a board only counts what holds it along nearly its
 * whole length: one bearer under the middle does not carry the ends.
 */
export function spanOfMiddle(part: Part, along: AxisIndex, design: Design): Span | null {
  const [low, high] = bodyOf(part, other(along));
  const [start, end] = bodyOf(part, along);
  const middle = (low + high) / 2;
  const least = high - low > end - start ? 0.8 * (high - low) : 0;
  const under = ({ low: from, high: to }: Support): boolean =>
    from <= middle + SLACK && to >= middle - SLACK && to - from >= least;
  return longest(rests(part, along, other(along), design).filter(under), bodyOf(part, along));
}

/** And for its two edges, the worse of which counts: of a board that is held at its corners. */
export function spanOfEdges(part: Part, along: AxisIndex, design: Design): Span | null {
  const [low, high] = bodyOf(part, other(along));
  const all = rests(part, along, other(along), design);
  const edge = (way: 1 | -1): Span | null =>
    longest(
      all.filter((rest) => (rest.low + rest.high - low - high) * way > 0),
      bodyOf(part, along),
    );
  const [near, far] = [edge(-1), edge(1)];
  if (near === null || far === null) return null;
  return near.to - near.from >= far.to - far.from ? near : far;
}

const other = (along: AxisIndex): 0 | 1 => (along === 0 ? 1 : 0);
