import { describe, expect, test } from "vitest";
import { takeApart, toFill } from "../../../src/render/drawing/exploded/take-apart.ts";
import { heightOf, scaleInto, widthOf } from "../../../src/render/drawing/fit.ts";
import { explodedView } from "../../../src/render/drawing/index.ts";
import { crosses, type Segment } from "../../../src/render/drawing/plate.ts";
import { NARROW } from "../../../src/render/drawing/strokes.ts";
import { best } from "../../../src/render/pages/taken-apart.ts";
import { part } from "./fixture/making.ts";
import { bench, bookcase, pen } from "./fixture.ts";
import { paths, pointsOf, segmentsOf, words } from "./look.ts";

const frame = { x: 0, y: 0, width: 510, height: 560 };

describe.each([
  ["a bench", bench()],
  ["a bookcase", bookcase()],
])("%s taken apart", (_, build) => {
  const { items } = explodedView(build, { frame, pen });
  const rings = paths(items)
    .filter(({ steps, stroke }) => stroke && steps.filter(({ to }) => to === "curve").length === 4)
    .map(pointsOf);
  const leaders = paths(items)
    .filter(({ stroke, steps }) => stroke?.width === NARROW.width && !stroke.dash && steps.length === 2)
    .flatMap(segmentsOf)
    .map(
      ([x1, y1, x2, y2]): Segment => [
        [x1, y1],
        [x2, y2],
      ],
    );

  test("leaders do not cross", () => {
    expect(leaders.length).toBeGreaterThan(4);
    leaders.forEach((a, i) => {
      for (const b of leaders.slice(i + 1)) expect(crosses(a, b)).toBe(false);
    });
  });

  test("leaders are short: none longer than a quarter of the page is wide", () => {
    for (const [[x1, y1], [x2, y2]] of leaders) expect(Math.hypot(x2 - x1, y2 - y1)).toBeLessThan(frame.width / 4);
  });

  test("no mark stands in the middle of a part that is painted below it", () => {
    const faces = paths(items).filter(
      ({ fill, stroke, steps }) => fill && !stroke && !steps.some(({ to }) => to === "curve"),
    );
    const corners = faces.flatMap(({ steps }) => {
      const polygons: (readonly [number, number])[][] = [];
      for (const step of steps) {
        if (step.to === "move") polygons.push([]);
        if (step.to !== "close") polygons.at(-1)?.push([step.x, step.y]);
      }
      return polygons;
    });
    const on = rings.filter((ring) => {
      const xs = ring.map(([x]) => x);
      const ys = ring.map(([, y]) => y);
      const [x, y] = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
      return corners.some((polygon) => holds(polygon, x, y));
    });
    expect(rings.length).toBeGreaterThan(4);
    expect(on.length).toBeLessThanOrEqual(rings.length / 5);
  });

  test("gaps grow where the page has room, and the picture hardly shrinks for it", () => {
    const taken = takeApart(build);
    if (!taken) throw new Error("there is wood");
    for (const room of [frame, { ...frame, height: 900 }, { ...frame, width: 900, height: 400 }]) {
      const filled = toFill(taken, room);
      expect(scaleInto(filled.extent, room)).toBeGreaterThanOrEqual(0.97 * scaleInto(taken.extent, room));
      expect(filled.shown()).toBeGreaterThanOrEqual(taken.shown() - 1e-6);
    }
  });
});

test("of parts alike in a picture with many marks one is pointed at, wherever they are", () => {
  // Pairs of blocks on a wide field, 50 in apart.
  const field = (pairs: number) =>
    Array.from({ length: 2 * pairs }, (_, i) =>
      part(`block.${i}`, `M${Math.floor(i / 2)}`, "Block", "board", { body: [i * 50, 0, 0, i * 50 + 8, 8, 8] }),
    );
  const marked = (pairs: number): readonly string[] => {
    const build = { ...bookcase(), parts: field(pairs), joints: [], steps: [] };
    return words(explodedView(build, { frame: { ...frame, width: 4000, height: 4000 }, pen }).items);
  };
  expect(marked(2).toSorted()).toEqual(["M0", "M0", "M1", "M1"]);
  expect(marked(8).toSorted()).toEqual(Array.from({ length: 8 }, (_, i) => `M${i} × 2`));
});

test("a low bench is pulled apart upwards where the page is high", () => {
  const taken = takeApart(bench());
  if (!taken) throw new Error("there is wood");
  const { extent } = toFill(taken, { width: 510, height: 700 });
  expect(heightOf(extent) / widthOf(extent)).toBeGreaterThan(1.1 * (heightOf(taken.extent) / widthOf(taken.extent)));
});

function holds(polygon: readonly (readonly [number, number])[], x: number, y: number): boolean {
  const sides = polygon.map(([x1, y1], i) => {
    const [x2, y2] = polygon[(i + 1) % polygon.length] ?? [x1, y1];
    return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
  });
  return sides.every((side) => side > 0) || sides.every((side) => side < 0);
}

describe("what stands, and its doors and drawers", () => {
  const page = { width: 510, height: 500 };
  test("doors stand beside a tall case, a drawer below a low table", () => {
    const tall = best(
      { wide: 60, high: 90 },
      [
        { wide: 25, high: 60 },
        { wide: 25, high: 60 },
      ],
      page,
      20,
    );
    expect(tall.frames.map(({ x }) => x >= tall.standing.width)).toEqual([true, true]);
    const low = best({ wide: 100, high: 60 }, [{ wide: 80, high: 25 }], page, 20);
    expect(low.frames.map(({ y }) => y >= low.standing.height)).toEqual([true]);
  });

  test("places lie on the page and not on one another", () => {
    for (const count of [1, 2, 3, 4, 7]) {
      const others = Array.from({ length: count }, () => ({ wide: 40, high: 30 }));
      const { standing, frames } = best({ wide: 80, high: 80 }, others, page, 20);
      const all = [standing, ...frames];
      for (const [i, a] of all.entries()) {
        expect(a.x + a.width).toBeLessThanOrEqual(page.width + 1e-6);
        expect(a.y + a.height).toBeLessThanOrEqual(page.height + 1e-6);
        for (const b of all.slice(i + 1))
          expect(
            a.x + a.width <= b.x + 1e-6 ||
              b.x + b.width <= a.x + 1e-6 ||
              a.y + a.height <= b.y + 1e-6 ||
              b.y + b.height <= a.y + 1e-6,
          ).toBe(true);
      }
    }
  });
});
