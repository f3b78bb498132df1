/** On the layout of a crowded board each cut has its number at the cut: beside it, or on it, never on a part that it does not touch. */
import { expect, test } from "vitest";
import { layoutDrawing } from "../../../src/render/drawing/index.ts";
import { boardOn } from "../../../src/render/drawing/layout/board.ts";
import type { Layout } from "../../../src/solve/build.ts";
import { inches } from "../../../src/units/index.ts";
import { built } from "../../examples/compiled.ts";
import { pen } from "./fixture.ts";
import { texts } from "./look.ts";

const build = built("old-plans/library-table");
const pine = build.layouts.find(({ stock }) => stock === "soft") as Layout;
const frame = { x: 60, y: 64, width: 510, height: 300 };

test("a board with many cuts is drawn so wide that numbers have room on its parts", () => {
  const room = { x: 0, y: 0, width: 480, height: 260 };
  const deepest = (layout: Layout): number => {
    const { box } = boardOn(layout, room, 0, true);
    return box.bottom - box.top;
  };
  // The narrowest, 1 3/4 of 10 in: 30 points for it are 171.4 for all; 17 points, 97.1.
  expect(pine.cuts.length).toBeGreaterThan(20);
  expect(deepest(pine)).toBeCloseTo((30 * 10) / 1.75, 6);
  expect(deepest({ ...pine, cuts: pine.cuts.slice(0, 20) })).toBeCloseTo((17 * 10) / 1.75, 6);
});

test("the number of a rip lies in the column of its rip", () => {
  const { items } = layoutDrawing(build, pine, { frame, pen });
  const drawn = texts(items);
  // The first of two: the other stands in the list of settings.
  const at = (number: number): number => {
    const found = drawn.filter(({ text }) => text === String(number)).toSorted((a, b) => a.y - b.y)[0];
    if (!found) throw new Error(`no number ${number}`);
    return found.x + found.width / 2;
  };
  // The first crosscuts reach over the whole board: their numbers stand above the ends of the columns.
  const columns = pine.cuts.slice(0, 6);
  expect(columns.every(({ kind }) => kind === "crosscut")).toBe(true);
  const perInch =
    (at(columns[1]?.number ?? 0) - at(columns[0]?.number ?? 0)) / inch(columns[1]?.from[1], columns[0]?.from[1]);
  const zero = at(columns[0]?.number ?? 0) - perInch * inch(columns[0]?.from[1], inches(0));
  // Beyond the last columns there is only waste, where a number is taken for that of no other cut.
  const crowded = pine.cuts.filter(({ kind, number }) => kind === "rip" && number < 17);
  expect(crowded.map(({ number }) => number)).toEqual([7, 8, 9, 10, 11, 12, 13, 14, 15, 16]);
  for (const { number, from, to } of crowded) {
    const [near, far] = [from[1], to[1]].map((y) => zero + perInch * inch(y, inches(0))) as [number, number];
    expect(at(number), `cut ${number}`).toBeGreaterThan(near - 24);
    // In its column, or in line with it right past its end, where no other part lies.
    expect(at(number), `cut ${number}`).toBeLessThan(far + 10);
  }
});

function inch(a: Layout["width"] | undefined, b: Layout["width"] | undefined): number {
  const value = ({ n, d }: Layout["width"]): number => Number(n) / Number(d);
  return a && b ? (value(a) - value(b)) / value(inches(1)) : Number.NaN;
}
