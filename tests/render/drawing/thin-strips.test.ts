/** Strips: which of their sides are faces, and how large they are drawn. */
import { expect, test } from "vitest";
import { partDrawing } from "../../../src/render/drawing/part/part-drawing.ts";
import type { Build } from "../../../src/solve/build.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { inches } from "../../../src/units/index.ts";
import { at, bored, part } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { clashes, words } from "./look.ts";

const frame = { x: 60, y: 64, width: 510, height: 230 };

// 40 × 3/4 in: at 1:16, the largest at which all of it goes in, its face is 3/64 in wide on paper.
test("a strip that would be drawn as one line is drawn larger, with gaps in its row of holes", () => {
  const strip = part("strip", "A", "Strip", "board", { body: [0, 0, 0, 40, 0.75, 0.25] });
  const holes = Array.from(
    { length: 14 },
    (_, i): Hole => ({ ...bored(0, 0), part: "strip", at: at(0.5 + 3 * i, 0.375, 0.25) }),
  );
  const build: Build = { ...bench(), parts: [strip], holes };
  const made = partDrawing(build, strip, { frame: { ...frame, width: 270 }, pen });
  expect(made?.broken).toBe(true);
  expect((made?.points ?? 0) * 0.75 * 25.4 * 16_000).toBeGreaterThan(10);
  expect(words(made?.items ?? []).join(" ")).toContain("a: 13\u202f×\u202f3");
  expect(clashes(made?.items ?? [])).toEqual([]);
});

test("a strip that is thicker than it is wide lies on its broad side", () => {
  const strip = part("strip", "A", "Strip", "board", { body: [0, 0, 0, 20, 0.25, 0.75] });
  const holes = [2, 9, 18].map(
    (x): Hole => ({ ...bored(0, 0), part: "strip", at: at(x, 0, 0.5), direction: [0, 1, 0] }),
  );
  const axes = { ...strip.axes, thickness: "up", width: "deep" } as const;
  const ripped = { ...strip, axes, width: inches(1, 4), thickness: inches(3, 4) };
  const made = partDrawing({ ...bench(), parts: [ripped], holes }, ripped, { frame, pen });
  expect(made?.lies).toContain("Seen from the front");
  expect(made?.bores.map(({ side }) => side)).toEqual(["front face"]);
});
