import { expect, test } from "vitest";
import { threeViews } from "../../../src/render/drawing/index.ts";
import { outsideOf } from "../../../src/render/drawing/outside.ts";
import { aspectsOf } from "../../../src/render/drawing/three-views/aspect.ts";
import { ORDERS, rowsOf, setOut } from "../../../src/render/drawing/three-views/setting-out.ts";
import { part } from "./fixture/making.ts";
import { bench as made, pen } from "./fixture.ts";
import { texts } from "./look.ts";

const bench = made();
const room = { x: 60, y: 64, width: 510, height: 640 };
const outside = outsideOf(bench.parts);
if (!outside) throw new Error("no outside");
const aspects = aspectsOf(bench, outside);

test.each(ORDERS)(
  "%s: each caption stands above its own view or right of its upper end, and nearer to it than to any other",
  (order) => {
    const scale = (0.35 / 406_400) * 10;
    const places = setOut(() => rowsOf(bench, aspects, scale), aspects, scale, { room, pen, order });
    if (!places) throw new Error("no room");
    const far = ([x, y]: readonly [number, number], i: number): number => {
      const { left, right, top, bottom } = places.views[i]?.box ?? { left: 0, right: 0, top: 0, bottom: 0 };
      return Math.hypot(Math.max(left - x, x - right, 0), Math.max(top - y, y - bottom, 0));
    };
    for (const [i, spot] of places.captions.entries()) {
      const box = places.views[i]?.box;
      if (order !== "close") expect(spot[1]).toBeLessThan(box?.top ?? 0);
      else {
        expect(spot[0]).toBeGreaterThan(box?.right ?? 0);
        expect(spot[1] - (box?.top ?? 0)).toBeLessThan(12);
      }
      for (const other of [0, 1, 2]) if (other !== i) expect(far(spot, i)).toBeLessThan(far(spot, other));
    }
  },
);

test("all three are drawn with their captions", () => {
  const all = texts(threeViews(bench, { frame: room, pen }).items).map(({ text }) => text);
  expect(all).toEqual(expect.arrayContaining(["Front", "Right side", "Top"]));
});

test("captions go beside the views where all three are larger by that, and above them where they are not", () => {
  // 36 × 18 × 20 in: in 1:8 the width of front and side is 486 points and their numbers; the height of all three 522.
  const chest = [part("chest", "A", "Chest", "board", { body: [0, 0, 0, 36, 18, 20] })];
  const drawn = (height: number) =>
    threeViews({ ...bench, parts: chest, hardware: [] }, { frame: { ...room, height }, pen });
  const beside = (height: number): boolean => {
    const all = texts(drawn(height).items);
    const at = (caption: string): number => all.find(({ text }) => text === caption)?.x ?? 0;
    // Beside views of one width captions begin in one line; above them they are centred.
    return Math.abs(at("Front") - at("Top")) < 0.1;
  };
  expect([580, 610, 700].map((height) => drawn(height).scale)).toEqual(["1:10", "1:8", "1:8"]);
  expect([580, 610, 700].map(beside)).toEqual([false, true, false]);
});
