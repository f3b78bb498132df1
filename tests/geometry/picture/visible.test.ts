import { describe, expect, test } from "vitest";
import {
  FRONT,
  ISOMETRIC,
  picturePoint,
  type View,
  viewFrom,
  visibleFaces,
} from "../../../src/geometry/picture/index.ts";
import type { Point2, SceneItem, Vec } from "../../../src/geometry/types.ts";
import { solveText, textOf } from "../../examples/compiled.ts";
import { firstSeen } from "./sampler.ts";
import { bookcase, box, INCH, numbers, randomBoxes } from "./scenes.ts";

const holds = (polygon: readonly Point2[], [u, v]: Point2): boolean => {
  const signs = polygon.map(([a, b], i) => {
    const [c, d] = polygon[(i + 1) % polygon.length] as Point2;
    return Math.sign((c - a) * (v - b) - (d - b) * (u - a));
  });
  return signs.every((s) => s > 0) || signs.every((s) => s < 0);
};
const area = (polygon: readonly Point2[]): number =>
  Math.abs(
    polygon.reduce((sum, [a, b], i) => {
      const [c, d] = polygon[(i + 1) % polygon.length] as Point2;
      return sum + a * d - b * c;
    }, 0),
  ) / 2;

/** The place in space, on the plane of view through the origin, of a point of the picture. */
const lift = (view: View, [u, v]: Point2): Vec =>
  [0, 1, 2].map(
    (i) => ((view.right[i] ?? 0) * u) / Math.hypot(...view.right) + ((view.up[i] ?? 0) * v) / Math.hypot(...view.up),
  ) as unknown as Vec;

describe("visible faces against rays", () => {
  const scenes: [string, readonly SceneItem[]][] = [
    ["grooved boxes", randomBoxes(27, 3)],
    ["a bookcase", bookcase("case")],
  ];
  for (const [name, items] of scenes)
    for (const view of [ISOMETRIC, FRONT, viewFrom("oblique", [-2, -3, 1])])
      test(`${name}, ${view.name}: what a ray meets first is what is filled there, once`, () => {
        const faces = visibleFaces(items, view);
        const corners = items.flatMap(({ solid }) =>
          solid.pieces.flatMap((p) => p.vertices.map((q) => picturePoint(view, [q.x, q.y, q.z]))),
        );
        const [us, vs] = [corners.map((p) => p[0]), corners.map((p) => p[1])];
        const [u0, u1, v0, v1] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
        const next = numbers(5);
        const counts = new Map<string | null, number>();
        const rays = 3000;
        for (let i = 0; i < rays; i++) {
          const p: Point2 = [u0 + (u1 - u0) * next(), v0 + (v1 - v0) * next()];
          const first = firstSeen(items, lift(view, p), view.towards);
          counts.set(first, (counts.get(first) ?? 0) + 1);
          const filled = faces.flatMap((f) => f.polygons.filter((q) => holds(q, p)).map(() => f.id));
          expect(filled).toEqual(first === null ? [] : [first]);
        }
        // Areas within four standard deviations of what the rays count.
        for (const { id } of items) {
          const share =
            faces.filter((f) => f.id === id).reduce((s, f) => s + f.polygons.reduce((t, q) => t + area(q), 0), 0) /
            ((u1 - u0) * (v1 - v0));
          const hits = (counts.get(id) ?? 0) / rays;
          expect(Math.abs(share - hits)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / rays) + 1e-9);
        }
      });
});

test("a cube seen isometrically: three faces, each a square foreshortened to 1/√3", () => {
  const faces = visibleFaces([{ id: "cube", solid: box([0, 0, 0, 1, 1, 1]) }], ISOMETRIC);
  expect(faces.map((f) => f.normal)).toEqual([
    [0, -1, 0],
    [0, 0, 1],
    [1, 0, 0],
  ]);
  for (const f of faces) expect(area(f.polygons.flat()) / INCH ** 2).toBeCloseTo(1 / Math.sqrt(3), 12);
});

/** Of a convex polygon, across its longest side. */
const widthOf = (polygon: readonly Point2[]): number => {
  const longest = Math.max(
    ...polygon.map((p, i) => {
      const q = polygon[(i + 1) % polygon.length] as Point2;
      return Math.hypot(p[0] - q[0], p[1] - q[1]);
    }),
  );
  return area(polygon) / longest;
};

// What is cut is made of pieces; between the shadows of two that touch nothing of a third is seen: in print that is a line where there is none.
test("no face is seen through the seam between two pieces of a part", () => {
  const { build } = solveText(textOf("manuals-bookcase"));
  const items = (build?.design.parts ?? []).map(({ id, solid }) => ({ id, solid }));
  const widths = visibleFaces(items, ISOMETRIC).flatMap(({ polygons }) => polygons.map(widthOf));
  expect(widths.length).toBeGreaterThan(50);
  // 1/100 mm.
  expect(Math.min(...widths)).toBeGreaterThan(160);
});
