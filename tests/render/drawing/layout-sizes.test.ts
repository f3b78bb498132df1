import { expect, test } from "vitest";
import { layoutDrawing } from "../../../src/render/drawing/index.ts";
import { unsized } from "../../../src/render/drawing/layout/sizes.ts";
import { built } from "../../examples/compiled.ts";
import { pen } from "./fixture.ts";
import { clashes, outside, texts } from "./look.ts";

test("sizes are listed of what has only its mark, once, and how many are of each where they differ", () => {
  const part = (mark: string, size: string, isTold = false) => ({ mark, size, isTold });
  const parts = [
    part("K", "5 × 8"),
    part("A", "9 × 9", true),
    part("K", "5 × 7"),
    part("K", "5 × 8"),
    part("A", "9 × 9"),
  ];
  expect(unsized([...parts, part("B", "2 × 3"), part("B", "2 × 3")])).toEqual([
    { mark: "B", size: "2 × 3" },
    { mark: "K (2)", size: "5 × 8" },
    { mark: "K (1)", size: "5 × 7" },
  ]);
});

test("each size of every part of a layout stands in its drawing, in its part or in the list below", () => {
  const build = built("key-cabinet");
  const frame = { x: 60, y: 64, width: 510, height: 300 };
  for (const layout of build.layouts) {
    const { items } = layoutDrawing(build, layout, { frame, pen });
    const said = texts(items).map(({ text }) => text);
    for (const { mark, width, length } of layout.placements)
      expect(said, mark).toContain(`${pen.print(width)} × ${pen.print(length)}`);
    expect(outside(items, frame)).toEqual([]);
    expect(clashes(items)).toEqual([]);
  }
});
