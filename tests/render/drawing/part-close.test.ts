import { describe, expect, test } from "vitest";
import { closeOn } from "../../../src/render/drawing/part/close.ts";
import { Plate, passes, type Segment } from "../../../src/render/drawing/plate.ts";
import { enlarged } from "../../../src/render/drawing/step/enlarge.ts";
import { freePlace, wordsAt } from "../../../src/render/drawing/step/free-place.ts";
import { pen } from "./fixture.ts";
import { outside, words } from "./look.ts";

const frame = { x: 0, y: 0, width: 240, height: 200 };
const ground = ([x, y]: readonly [number, number]) => (x > 40 && x < 160 && y > 20 && y < 80 ? 1 : 0);

/** The left end of a board with so many fingers, each so high and deep, in points. */
const comb = (fingers: number, size: number): readonly Segment[] =>
  Array.from({ length: fingers }, (_, i) => 20 + 2 * i * size).flatMap((y): readonly Segment[] => [
    [
      [40, y],
      [40 + size, y],
    ],
    [
      [40 + size, y],
      [40 + size, y + size],
    ],
    [
      [40 + size, y + size],
      [40, y + size],
    ],
    [
      [40, y + size],
      [40, y + 2 * size],
    ],
  ]);

describe("fingers of a box joint in a small drawing", () => {
  const drawn = (lines: readonly Segment[], plate = new Plate(frame)) => closeOn(lines, plate, pen, ground);

  test("are drawn larger in a circle, so that each is at least 9 points high", () => {
    // 2.25 points, as 3/4 in at 1:24: 9 / 2.25 = 4.
    expect(words(drawn(comb(12, 2.25)))).toEqual(["Detail, 4 × as large"]);
    expect(words(drawn(comb(12, 3.2)))).toEqual(["Detail, 3 × as large"]);
    expect(outside(drawn(comb(12, 2.25)), frame)).toEqual([]);
  });

  test("are not where they are seen, where there are few, or where there is no room", () => {
    expect(drawn(comb(12, 5))).toEqual([]);
    expect(drawn(comb(3, 2.25))).toEqual([]);
    expect(drawn(comb(12, 2.25), new Plate({ ...frame, width: 165, height: 90 }))).toEqual([]);
  });

  test("are not looked for in a curve, which is drawn in as short bits", () => {
    const at = (i: number): readonly [number, number] => [
      40 + 40 * Math.sin((i * Math.PI) / 60),
      20 + 40 - 40 * Math.cos((i * Math.PI) / 60),
    ];
    const arc = Array.from({ length: 29 }, (_, i): Segment => [at(i + 1), at(i + 2)]);
    expect(drawn(arc)).toEqual([]);
  });
});

test("the line to a circle does not pass its words: they stand above it where it comes from below", () => {
  const at = [120, 150] as const;
  const plate = () => new Plate({ x: 0, y: 0, width: 300, height: 200 });
  const centre = freePlace(at, 36, 6, { plate: plate(), ground: () => 0 });
  if (!centre) throw new Error("no place");
  expect(passes([at, centre], wordsAt(at, centre, 36, true))).toBe(false);
  const detail = { at: [150, 180], centre: [150, 60], radius: 36, times: 6 } as const;
  const levels = [true, false].map((tied) =>
    enlarged(detail, { fills: [], strokes: [] }, plate(), pen, tied).flatMap((item) =>
      item.kind === "text" ? [item.y] : [],
    ),
  );
  // Above 60 − 36, and where nothing ties the circles below 60 + 36.
  expect(levels[0]?.[0]).toBeLessThan(24);
  expect(levels[1]?.[0]).toBeGreaterThan(96);
});
