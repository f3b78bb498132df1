import { describe, expect, test } from "vitest";
import type { Columns } from "../../../src/render/typeset/columns.ts";
import { flow } from "../../../src/render/typeset/flow.ts";
import { textsOf } from "../boxes.ts";
import { FULL, frame, GAP, named, unit } from "./units.ts";

describe("white space that a page leaves", () => {
  const set = (columns: Columns): readonly (readonly [string, number])[][] =>
    flow([{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns }], frame).map(({ items }) =>
      textsOf(items).map(({ text, y }) => [text, y - frame.y] as const),
    );
  const base = { gap: GAP, between: 20 };
  const fill = [...FULL, ...FULL];

  test("goes to the largest heads over both columns that leave the page what it had", () => {
    const wide = (i: number) =>
      i === 0
        ? [
            { head: named("W", 390), below: unit("V", 20, 2), larger: 3 },
            { head: named("X", 300), below: unit("V", 20, 2), larger: 2 },
          ]
        : [];
    // W: 390 + 4 + 20 are more than 400; X: 300 + 4 + 20 go in.
    const [page] = set({ ...base, units: [unit("A", 100, 2), fill], wide });
    expect(page?.[0]).toEqual(["X", 0]);
    // B takes 60 of both columns: 300 + 24 + 20 + 60 are more than 400.
    const [both] = set({ ...base, units: [unit("A", 100, 2), unit("B", 120, 0), fill], wide });
    expect(both?.map(([name]) => name)).toEqual(["A", "A0", "A1", "B"]);
  });

  test("goes to two that are a little larger before one that is much larger", () => {
    const head = (name: string, height: number, larger: number) => ({ head: named(name, height), below: [], larger });
    const wide = (i: number) => (i < 2 ? [head("big", 280, 4), head("some", 180, 1.6)] : []);
    const [page] = set({ ...base, units: [unit("A", 90, 0), unit("B", 90, 0), fill], wide });
    expect(page?.map(([name]) => name)).toEqual(["some", "some"]);
  });

  // A and B stand in a column each: 300 of 400 left. 96 and 72 are steps; 80 at most for B.
  test("goes to pictures, all by as much, and no more than helps", () => {
    const asked: [number, number][] = [];
    const taller = (i: number) =>
      i < 2
        ? {
            most: i === 0 ? 100 : 80,
            by: (more: number) => {
              asked.push([i, more]);
              return unit("AB"[i] ?? "", 250 + more, 0);
            },
          }
        : null;
    set({ ...base, units: [unit("A", 250, 0), unit("B", 250, 0), fill], taller });
    expect(asked).toEqual([
      [0, 100],
      [1, 80],
    ]);
    // 330 and 70 are left for 24 and no more.
    asked.length = 0;
    set({ ...base, units: [unit("A", 370, 0), unit("B", 250, 0), fill], taller });
    expect(asked).toEqual([
      [0, 24],
      [1, 80],
    ]);
  });

  /** B and D can be 148 high. */
  const tighter = (i: number) => (i === 1 || i === 3 ? unit("ABCDE"[i] ?? "", 148, 0) : null);
  test("goes to none that takes up less for one more", () => {
    const asked: number[] = [];
    const taller = (i: number) =>
      i === 1 || i === 2
        ? {
            most: 60,
            by: (more: number) => {
              asked.push(i);
              return unit("ABCDE"[i] ?? "", (i === 2 ? 300 : 180) + more, 0);
            },
          }
        : null;
    const units = [
      unit("A", 228, 0),
      unit("B", 180, 0),
      unit("C", 300, 0),
      unit("D", 180, 0),
      unit("E", 100, 0),
      FULL,
      fill,
    ];
    const [first] = set({ ...base, units, tighter, taller });
    expect(first?.map(([name]) => name)).toEqual(["A", "B", "C"]);
    // C has 100 left beside A and B, which fill their column.
    expect(asked).toContain(2);
    expect(asked).not.toContain(1);
  });

  const likeThese = (of: number, at: number) => (i: number) => (i === at ? of : null);
  test("is left by one that looks like another on its page which has to take up less", () => {
    const units = [unit("A", 228, 0), unit("B", 180, 0), unit("C", 180, 0), unit("D", 200, 0), FULL, FULL, fill];
    const shorter = (i: number) => (i === 1 || i === 2 ? unit("ABC"[i] ?? "", 148, 0) : null);
    const below = (like: (i: number) => number | null) =>
      set({ ...base, units, tighter: shorter, like })[0]?.find(([name]) => name === "D")?.[1];
    // Below A only 148 of B go in; below C, as high as it is, D does.
    expect(below(() => null)).toBe(200);
    expect(below(likeThese(1, 2))).toBe(168);
  });

  test("is not left by one whose like stands on another page and has to take up less", () => {
    const units = [
      unit("A", 228, 0),
      unit("B", 180, 0),
      unit("C", 390, 0),
      unit("D", 180, 0),
      unit("E", 100, 0),
      FULL,
      fill,
    ];
    // A, B and C go on one page where B is 148 high; D has room.
    const [, second] = set({ ...base, units, tighter, like: likeThese(1, 3) });
    expect(second?.find(([name]) => name === "E")?.[1]).toBe(200);
  });
});
