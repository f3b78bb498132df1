/** The room of a tool as a cloud of points, for tests that share no geometry with the program. */
import type { Tool } from "../../../src/solve/build.ts";
import type { Fastener } from "../../../src/solve/design.ts";
import { toMillimetres } from "../../../src/units/index.ts";

type V3 = readonly [number, number, number];

/** Diameter and length in mm, from the head on: the sizes that the build record promises. */
export const ROOMS: ReadonlyMap<Tool, readonly (readonly [number, number])[]> = new Map<
  Tool,
  readonly (readonly [number, number])[]
>([
  [
    "straight",
    [
      [8, 150],
      [60, 200],
    ],
  ],
  [
    "long",
    [
      [8, 300],
      [60, 200],
    ],
  ],
  [
    "angle",
    [
      [8, 25],
      [34, 60],
    ],
  ],
  [
    "stubby",
    [
      [8, 50],
      [30, 70],
    ],
  ],
  ["hammer", [[40, 120]]],
]);

/** Points in mm, on the surface of the tool's cylinders and inside, some 3 mm apart. The axis runs from head to point. */
export function pointsOf(fastener: Fastener, tool: Tool, axis: V3): readonly V3[] {
  const at = fastener.head.at.map(toMillimetres) as unknown as V3;
  const least = [0, 1, 2].toSorted((i, j) => Math.abs(axis[i] ?? 0) - Math.abs(axis[j] ?? 0))[0];
  const u = unit(cross(axis, [least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0]));
  const v = cross(axis, u);
  let start = 0;
  return (ROOMS.get(tool) ?? []).flatMap(([across, long]) => {
    const from = start;
    start += long;
    const points: V3[] = [];
    for (let back = 0; back <= long; back += 2.5)
      for (let ring = 0; ring <= 5; ring++)
        for (let k = 0; k < 24; k++) {
          const [r, turn] = [(ring / 5) * (across / 2), (k * Math.PI) / 12];
          const [a, b] = [r * Math.cos(turn), r * Math.sin(turn)];
          const point = at.map((x, i) => x - (from + back) * (axis[i] ?? 0) + a * (u[i] ?? 0) + b * (v[i] ?? 0));
          points.push(point as unknown as V3);
        }
    return points;
  });
}

const cross = (a: V3, b: V3): V3 => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
const unit = (a: V3): V3 => {
  const size = Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
  return [a[0] / size, a[1] / size, a[2] / size];
};
