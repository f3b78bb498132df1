import { describe, expect, test } from "vitest";
import { BOTTOM, FRONT, ISOMETRIC } from "../../../src/geometry/picture/index.ts";
import type { Drawing } from "../../../src/render/drawing/drawing.ts";
import { fitAt } from "../../../src/render/drawing/fit.ts";
import { explodedView, layoutDrawing, pieceView, stepPicture, threeViews } from "../../../src/render/drawing/index.ts";
import { labels, type Marked } from "../../../src/render/drawing/labels.ts";
import { boardOn, widest } from "../../../src/render/drawing/layout/board.ts";
import { BLACK, WHITE } from "../../../src/render/palette.ts";
import type { Build } from "../../../src/solve/build.ts";
import { inches } from "../../../src/units/index.ts";
import { bench, boardLayout, bookcase, crowdedLayout, pen, sheetLayout } from "./fixture.ts";
import { circlesThatMeet, clashes, outside, paths, pointsOf, struck, texts, words } from "./look.ts";
import { randomBuild } from "./random-build.ts";

const letter = { x: 60, y: 64, width: 510, height: 640 };
const half = { x: 60, y: 90, width: 255, height: 290 };
const builds: [string, Build][] = [
  ["a bench", bench()],
  ["a bookcase", bookcase()],
  ...[1, 2, 3, 4].map((seed): [string, Build] => [`random ${seed}`, randomBuild(seed, 10)]),
];

const sound = (drawing: Drawing, frame: typeof letter) => {
  expect(drawing.items.length).toBeGreaterThan(0);
  expect(outside(drawing.items, frame)).toEqual([]);
  expect(clashes(drawing.items)).toEqual([]);
  expect(circlesThatMeet(drawing.items, 12)).toBe(0);
  expect(drawing.alt).not.toBe("");
};
const marksOf = (build: Build, ids?: readonly string[]) =>
  new Set(build.parts.filter(({ id }) => !ids || ids.includes(id)).map(({ mark }) => mark));

/** Marks in balloons, "D" of "D × 5". */
const markedIn = (items: Parameters<typeof words>[0]) => words(items).map((word) => word.split(" × ")[0]);

describe.each(builds)("%s", (_, build) => {
  test("three views: in the frame, no text on a text or a line, outside sizes and scale stated", () => {
    const drawing = threeViews(build, { frame: letter, pen });
    sound(drawing, letter);
    expect(struck(drawing.items)).toEqual([]);
    expect(drawing.scale).toMatch(/^1:\d+$/);
    for (const word of ["Front", "Right side", "Top", `Scale ${drawing.scale}`])
      expect(words(drawing.items)).toContain(word);
    expect(drawing.alt).toMatch(/wide, .* deep and .* high/);
  });

  test("taken apart: every mark in a balloon", () => {
    const drawing = explodedView(build, { frame: letter, pen });
    sound(drawing, letter);
    for (const mark of marksOf(build)) expect(markedIn(drawing.items)).toContain(mark);
    // Every part is counted in one of them.
    const counts = words(drawing.items).map((word) => Number(word.split(" × ")[1] ?? 1));
    expect(counts.reduce((a, b) => a + b)).toBe(build.parts.length);
  });

  test("parts alike that stand together have one balloon, those far apart have their own", () => {
    const alike = (count: number, apart: number, scattered = false, mark = "Z") => {
      const parts = Array.from({ length: count }, (_, i) => ({ ...build.parts[0], mark, id: `z${i}` }));
      const shifted = parts.map((part, i) => ({ ...part, shift: [i * apart * 406_400, 0, 0] }) as unknown as Marked);
      const fit = fitAt({ low: [0, 0], high: [1, 1] }, 72 / 406_400, 0, 0);
      return labels(shifted, [], FRONT, fit, undefined, scattered).map(({ mark }) => mark);
    };
    expect(alike(4, 0.8)).toEqual(["Z × 4"]);
    expect(alike(4, 2)).toEqual(["Z", "Z", "Z", "Z"]);
    expect(alike(2, 0.5)).toEqual(["Z", "Z"]);
    expect(alike(2, 2, true)).toEqual(["Z × 2"]);
    // A name is said once.
    expect(alike(2, 0.5, false, "catch")).toEqual(["catch × 2"]);
  });

  test("steps: every new mark in a balloon", () => {
    for (const step of build.steps) {
      const drawing = stepPicture(build, step, { frame: half, pen });
      sound(drawing, half);
      for (const mark of marksOf(build, step.shows.fresh)) expect(markedIn(drawing.items)).toContain(mark);
      for (const mark of marksOf(build, step.shows.fresh)) expect(drawing.alt).toContain(mark);
    }
  });

  test("from one side: to scale or fitted", () => {
    for (const view of [FRONT, ISOMETRIC, BOTTOM]) {
      sound(pieceView(build, { frame: half, pen, view, shaded: true, hidden: true }), half);
      sound(pieceView(build, { frame: letter, pen, view, scale: "fit" }), letter);
    }
  });

  test("the same drawing again", () => {
    for (const draw of [threeViews, explodedView]) {
      const once = draw(build, { frame: letter, pen });
      expect(draw(build, { frame: letter, pen })).toEqual(once);
    }
  });
});

describe("cutting layouts", () => {
  const frame = { x: 60, y: 64, width: 510, height: 420 };
  test.each([
    ["a sheet", sheetLayout(), frame],
    ["a board", boardLayout(), { ...frame, height: 130 }],
    ["a crowded panel", crowdedLayout(), { ...frame, height: 260 }],
    ["a crowded panel in little room", crowdedLayout(), { ...frame, height: 180 }],
    ["a sheet in a narrow column", sheetLayout(), { ...frame, width: 250, height: 500 }],
  ])("%s", (_, layout, frame) => {
    const drawing = layoutDrawing(bench(), layout, { frame, pen });
    sound(drawing, frame);
    const said = words(drawing.items);
    for (const { mark } of layout.placements) expect(markedIn(drawing.items)).toContain(mark);
    // Each cut has its number on the board and in the list of settings.
    for (const { number, fence } of layout.cuts) {
      expect(said.filter((w) => w === String(number)).length).toBeGreaterThanOrEqual(2);
      expect(said).toContain(pen.print(fence));
    }
    expect(said).toContain("grain");
  });

  test("the narrowest part of a board has room for its mark, and the length stays to scale", () => {
    const narrow = {
      ...boardLayout(),
      width: crowdedLayout().width,
      placements: crowdedLayout().placements.slice(0, 7),
    };
    const room = { x: 0, y: 0, width: 480, height: 260 };
    const board = boardOn(narrow, room, 0, true);
    const deep = narrow.placements.map((each) => board.rectangle(each)).map(({ top, bottom }) => bottom - top);
    // 1 in of 24 at the limit of 190 points for the whole width is 7.9; of 8 in, 17 points.
    expect(Math.min(...deep)).toBeCloseTo(190 / 24, 6);
    const slim = boardOn({ ...narrow, width: inches(8) }, room, 0, true);
    const low = narrow.placements.map((each) => slim.rectangle(each)).map(({ top, bottom }) => bottom - top);
    expect(Math.min(...low)).toBeCloseTo(17, 6);
    expect(slim.long(inches(1))).toBe(0);
  });

  test("boards of one stock that are as wide as one another are drawn so, those of other stock are not", () => {
    const plain = boardLayout();
    const slim = { ...plain, placements: plain.placements.map((each) => ({ ...each, width: inches(1) })) };
    const wide = { ...slim, placements: slim.placements.map((each) => ({ ...each, width: slim.width })) };
    const other = { ...wide, stock: `${wide.stock} again` };
    expect(widest(wide, [])).toBeLessThan(widest(slim, []));
    expect(widest(wide, [slim, wide, other])).toBe(widest(slim, [slim, wide, other]));
    expect(widest(other, [slim, wide, other])).toBe(widest(wide, []));
    const high = (of: typeof slim, layouts: readonly (typeof slim)[]): number => {
      const { items } = layoutDrawing({ ...bench(), layouts }, of, { frame, pen });
      const ys = paths(items)
        .filter(({ fill }) => fill === WHITE)
        .flatMap(pointsOf)
        .map(([, y]) => y);
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(high(wide, [slim, wide])).toBeGreaterThan(high(wide, [wide]) + 5);
  });

  test("a low sheet may take a scale between the usual ones, and is the larger for it", () => {
    const by = (height: number, close: boolean): number =>
      Number(layoutDrawing(bench(), sheetLayout(), { frame: { ...frame, height }, pen, close }).scale.slice(2));
    const heights = Array.from({ length: 16 }, (_, i) => 120 + 10 * i);
    for (const height of heights) expect(by(height, true)).toBeLessThanOrEqual(by(height, false));
    expect(heights.some((height) => by(height, true) < by(height, false))).toBe(true);
  });

  test("narrow parts alike that lie side by side have one label, and a dot in each", () => {
    // Beside A, which ends at 11 1/4 in, six strips of 1 by 28 in from 12 in on.
    const { placements, ...sheet } = sheetLayout();
    const [first] = placements;
    if (!first) throw new Error("no part");
    const strips = [0, 1, 2, 3, 4, 5].map((i) => ({
      ...{ ...first, mark: "G", x: inches(96 + 9 * i, 8), y: inches(30) },
      ...{ width: inches(1), length: inches(28) },
    }));
    const { items } = layoutDrawing(bench(), { ...sheet, placements: [first, ...strips], cuts: [] }, { frame, pen });
    const said = words(items);
    // Once beside the parts, and once in the list of sizes.
    expect(said.filter((word) => word.startsWith("G"))).toEqual(["G × 6", "G"]);
    expect(clashes(items)).toEqual([]);
    const dots = paths(items).filter(({ fill, steps }) => fill === BLACK && steps.some(({ to }) => to === "curve"));
    const middles = dots.map((dot) => pointsOf(dot).map(([, y]) => y)).map((ys) => Math.min(...ys) + Math.max(...ys));
    expect(new Set(middles.map((twice) => Math.round(twice))).size).toBe(6);
  });

  test("marks that hang below a board do not touch the signs below it", () => {
    const sheet = { ...crowdedLayout(), kind: "sheet" as const, squaring: inches(1, 4) };
    for (const height of [180, 220, 260, 300]) {
      const { items } = layoutDrawing(bench(), sheet, { frame: { ...frame, height }, pen });
      const signs = texts(items).filter(({ text }) => text === "grain" || text.startsWith("squared"));
      const marks = new Set(sheet.placements.map(({ mark }) => mark));
      const lowest = Math.max(...texts(items).flatMap(({ text, y }) => (marks.has(text) ? [y] : [])));
      expect(signs).toHaveLength(2);
      for (const { y, size } of signs) expect(lowest).toBeLessThan(y - size * 0.7);
    }
  });

  test("parts are drawn to scale and where they lie", () => {
    const drawing = layoutDrawing(bench(), sheetLayout(), { frame, pen });
    expect(drawing.scale).toBe("1:16");
    const tall = paths(drawing.items).filter(({ fill, stroke }) => fill && stroke?.width === 0.35);
    expect(tall).toHaveLength(sheetLayout().placements.length);
    const [first] = tall;
    const xs = (first?.steps ?? []).flatMap((s) => (s.to === "close" ? [] : [s.x]));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo((48 * 72) / 16, 6);
  });
});
