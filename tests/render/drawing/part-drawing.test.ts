import { describe, expect, test } from "vitest";
import type { Vec } from "../../../src/geometry/types.ts";
import { letters } from "../../../src/render/drawing/part/bore-letters.ts";
import type { Bore } from "../../../src/render/drawing/part/bores.ts";
import { apart, PITCH } from "../../../src/render/drawing/part/ordinates.ts";
import { partDrawing } from "../../../src/render/drawing/part/part-drawing.ts";
import { squeezed } from "../../../src/render/drawing/part/squeeze.ts";
import { type Box, Plate } from "../../../src/render/drawing/plate.ts";
import type { Build, BuiltPart } from "../../../src/solve/build.ts";
import type { Hole } from "../../../src/solve/design.ts";
import { inches } from "../../../src/units/index.ts";
import { at, bored, inch, part } from "./fixture/making.ts";
import { bench, pen } from "./fixture.ts";
import { clashes, outside, paths, pointsOf, texts, words } from "./look.ts";

const frame = { x: 60, y: 64, width: 510, height: 230 };

/** Lies flat: 24 × 6 × 3/4, a dado of 3/4 × 3/8 from above that begins 8 in from the left end. */
const shelf = (): BuiltPart => {
  const made = part("shelf", "A", "Shelf", "board", {
    body: [0, 0, 0, 24, 6, 0.75],
    cuts: [[8, 0, 0.375, 8.75, 6, 0.75]],
  });
  const dado = { kind: "dado", for: null, origin: at(8, 0, 0.75), along: [0, 1, 0], across: [1, 0, 0] } as const;
  return { ...made, features: [{ ...dado, size: [inch(6), inch(0.75), inch(0.375)], into: [0, 0, -1] }] };
};
const drawn = (holes: readonly Hole[]) => {
  const build: Build = { ...bench(), parts: [shelf()], holes };
  const made = partDrawing(build, shelf(), { frame, pen });
  if (made === null) throw new Error("its numbers do not go in");
  return made;
};
const turned = (items: Parameters<typeof texts>[0]) => texts(items).filter(({ turn }) => turn === 90);

describe("the drawing of a part", () => {
  const drawing = drawn([bored(2, 1), bored(20, 1), bored(12, 3, false)]);

  test("the numbers along it begin at one end: dado and holes, worked out by hand", () => {
    expect(turned(drawing.items).map(({ text }) => text)).toEqual(["0", "2", "8", "8 3⁄4", "20", "24"].map(spaced));
  });

  test("those across it begin at the front, those through it at its underside", () => {
    const across = texts(drawing.items)
      .filter(({ turn, font, x }) => turn === undefined && font === "regular" && x < 90)
      .filter(({ text }) => !text.startsWith("Scale"))
      .sort((a, b) => a.y - b.y);
    expect(across.map(({ text }) => text)).toEqual(["6", "1", "0", "3⁄4", "3⁄8", "0"].map(spaced));
  });

  test("what is bored in place is left out, and holes alike have one letter", () => {
    expect(drawing.bores.map(({ letter, holes, side }) => [letter, holes.length, side])).toEqual([
      ["a", 2, "top face"],
    ]);
    expect(words(drawing.items).filter((word) => word === "a")).toHaveLength(2);
    expect(drawing.alt).toContain("dado");
    expect(drawing.lies).toContain("left end lies at the left, its front edge below");
  });

  test("it stays in its frame, and no text lies on another", () => {
    expect(outside(drawing.items, frame)).toEqual([]);
    expect(clashes(drawing.items)).toEqual([]);
  });

  test("the side with more holes is drawn", () => {
    const below = { ...bored(3, 2), at: at(3, 2, 0), direction: [0, 0, 1] } as const;
    const more = [below, { ...below, at: at(4, 2, 0) }, { ...below, at: at(5, 2, 0) }];
    expect(drawn(more as readonly Hole[]).lies).toMatch(/^Seen from below/);
  });
});

test("a part with pockets is drawn from the side that they are bored into", () => {
  const slant = Math.PI / 12;
  const pocket = (up: 1 | -1): Hole => ({
    ...bored(1.5, 3),
    kind: "pocket",
    at: at(1.5, 3, up < 0 ? 0.75 : 0),
    direction: [-Math.cos(slant), 0, up * Math.sin(slant)],
  });
  expect(drawn([pocket(-1)]).lies).toMatch(/^Seen from above/);
  expect(drawn([pocket(1), { ...pocket(1), at: at(1.5, 5, 0) }]).lies).toMatch(/^Seen from below/);
  // What it opens with is seen there, as much longer than wide as the slant makes it: an oval of two arcs.
  const ovals = paths(drawn([pocket(-1)]).items).filter(
    ({ steps, stroke }) => stroke && !stroke.dash && steps.some(({ to }) => to === "curve"),
  );
  const span = (all: readonly number[]): number => Math.max(...all) - Math.min(...all);
  const sizes = ovals.map(pointsOf).map((at) => span(at.map(([x]) => x)) / span(at.map(([, y]) => y)));
  expect(sizes.some((size) => Math.abs(size - 1 / Math.sin(slant)) < 0.1)).toBe(true);
});

test("the view of an end letters the pockets that come out there, and shows them in the thickness, not on the face", () => {
  const slant = Math.PI / 12;
  const pocket = (x: number, way: 1 | -1): Hole => ({
    ...bored(x, 3),
    kind: "pocket",
    through: true,
    direction: [way * Math.cos(slant), 0, -Math.sin(slant)],
    stages: [
      { diameter: inches(3, 8), depth: inches(1, 1) },
      { diameter: inches(9, 64), depth: inches(3, 2) },
    ],
  });
  const drawing = drawn([pocket(1.5, -1), pocket(22.5, 1)]);
  expect(drawing.bores.map(({ letter, on, side }) => [letter, on, side])).toEqual([
    ["a", "left end", "top face, towards its left end"],
    ["b", "right end", "top face, towards its right end"],
  ]);
  const xOf = (letter: string): number => texts(drawing.items).find(({ text }) => text === letter)?.x ?? 0;
  const ends = turned(drawing.items).map(({ x }) => x);
  expect(xOf("a")).toBeLessThan(Math.max(...ends));
  expect(xOf("b")).toBeGreaterThan(Math.max(...ends) + 10);
  expect(outside(drawing.items, frame)).toEqual([]);
  // Without pockets at the right the left end is drawn.
  const left = drawn([pocket(1.5, -1)]);
  expect(texts(left.items).find(({ text }) => text === "a")?.x).toBeLessThan(
    Math.min(...turned(left.items).map(({ x }) => x)),
  );
});

test("what lies behind the holes of an end is not drawn over them there", () => {
  const into = (y: number, z: number): Hole => ({ ...bored(24, y), at: at(24, y, z), direction: [-1, 0, 0] });
  const hiddenAtEnd = (holes: readonly Hole[]): number => {
    const { items } = drawn(holes);
    const last = Math.max(...turned(items).map(({ x }) => x)) + 8;
    return paths(items).filter((path) => path.stroke?.dash && pointsOf(path).every(([x]) => x > last)).length;
  };
  // The bottom of the dado lies 3/8 up: behind holes in the middle, not behind one near the top face.
  expect(hiddenAtEnd([into(1, 0.375), into(5, 0.375)])).toBe(0);
  expect(hiddenAtEnd([into(3, 0.625)])).toBeGreaterThan(0);
});

test("a letter keeps out of a column of numbers, where it would be taken for one", () => {
  const end = { ...bored(0, 3), at: at(0, 3, 0.375), direction: [1, 0, 0] } as const;
  const bore: Bore = { letter: "a", holes: [end], on: "left end", side: "left end" };
  const scale = 10 / 406_400;
  const shown = {
    spot: (p: Vec): readonly [number, number] => [100 + p[0] * scale, 100 - p[1] * scale],
    towards: [0, 0, 1] as Vec,
    scale,
  };
  const placed = (columns: readonly Box[]) => {
    const plate = new Plate({ x: 0, y: 0, width: 300, height: 200 });
    return texts(letters([bore], shown, { plate, pen, columns }))[0] as { x: number; y: number };
  };
  const free = placed([]);
  const column = { left: free.x - 4, right: free.x + 10, top: free.y - 20, bottom: free.y + 20 };
  const off = placed([column]);
  expect(off.x > column.right || off.x < column.left - 4 || Math.abs(off.y - free.y) > 15).toBe(true);
});

const spaced = (text: string): string => pen.print(inch(eval24(text)));
/** "8 3⁄4" as a number of inches. */
function eval24(text: string): number {
  return text.split(" ").reduce((sum, word) => {
    const [n = "0", d = "1"] = word.split("⁄");
    return sum + Number(n) / Number(d);
  }, 0);
}

test("numbers that are too close are set apart, in their order, around where they belong", () => {
  const wanted = [100, 101, 102, 300];
  const set = apart(wanted, 0);
  set.slice(1).forEach((place, i) => {
    expect(place - (set[i] as number)).toBeGreaterThanOrEqual(PITCH - 1e-9);
  });
  // Three around 101, the pitch of 11 apart: by hand.
  expect(set).toEqual([90, 101, 112, 300]);
  expect(apart([1, 2], 5)[0]).toBe(5);
});

test("a long part is broken twice at most, where it is plain the longest", () => {
  const kept = [0, 200, 500, 900, 1000].map((u) => [u, u] as const);
  const { breaks, width, place } = squeezed(0, 1000, 100, 1, kept);
  expect(breaks).toHaveLength(2);
  // 300 and 400 as 26 each; 200 and 100 whole.
  expect(width).toBeCloseTo(200 + 26 + 26 + 100, 9);
  expect(place(200)).toBe(200);
});

test("what is seen from the back lies with its bottom below too, as its mate does that is seen from the front", () => {
  const upright = part("shelf", "A", "Front", "board", { body: [0, 0, 0, 24, 0.75, 6] });
  const seenFrom = (y: number) => {
    const direction = y === 0 ? ([0, 1, 0] as const) : ([0, -1, 0] as const);
    const holes = [{ ...bored(2, 1), at: at(2, y, 1), direction }];
    return partDrawing({ ...bench(), parts: [upright], holes }, upright, { frame, pen })?.lies;
  };
  expect(seenFrom(0)).toBe("Seen from the front; its left end lies at the left, its bottom edge below.");
  expect(seenFrom(0.75)).toBe("Seen from the back; its right end lies at the left, its bottom edge below.");
});

test("a row of holes has its letter, its first and last place and its spaces in a line of its own", () => {
  const row = [3, 7.5, 12, 16.5].map((x) => bored(x, 1));
  const { items } = drawn([...row, bored(20, 4), bored(21.25, 4)]);
  const all = texts(items).map(({ text }) => text);
  expect(all).toContain(`a: 3\u202f×\u202f${spaced("4 1⁄2")}`);
  expect(turned(items).map(({ text }) => text)).toEqual(["0", "8", "8 3⁄4", "20", "21 1⁄4", "24"].map(spaced));
  for (const end of ["3", "16 1⁄2"]) expect(all.filter((text) => text === spaced(end))).toHaveLength(1);
  expect(outside(items, frame)).toEqual([]);
  expect(clashes(items)).toEqual([]);
});

test("a broken part keeps what is kept to scale, and ends where it should", () => {
  const kept = [[0, 10] as const, [500, 510] as const];
  const { place, breaks, width } = squeezed(0, 1000, 300, 1, kept);
  expect(place(10) - place(0)).toBe(10);
  expect(place(510) - place(500)).toBeCloseTo(10, 9);
  expect(breaks).toHaveLength(2);
  expect(width).toBe(place(1000));
  // 490 and 490 are drawn as 44 each.
  expect(width).toBeCloseTo(10 + 44 + 10 + 44, 9);
  // Of a slender part, as 26.
  expect(squeezed(0, 1000, 100, 1, kept).width).toBeCloseTo(10 + 26 + 10 + 26, 9);
});

test("where there is room a broken part fills it, and leaves out no less than shows that it is broken", () => {
  const kept = [[0, 10] as const, [990, 1000] as const];
  const at = (filled: number) => squeezed(0, 1000, 100, 1, kept, { room: 995, filled });
  expect(at(300).width).toBeCloseTo(300, 9);
  expect(at(300).breaks).toHaveLength(1);
  // The rest of the plain 980 is left out, and at least 24 of it.
  expect(at(995).width).toBeCloseTo(1000 - 24, 9);
  // With no room to fill it is as short as may be: 10, 26 and 10.
  expect(at(0).width).toBeCloseTo(46, 9);
});

test("a panel with fingers at its ends is drawn large with a gap in a column, not whole and small", () => {
  const sockets = Array.from({ length: 10 }, (_, i) => [
    [-1, -1, 1.25 + 1.5 * i, 0.75, 2, 2 + 1.5 * i] as const,
    [38.25, -1, 1.25 + 1.5 * i, 40, 2, 2 + 1.5 * i] as const,
  ]).flat();
  const panel = part("panel", "A", "Panel", "board", { body: [0, 0, 0, 39, 0.75, 16.75], cuts: sockets });
  const column = { x: 0, y: 0, width: 243, height: 259 };
  const drawing = partDrawing({ ...bench(), parts: [panel] }, panel, { frame: column, pen });
  expect(drawing?.broken).toBe(true);
  // Fingers of 3/4 are 3.4 points wide at 1:16, and 2.3 at 1:24.
  expect((drawing?.points ?? 0) * 406_400).toBeGreaterThanOrEqual(72 / 12 - 1e-9);
  expect(outside(drawing?.items ?? [], column)).toEqual([]);
  expect(clashes(drawing?.items ?? [])).toEqual([]);
});
