import { describe, expect, test } from "vitest";
import {
  FRONT,
  hiddenLines,
  ISOMETRIC,
  ISOMETRIC_LEFT,
  picturePoint,
  RIGHT,
  realEdges,
  TOP,
  type View,
  viewFrom,
} from "../../../src/geometry/picture/index.ts";
import type { PictureItem, Point2, SceneItem, Vec } from "../../../src/geometry/types.ts";
import { blocked } from "./sampler.ts";
import { bookcase, box, INCH, numbers, randomBoxes } from "./scenes.ts";

const all = (picture: readonly PictureItem[]) => picture.flatMap((p) => p.visible);
const mid = (a: Vec, b: Vec, t: number): Vec => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** Distance of a point from a run. */
function off([a, b]: readonly [Point2, Point2], p: Point2): number {
  const [u, v] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * u + (p[1] - a[1]) * v) / (u * u + v * v)));
  return Math.hypot(p[0] - a[0] - t * u, p[1] - a[1] - t * v);
}

/** Whether the point is seen when it moves by `by` units to the four corners around it: off every seam and edge along an axis. */
function looks(items: readonly SceneItem[], view: View, p: Vec, by: number): boolean[] {
  const [r, u] = [by / Math.hypot(...view.right), by / Math.hypot(...view.up)];
  return [
    [r, u],
    [-r, u],
    [r, -u],
    [-r, -u],
  ].map(([a = 0, b = 0]) => {
    // Start 3 µm nearer to the eye, so that the wood on which the line lies does not count.
    const moved = (i: 0 | 1 | 2) => p[i] + a * view.right[i] + b * view.up[i] + 50 * view.towards[i];
    return !blocked(items, [moved(0), moved(1), moved(2)], view.towards, 8);
  });
}

/** Ink that should not be there, and honest lines without ink, of `count` points each. */
function judge(
  items: readonly SceneItem[],
  view: View,
  count: number,
  seed: number,
): { strays: number; missing: number } {
  const runs = all(hiddenLines(items, view));
  const edges = items.flatMap(({ solid }) => realEdges(solid));
  const next = numbers(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
  let [strays, missing] = [0, 0];
  for (let i = 0; i < count; i++) {
    const run = pick(runs);
    const t = 0.02 + 0.96 * next();
    const p: Point2 = [run[0][0] + (run[1][0] - run[0][0]) * t, run[0][1] + (run[1][1] - run[0][1]) * t];
    const seen = edges.some(({ from, to }) => {
      const [a, b] = [picturePoint(view, from), picturePoint(view, to)];
      if (Math.hypot(b[0] - a[0], b[1] - a[1]) < 200 || off([a, b], p) > 200) return false;
      const s =
        ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / ((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);
      return looks(items, view, mid(from, to, s), 100).some(Boolean);
    });
    if (!seen) strays++;
    const edge = pick(edges);
    const q = mid(edge.from, edge.to, next());
    // Seen from all sides: neither on an outline of something nearer nor behind anything.
    if (looks(items, view, q, 100).every(Boolean) && !runs.some((r) => off(r, picturePoint(view, q)) < 200)) missing++;
  }
  return { strays, missing };
}

const axisViews = [FRONT, RIGHT, TOP];

describe("hidden lines against rays", () => {
  const scenes: [string, readonly SceneItem[]][] = [
    ["grooved boxes", randomBoxes(27, 7)],
    ["other grooved boxes", randomBoxes(30, 23)],
    ["a bookcase", bookcase("case")],
    ["two bookcases", [...bookcase("a"), ...bookcase("b", 30, 0)]],
  ];
  const oblique = viewFrom("oblique", [3, -2, 1]);
  for (const [name, items] of scenes)
    for (const view of [ISOMETRIC, ISOMETRIC_LEFT, oblique, ...axisViews])
      test(`${name}, ${view.name}`, () => {
        expect(judge(items, view, 500, 99)).toEqual({ strays: 0, missing: 0 });
      });
});

describe("views along an axis, where lines lie in the seams", () => {
  const orders = [
    [0, 1, 2, 3, 4, 5],
    [5, 4, 3, 2, 1, 0],
    [2, 3, 4, 5, 0, 1],
  ];

  test("the side view of a bookcase with dados shows no shelf", () => {
    for (const order of orders)
      for (const { id, visible } of hiddenLines(bookcase("case", 0, 0, order), RIGHT))
        if (id.includes("shelf") || id.includes("divider") || id.includes("left"))
          expect([id, visible]).toEqual([id, []]);
  });

  test("seen from the side, the side is its outline with the toe notch and nothing else", () => {
    const { visible } = hiddenLines(bookcase("case"), RIGHT).find((p) => p.id === "case.right") ?? { visible: [] };
    const ink = visible.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0) / INCH;
    // 11 × 48 in around: a notch out of a corner adds nothing to the way around.
    expect(ink).toBeCloseTo(2 * (11 + 48), 6);
  });

  test.each([...axisViews, ISOMETRIC])("the order of the cuts does not change the picture ($name)", (view) => {
    const [first, ...others] = orders.map((order) =>
      hiddenLines(bookcase("case", 0, 0, order), view, { hidden: true }),
    );
    for (const other of others) expect(other).toEqual(first);
  });
});

describe("what a picture consists of", () => {
  const cube: SceneItem = { id: "cube", solid: box([0, 0, 0, 1, 1, 1]) };

  test("a cube seen isometrically: nine edges, three hidden, all of length √(2/3)", () => {
    const [picture] = hiddenLines([cube], ISOMETRIC, { hidden: true });
    expect(picture?.visible).toHaveLength(9);
    expect(picture?.hidden).toHaveLength(3);
    // To 1 µm: the back edges end where the shadow of the front ones begins.
    for (const [a, b] of [...(picture?.visible ?? []), ...(picture?.hidden ?? [])])
      expect(Math.hypot(b[0] - a[0], b[1] - a[1]) / INCH).toBeCloseTo(Math.sqrt(2 / 3), 4);
  });

  test("seen square on, lengths are kept and coincident edges drawn once", () => {
    for (const view of axisViews) {
      const [picture] = hiddenLines([cube], view, { hidden: true });
      expect(picture?.hidden).toEqual([]);
      expect(picture?.visible).toHaveLength(4);
      for (const [a, b] of picture?.visible ?? []) expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBe(INCH);
    }
  });

  test("pictures stand as a drawing shows them", () => {
    const p: Vec = [1, 2, 3];
    expect(picturePoint(FRONT, p)).toEqual([1, 3]);
    expect(picturePoint(RIGHT, p)).toEqual([2, 3]);
    expect(picturePoint(TOP, p)).toEqual([1, 2]);
    const [u, v] = picturePoint(ISOMETRIC, [0, 0, 1]);
    expect(u).toBe(0);
    expect(v).toBeGreaterThan(0);
  });

  test("of coincident edges the first item's is drawn", () => {
    const other = { id: "other", solid: box([0, 2, 0, 1, 3, 1]) };
    const [near, far] = hiddenLines([cube, other], FRONT);
    expect([near?.visible.length, far?.visible.length]).toEqual([4, 0]);
  });

  test("a shifted item is hidden and hides where it is drawn", () => {
    const wall: SceneItem = { id: "wall", solid: box([-1, 2, -1, 2, 3, 2]) };
    const [inFront] = hiddenLines([cube, wall], FRONT);
    const [behind] = hiddenLines([{ ...cube, shift: [0, 4 * INCH, 0] }, wall], FRONT);
    expect([inFront?.visible.length, behind?.visible.length]).toEqual([4, 0]);
  });

  test("runs below the shortest are dropped", () => {
    const [picture] = hiddenLines([cube], FRONT, { shortest: 2 * INCH });
    expect(picture?.visible).toEqual([]);
  });
});
