/** Plain shapes as items. */
import type { Ink, Item, PathStep, Stroke } from "./document.ts";

export interface Paint {
  readonly stroke?: Stroke;
  readonly fill?: Ink;
}

/** A polygon through the points, closed. */
export const polygon = (points: readonly (readonly [number, number])[], paint: Paint): Item => ({
  kind: "path",
  steps: [...points.map(([x, y], i): PathStep => ({ to: i === 0 ? "move" : "line", x, y })), { to: "close" }],
  ...paint,
});

export const rectangle = (x: number, y: number, width: number, height: number, paint: Paint): Item =>
  polygon(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    paint,
  );

export const line = (x1: number, y1: number, x2: number, y2: number, stroke: Stroke): Item => ({
  kind: "path",
  steps: [
    { to: "move", x: x1, y: y1 },
    { to: "line", x: x2, y: y2 },
  ],
  stroke,
});

/** Four curves; off a true circle by less than 0.03 % of the radius. */
export function circle(x: number, y: number, r: number, paint: Paint): Item {
  const k = r * 0.5523;
  const quarter = (x1: number, y1: number, x2: number, y2: number, toX: number, toY: number): PathStep => ({
    to: "curve",
    x1: x + x1,
    y1: y + y1,
    x2: x + x2,
    y2: y + y2,
    x: x + toX,
    y: y + toY,
  });
  const steps: PathStep[] = [
    { to: "move", x: x + r, y },
    quarter(r, k, k, r, 0, r),
    quarter(-k, r, -r, k, -r, 0),
    quarter(-r, -k, -k, -r, 0, -r),
    quarter(k, -r, r, -k, r, 0),
    { to: "close" },
  ];
  return { kind: "path", steps, ...paint };
}

type Place = readonly [number, number];

/** The outline of a slot with round ends, `r` around the line from one middle to the other; these must not be in one place. */
export function slot([ax, ay]: Place, [bx, by]: Place, r: number, paint: Paint): Item {
  const [dx, dy] = [bx - ax, by - ay];
  const long = Math.sqrt(dx * dx + dy * dy);
  const along: Place = [(dx / long) * r, (dy / long) * r];
  const aside: Place = [-along[1], along[0]];
  const back = (d: Place): Place => [-d[0], -d[1]];
  const k = 0.5523;
  /** A quarter around a middle, from one of its sides to the next. */
  const quarter = (x: number, y: number, from: Place, to: Place): PathStep => ({
    to: "curve",
    x1: x + from[0] + k * to[0],
    y1: y + from[1] + k * to[1],
    x2: x + to[0] + k * from[0],
    y2: y + to[1] + k * from[1],
    x: x + to[0],
    y: y + to[1],
  });
  const steps: PathStep[] = [
    { to: "move", x: ax + aside[0], y: ay + aside[1] },
    { to: "line", x: bx + aside[0], y: by + aside[1] },
    quarter(bx, by, aside, along),
    quarter(bx, by, along, back(aside)),
    { to: "line", x: ax - aside[0], y: ay - aside[1] },
    quarter(ax, ay, back(aside), back(along)),
    quarter(ax, ay, back(along), aside),
    { to: "close" },
  ];
  return { kind: "path", steps, ...paint };
}

/** Furniture of the page that says nothing to somebody who listens. */
export const decoration = (...items: readonly Item[]): Item => ({ kind: "group", role: "decoration", items });

export type Leaf = Extract<Item, { kind: "path" | "text" }>;

/** Everything that is painted, whatever group it stands in. */
export function leaves(items: readonly Item[]): Leaf[] {
  return items.flatMap((item) => {
    if (item.kind === "group") return leaves(item.items);
    return item.kind === "path" || item.kind === "text" ? [item] : [];
  });
}

/** Left, top, right and bottom of what is painted, without the width of lines. */
export function bounds(parts: readonly Leaf[]): [number, number, number, number] {
  const xs: number[] = [];
  const ys: number[] = [];
  const reach = (x: number, y: number): void => {
    xs.push(x);
    ys.push(y);
  };
  for (const part of parts) {
    if (part.kind === "text") {
      reach(part.x, part.y - part.size);
      reach(part.x + part.width, part.y);
    } else for (const step of part.steps) if (step.to !== "close") reach(step.x, step.y);
  }
  const low = (list: readonly number[]): number => list.reduce((a, b) => Math.min(a, b), Infinity);
  const high = (list: readonly number[]): number => list.reduce((a, b) => Math.max(a, b), -Infinity);
  return [low(xs), low(ys), high(xs), high(ys)];
}

/** The items shifted to the right and down. */
export function moved(items: readonly Item[], dx: number, dy: number): Item[] {
  return items.map((item): Item => {
    if (item.kind === "group") return { ...item, items: moved(item.items, dx, dy) };
    if (item.kind === "anchor") return { ...item, y: item.y + dy };
    if (item.kind !== "path") return { ...item, x: item.x + dx, y: item.y + dy };
    return { ...item, steps: item.steps.map((step) => movedStep(step, dx, dy)) };
  });
}

function movedStep(step: PathStep, dx: number, dy: number): PathStep {
  if (step.to === "close") return step;
  const end = { x: step.x + dx, y: step.y + dy };
  if (step.to !== "curve") return { ...step, ...end };
  return { ...step, ...end, x1: step.x1 + dx, y1: step.y1 + dy, x2: step.x2 + dx, y2: step.y2 + dy };
}
