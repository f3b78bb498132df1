/** The outline of what is drawn in several polygons side by side. */
import type { Spot } from "./drawing.ts";
import { ahead, heading } from "./ink.ts";
import type { Segment } from "./plate.ts";

type Polygon = readonly Spot[];

/** The sides of polygons that no other of them has on its own side. */
export function outlineOf(polygons: readonly Polygon[]): readonly Segment[] {
  const sides = polygons.flatMap((polygon) =>
    polygon.map((p, i): Segment => [p, polygon[(i + 1) % polygon.length] ?? p]),
  );
  return sides.flatMap((side) =>
    apartFrom(
      side,
      sides.filter((other) => other !== side),
    ),
  );
}

/** What of a segment no other covers that runs in its line. */
function apartFrom(side: Segment, others: readonly Segment[]): readonly Segment[] {
  const { along, distance } = heading(...side);
  const place = ([x, y]: Spot): readonly [number, number] => {
    const [dx, dy] = [x - side[0][0], y - side[0][1]];
    return [dx * along[0] + dy * along[1], dx * along[1] - dy * along[0]];
  };
  let rest: readonly (readonly [number, number])[] = [[0, distance]];
  for (const other of others) {
    const [p, q] = [place(other[0]), place(other[1])];
    if (Math.abs(p[1]) > NEAR || Math.abs(q[1]) > NEAR) continue;
    const [low, high] = [Math.min(p[0], q[0]), Math.max(p[0], q[0])];
    rest = rest.flatMap(([a, b]) =>
      high <= a || low >= b
        ? [[a, b] as const]
        : [[a, low] as const, [high, b] as const].filter(([c, d]) => d - c > NEAR),
    );
  }
  return rest.map(([a, b]): Segment => [ahead(side[0], along, a), ahead(side[0], along, b)]);
}

const NEAR = 0.01;
