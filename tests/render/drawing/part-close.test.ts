import { describe, expect, test } from "vitest";
import { closeOn } from "../../../src/render/drawing/part/close.ts";
import { Plate, passes, type Segment } from "../../../src/render/drawing/plate.ts";
import { freePlace } from "../../../src/render/drawing/step/detail.ts";
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

test("the line to a circle does not pass the words below it where there is room elsewhere", () => {
  const at = [120, 150] as const;
  const centre = freePlace(at, 36, 6, { plate: new Plate({ x: 0, y: 0, width: 300, height: 200 }), ground: () => 0 });
  const [x = 0, y = 0] = centre ?? [];
  expect(centre).not.toBeNull();
  expect(passes([at, [x, y]], { left: x - 36, right: x + 36, top: y + 36, bottom: y + 48 })).toBe(false);
});
