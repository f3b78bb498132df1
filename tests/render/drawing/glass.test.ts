import { expect, test } from "vitest";
import { FRONT, ISOMETRIC, RIGHT, Stage } from "../../../src/geometry/picture/index.ts";
import { within } from "../../../src/render/drawing/glass.ts";
import { pieceView, threeViews } from "../../../src/render/drawing/index.ts";
import { openHoles } from "../../../src/render/drawing/open-holes.ts";
import { Sight } from "../../../src/render/drawing/sight.ts";
import { contrast, GLASS, TINT } from "../../../src/render/palette.ts";
import type { Build } from "../../../src/solve/build.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { inches } from "../../../src/units/index.ts";
import { at, part } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { paths } from "./look.ts";

const INCH = 406_400;
const frame = { x: 60, y: 64, width: 510, height: 640 };
const shelf = part("shelf", "A", "Shelf", "board", { body: [0, 4, 10, 20, 12, 11] });
const pane = part("pane", "B", "Pane", "pane", { body: [0, 1, 0, 20, 1.125, 24] });
const rail = part("rail", "C", "Rail", "board", { body: [0, 0, 0, 20, 0.75, 3] });
const parts = [shelf, pane, rail];

const built = (stock: "pane" | "sheet"): Build => {
  const { design, ...others } = bench();
  const glass = { name: "pane", form: stock };
  const made = { ...design, parts, stock: [...design.stock, glass] };
  return { ...others, design: made, parts, hardware: [], holes: [] } as unknown as Build;
};

test("what stands behind a pane is seen, and the pane is hidden by what stands before it", () => {
  const lengthOf = (clear: readonly string[], id: string) =>
    new Sight(parts, FRONT, new Set(clear))
      .lines()
      .filter((line) => line.id === id)
      .flatMap(({ visible }) => visible)
      .reduce((sum, [[a, b], [c, d]]) => sum + (Math.abs(a - c) + Math.abs(b - d)) / INCH, 0);
  expect(lengthOf([], "shelf")).toBe(0);
  // Its sides coincide with those of the pane, so that its long edges are 20 in each and its ends are drawn once.
  expect(lengthOf(["pane"], "shelf")).toBeGreaterThanOrEqual(40);
  const [face] = new Sight(parts, FRONT, new Set(["pane"])).panes();
  const heights = face?.polygons.flatMap((polygon) => polygon.map(([, v]) => v / INCH)) ?? [];
  expect(Math.min(...heights)).toBeCloseTo(3, 3);
  expect(Math.max(...heights)).toBeCloseTo(24, 3);
});

test("glass is tinted paler than wood and has its strokes, in pictures and in views", () => {
  const tinted = (build: Build) =>
    paths(pieceView(build, { frame, pen, view: ISOMETRIC, shaded: true }).items).filter(({ fill }) => fill === GLASS);
  expect(tinted(built("pane")).length).toBe(1);
  expect(tinted(built("sheet")).length).toBe(0);
  const count = (build: Build) =>
    paths(threeViews(build, { frame, pen }).items).filter(
      ({ stroke }) => stroke?.width === 0.5 && stroke.cap === "round",
    ).length;
  expect(count(built("pane"))).toBeGreaterThan(count(built("sheet")));
  for (const wood of Object.values(TINT)) expect(contrast([1, 1, 1], GLASS)).toBeLessThan(contrast([1, 1, 1], wood));
});

test("a stroke is cut off at the edge of what is seen, whichever way round its corners go", () => {
  const square = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ] as const;
  for (const corners of [square, [...square].reverse()])
    expect(
      within(
        [
          [-5, 5],
          [5, 5],
        ],
        corners,
      ),
    ).toEqual([
      [
        [0, 5],
        [5, 5],
      ],
    ]);
  expect(
    within(
      [
        [-5, 5],
        [-1, 5],
      ],
      square,
    ),
  ).toEqual([]);
});

const hole = (forWhat: string | null): Hole => ({
  ...{ part: "rail", kind: "cable", at: at(10, 0, 1.5), direction: [0, 1, 0], through: true, for: forWhat },
  stages: [{ diameter: inches(1), depth: inches(3, 4) }],
  keep: { edge: inches(0), end: inches(0), under: inches(0) },
  atBench: true,
});

test("the rim of a hole that stays open is seen from the front, round and an inch across; a fastener's is not drawn", () => {
  const rim = (view: typeof FRONT, of: Hole, items = [rail]) =>
    openHoles([of], new Stage(items, view), () => [0, 0, 0]);
  const points = rim(FRONT, hole(null)).flat();
  expect(points.length).toBeGreaterThan(0);
  for (const [u, v] of points) {
    const [x, y] = [u / INCH - 10, v / INCH - 1.5];
    expect(Math.sqrt(x * x + y * y)).toBeCloseTo(0.5, 3);
  }
  expect(rim(FRONT, hole("screw"))).toEqual([]);
  expect(rim(RIGHT, hole(null))).toEqual([]);
  const before = part("before", "D", "Board", "board", { body: [0, -2, 0, 20, -1, 3] });
  expect(rim(FRONT, hole(null), [rail, before])).toEqual([]);
});
