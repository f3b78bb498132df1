import { expect, test } from "vitest";
import { threeViews } from "../../../src/render/drawing/index.ts";
import { outsideOf } from "../../../src/render/drawing/outside.ts";
import { aspectsOf } from "../../../src/render/drawing/three-views/aspect.ts";
import { ORDERS, rowsOf, setOut } from "../../../src/render/drawing/three-views/setting-out.ts";
import { bench as made, pen } from "./fixture.ts";
import { texts } from "./look.ts";

const bench = made();
const room = { x: 60, y: 64, width: 510, height: 640 };
const outside = outsideOf(bench.parts);
if (!outside) throw new Error("no outside");
const aspects = aspectsOf(bench, outside);

test.each(ORDERS)("%s: each caption stands above its own view, and nearer to it than to any other", (order) => {
  const scale = (0.35 / 406_400) * 10;
  const places = setOut(() => rowsOf(bench, aspects, scale), aspects, scale, { room, pen, order });
  if (!places) throw new Error("no room");
  const far = ([x, y]: readonly [number, number], i: number): number => {
    const { left, right, top, bottom } = places.views[i]?.box ?? { left: 0, right: 0, top: 0, bottom: 0 };
    return Math.hypot(Math.max(left - x, x - right, 0), Math.max(top - y, y - bottom, 0));
  };
  for (const [i, spot] of places.captions.entries()) {
    expect(spot[1]).toBeLessThan(places.views[i]?.box.top ?? 0);
    for (const other of [0, 1, 2]) if (other !== i) expect(far(spot, i)).toBeLessThan(far(spot, other));
  }
});

test("all three are drawn with their captions", () => {
  const all = texts(threeViews(bench, { frame: room, pen }).items).map(({ text }) => text);
  expect(all).toEqual(expect.arrayContaining(["Front", "Right side", "Top"]));
});
