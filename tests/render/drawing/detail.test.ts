import { describe, expect, test } from "vitest";
import { stepPicture } from "../../../src/render/drawing/index.ts";
import { Plate } from "../../../src/render/drawing/plate.ts";
import type { Detail } from "../../../src/render/drawing/step/detail.ts";
import { enlarged } from "../../../src/render/drawing/step/enlarge.ts";
import { BLACK, TINT } from "../../../src/render/palette.ts";
import { built } from "../../examples/compiled.ts";
import { bookcase, pen } from "./fixture.ts";
import { clashes, outside, paths, pointsOf, words } from "./look.ts";

describe("what is drawn larger", () => {
  const detail: Detail = { method: "dado", at: [50, 50], centre: [150, 60], radius: 40, times: 4 };
  const plate = () => new Plate({ x: 0, y: 0, width: 240, height: 180 });
  const stroke = { width: 1, ink: BLACK };

  test("a line through the small circle goes across the large one, what misses it is left out", () => {
    const lines = [
      [
        [0, 50],
        [100, 50],
      ],
      [
        [0, 61],
        [100, 61],
      ],
    ] as const;
    const items = enlarged(detail, { fills: [], strokes: [{ lines, stroke }] }, plate(), pen);
    const [line] = paths(items).filter((item) => item.stroke === stroke);
    // Half a chord through the middle is the radius; 61 is 11 below the middle, farther than 40 / 4.
    expect(line?.steps).toEqual([
      { to: "move", x: 110, y: 60 },
      { to: "line", x: 190, y: 60 },
    ]);
    expect(words(items)).toEqual(["Detail, 4 × as large"]);
  });

  test("faces are cut at the circle", () => {
    const square = [
      [0, 0],
      [50, 0],
      [50, 100],
      [0, 100],
    ] as const;
    const fills = [{ ink: TINT.light, polygons: [square] }];
    const items = enlarged(detail, { fills, strokes: [] }, plate(), pen);
    const [face] = paths(items).filter(({ fill }) => fill === TINT.light);
    const spots = face ? pointsOf(face) : [];
    expect(spots.length).toBeGreaterThan(10);
    for (const [x, y] of spots) {
      expect(x).toBeLessThanOrEqual(150.001);
      expect(Math.hypot(x - 150, y - 60)).toBeLessThan(40.5);
    }
  });
});

describe("the parts of a joint that is drawn larger", () => {
  const detail: Detail = { method: "dado", at: [50, 50], centre: [150, 60], radius: 40, times: 4 };
  const square = (left: number, right: number) => [
    [left, 40],
    [right, 40],
    [right, 60],
    [left, 60],
  ];
  const marked = (right: number) =>
    words(
      enlarged(
        detail,
        { fills: [], strokes: [], named: [{ mark: "B", polygons: [square(45, right)] as never }] },
        new Plate({ x: 0, y: 0, width: 240, height: 180 }),
        pen,
      ),
    );

  test("have their marks on them, where there is room", () => {
    expect(marked(55)).toContain("B");
    // A strip 0.2 wide is 0.8 in a circle four times as large: no letter goes in.
    expect(marked(45.2)).not.toContain("B");
  });

  test("are both seen there: what is cut on one alone explains nothing", () => {
    const build = built("old-plans/piano-bench");
    const close = (title: string) => {
      const step = build.steps.find((each) => each.title.startsWith(title));
      if (!step) throw new Error(title);
      return stepPicture(build, step, { frame: { x: 0, y: 0, width: 243, height: 180 }, pen }).items;
    };
    const isDetail = (word: string): boolean => word.startsWith("Detail");
    // The mortises of both posts look away from the reader; those of the legs below towards them.
    expect(words(close("Glue in the post (A)")).some(isDetail)).toBe(false);
    const shown = words(close("Glue in two side rails (D)"));
    expect(shown.some(isDetail)).toBe(true);
    expect(shown.filter((word) => word === "A").length).toBe(2);
  });
});

describe("a joint in a step's picture", () => {
  const build = bookcase();
  const frame = { x: 0, y: 0, width: 240, height: 180 };
  const pictures = (told: ReadonlySet<string>) =>
    build.steps.map((step) => stepPicture(build, { ...step, kind: "join" }, { frame, pen, told }));

  test("is drawn larger once for each method, inside the frame and clear of the rest", () => {
    const close = pictures(new Set()).filter((picture) => picture.close !== null);
    expect(close.length).toBeGreaterThan(0);
    for (const { items, alt } of close) {
      expect(outside(items, frame)).toEqual([]);
      expect(clashes(items)).toEqual([]);
      expect(alt).toContain("times larger");
      expect(words(items).some((word) => word.endsWith("× as large"))).toBe(true);
    }
    const told = new Set(close.flatMap((picture) => picture.close ?? []));
    expect(pictures(told).every((picture) => picture.close === null)).toBe(true);
  });
});
