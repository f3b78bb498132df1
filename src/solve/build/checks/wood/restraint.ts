/** What holds a board across its grain, and by how much the wood there would move. Millimetres. */
import { type AxisIndex, axisAt, INDICES } from "../../../design/space.ts";
import { changeOfWidth } from "../../../design/use/change-of-width.ts";
import type { Change } from "../../../design/use/seasons.ts";
import type { Part, Stock } from "../../../design.ts";
import type { Checked } from "../check.ts";
import { type Anchor, anchorsAlong } from "./anchors.ts";

/** A place of a board, and the part that holds it there. */
export interface Place {
  readonly to: string;
  readonly at: number;
}

/** A place at which the board is fixed. */
export interface Hold extends Place {
  readonly anchor: Anchor;
}

/** What joints take without harm, 1/16 in. Common practice, no source. */
export const TAKEN = 25.4 / 16;

/** All parts of a piece and what fixes them to each other, along one axis. */
export interface Frame {
  readonly axis: AxisIndex;
  readonly anchors: readonly Anchor[];
  readonly part: (id: string) => Part;
  readonly stock: (part: Part) => Stock;
}

/** By the index of its axis. */
export function framesOf({ design, ...of }: Pick<Checked, "design" | "fasteners" | "holes">): readonly Frame[] {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  const fasteners = byKey(of.fasteners, ({ joint }) => joint);
  const holes = byKey(of.holes, (hole) => hole.for);
  return INDICES.map((axis) => ({
    axis,
    anchors: anchorsAlong(axis, design.joints, fasteners, holes),
    part: (id) => parts.get(id) as Part,
    stock: (part) => stocks.get(part.stock) as Stock,
  }));
}

function byKey<T>(items: readonly T[], key: (item: T) => string | null): Map<string, T[]> {
  const map = new Map<string, T[]>();
  for (const item of items) {
    const name = key(item);
    if (name !== null) map.set(name, [...(map.get(name) ?? []), item]);
  }
  return map;
}

/** The share by which a part changes along a direction: nothing along its grain, and nothing in a sheet. */
export function strain(part: Part, stock: Stock, axis: AxisIndex, { from, to }: Change): number {
  const { movement } = stock;
  if (movement === undefined || part.axes.length === axisAt(axis)) return 0;
  const wide = changeOfWidth(movement, from, to);
  return part.axes.width === axisAt(axis) ? wide : wide * (movement.thick / movement.wide);
}

/** Where a board is fixed: the first and last fastener of each joint, or the ends of its glue. */
export const holdsOf = (board: Part, { anchors }: Frame): readonly Hold[] =>
  anchors.flatMap((anchor) => {
    const [a, b] = anchor.joint.parts;
    if (a !== board.id && b !== board.id) return [];
    const to = a === board.id ? b : a;
    const ends = anchor.high > anchor.low ? [anchor.low, anchor.high] : [anchor.low];
    return ends.map((at) => ({ anchor, to, at }));
  });

/**
 * How far what holds `first` and each other place of a board would move itself, at least: the way through other parts and their
 * joints that moves least is the one that holds. Infinite where there is no such way.
 */
export function frameMovement(board: Part, first: Place, frame: Frame, change: Change): (second: Place) => number {
  const { axis, part, stock } = frame;
  const give = (id: string, from: number, to: number): number =>
    Math.abs(to - from) * Math.abs(strain(part(id), stock(part(id)), axis, change));
  const rows = rowsOf(board, frame.anchors);
  const cost = new Map<Anchor, number>();
  const open = new Map<Anchor, number>();
  const offer = (step: Anchor | undefined, at: number): void => {
    if (step === undefined || (cost.get(step) ?? Number.POSITIVE_INFINITY) <= at) return;
    cost.set(step, at);
    open.set(step, at);
  };
  for (const step of rows.get(first.to) ?? []) offer(step, give(first.to, first.at, middle(step)));
  while (open.size > 0) {
    const [here, at] = [...open].reduce((a, b) => (b[1] < a[1] ? b : a));
    open.delete(here);
    for (const id of here.joint.parts) {
      const row = rows.get(id) ?? [];
      const i = row.indexOf(here);
      // Beside it in the part's row: what lies further is reached from there.
      for (const step of [row[i - 1], row[i + 1]])
        if (step !== undefined) offer(step, at + give(id, middle(here), middle(step)));
    }
  }
  return (second) => {
    const direct = first.to === second.to ? give(first.to, first.at, second.at) : Number.POSITIVE_INFINITY;
    const ways = (rows.get(second.to) ?? []).map(
      (step) => (cost.get(step) ?? Number.POSITIVE_INFINITY) + give(second.to, middle(step), second.at),
    );
    return Math.min(direct, ...ways);
  };
}

const middle = ({ low, high }: Anchor): number => (low + high) / 2;

/** The joints of each part other than the board's, from one end of the part to the other. */
function rowsOf(board: Part, anchors: readonly Anchor[]): ReadonlyMap<string, readonly Anchor[]> {
  const rows = new Map<string, Anchor[]>();
  const steps = anchors.filter(({ joint, slack }) => slack === 0 && !joint.parts.includes(board.id));
  for (const step of [...steps].sort((a, b) => middle(a) - middle(b)))
    for (const id of step.joint.parts) rows.set(id, [...(rows.get(id) ?? []), step]);
  return rows;
}
