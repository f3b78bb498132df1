import { expect, test } from "vitest";
import type { Item } from "../../src/render/document.ts";
import { bounds, circle, leaves, line, moved, rectangle, slot } from "../../src/render/shapes.ts";

const stroke = { width: 1, ink: [0, 0, 0] } as const;

test("four curves make a circle to a thirtieth of a per cent", () => {
  const item = circle(10, 20, 100, { stroke });
  if (item.kind !== "path") throw new Error("no path");
  let from = { x: 110, y: 20 };
  for (const step of item.steps) {
    if (step.to !== "curve") continue;
    for (let t = 0; t <= 1; t += 0.05) {
      const at = (a: number, b: number, c: number, d: number) =>
        (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t ** 2 * c + t ** 3 * d;
      const x = at(from.x, step.x1, step.x2, step.x) - 10;
      const y = at(from.y, step.y1, step.y2, step.y) - 20;
      expect(Math.abs(Math.hypot(x, y) - 100)).toBeLessThan(0.03);
    }
    from = step;
  }
  expect(from).toMatchObject({ x: 110, y: 20 });
});

test("a slot keeps a radius from the line between its middles, whichever way it runs", () => {
  for (const [a, b] of [
    [
      [0, 0],
      [30, 40],
    ],
    [
      [5, 5],
      [-25, 5],
    ],
  ] as const) {
    const item = slot(a, b, 10, { stroke });
    if (item.kind !== "path") throw new Error("no path");
    const ends = item.steps.flatMap((step) => ("x" in step ? [[step.x, step.y] as const] : []));
    const [dx, dy, long] = [b[0] - a[0], b[1] - a[1], Math.hypot(b[0] - a[0], b[1] - a[1])];
    for (const [x, y] of ends) {
      const along = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / long ** 2));
      expect(Math.hypot(x - a[0] - along * dx, y - a[1] - along * dy)).toBeCloseTo(10, 9);
    }
    // Its two ends lie a radius beyond the middles.
    expect(Math.max(...ends.map(([x, y]) => ((x - a[0]) * dx + (y - a[1]) * dy) / long))).toBeCloseTo(long + 10, 9);
    expect(Math.min(...ends.map(([x, y]) => ((x - a[0]) * dx + (y - a[1]) * dy) / long))).toBeCloseTo(-10, 9);
  }
});

test("what is moved keeps its shape and goes with its group, links and places", () => {
  const items: Item[] = [
    { kind: "group", role: "figure", alt: "", items: [rectangle(0, 0, 10, 20, { stroke }), circle(0, 0, 5, {})] },
    { kind: "link", x: 1, y: 1, width: 2, height: 2, to: "a" },
    { kind: "anchor", name: "a", y: 3 },
  ];
  const there = moved(items, 100, 200);
  const back = moved(there, -100, -200);
  const rounded = (list: readonly Item[]): unknown =>
    JSON.parse(JSON.stringify(list), (_, value) => (typeof value === "number" ? Math.round(value * 1e6) : value));
  expect(rounded(back)).toEqual(rounded(items));
  expect(bounds(leaves(there))).toEqual([95, 195, 110, 220]);
  expect(there.slice(1)).toMatchObject([{ x: 101, y: 201 }, { y: 203 }]);
});

test("bounds hold lines and texts", () => {
  const text: Item = { kind: "text", x: 5, y: 50, text: "x", font: "regular", size: 10, ink: [0, 0, 0], width: 30 };
  expect(bounds(leaves([line(10, 45, 20, 60, stroke), text]))).toEqual([5, 40, 35, 60]);
});
