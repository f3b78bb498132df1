import { describe, expect, test } from "vitest";
import type { Atom } from "../../../src/render/typeset/atom.ts";
import { type Columns, columnWidth } from "../../../src/render/typeset/columns.ts";
import { flow } from "../../../src/render/typeset/flow.ts";
import { textsOf } from "../boxes.ts";
import { FULL, frame, GAP, named, unit } from "./units.ts";

const pagesOf = (units: Columns["units"], above: readonly Atom[] = []) =>
  flow(
    [{ name: "a", title: "a", kind: "a", start: "fits", atoms: above, columns: { gap: GAP, between: 20, units } }],
    frame,
  ).map(({ items }) => textsOf(items).map(({ text, x, y }) => [text, x === frame.x ? "left" : "right", y - frame.y]));

describe("units in two columns", () => {
  test("go below each other, then into the right column", () => {
    const [page, more] = pagesOf([unit("A", 300, 0), unit("B", 60, 0), unit("C", 60, 0), FULL]);
    expect(more?.[0]?.[0]).toBe("Z");
    expect(page).toEqual([
      ["A", "left", 0],
      ["B", "left", 320],
      ["C", "right", 0],
    ]);
    expect(columnWidth(frame.width, GAP)).toBe(240);
  });

  test("take their heads over both columns where the page stays hollow else", () => {
    const wide = (i: number) => (i === 0 ? [{ head: named("W", 150), below: unit("V", 20, 7), larger: 2 }] : []);
    const units = [unit("A", 100, 13), unit("B", 390, 0), FULL];
    const columns = { gap: GAP, between: 20, units, wide };
    const pages = flow([{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns }], frame).map(
      ({ items }) => textsOf(items).map(({ text, x, y }) => [text, x === frame.x ? "left" : "right", y - frame.y]),
    );
    // A: 360 of a column, and B: 390 of the other: 750 of 800 are filled enough.
    expect(pages[0]?.map(([name]) => name)).toContain("B");
    expect(pages[0]?.map(([name]) => name)).not.toContain("W");
    const hollow = { ...columns, units: [unit("A", 100, 8), FULL, FULL, FULL] };
    const [page] = flow([{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns: hollow }], frame).map(
      ({ items }) => textsOf(items).map(({ text, x, y }) => [text, x === frame.x ? "left" : "right", y - frame.y]),
    );
    expect(page?.[0]?.[0]).not.toBe("W");
    const alone = { ...columns, units: [unit("A", 100, 8), [...FULL, ...FULL]] };
    const [first] = flow([{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns: alone }], frame).map(
      ({ items }) => textsOf(items).map(({ text, x, y }) => [text, x === frame.x ? "left" : "right", y - frame.y]),
    );
    expect(first?.[0]).toEqual(["W", "left", 0]);
    expect(first?.find(([name]) => name === "V")).toEqual(["V", "left", 156]);
    // 160 points below the head are levelled: 80 in each column.
    expect(first?.filter(([, column]) => column === "right")).toHaveLength(4);
    expect(first?.find(([, column]) => column === "right")?.[2]).toBe(156);
  });

  test("go over in the middle where they have a page for themselves, so that no column stays empty", () => {
    // 100 and 8 × 20 are 260 of 400 points; the next takes a page and more.
    const [page] = pagesOf([unit("A", 100, 8), unit("B", 100, 40), FULL]);
    expect(page?.every(([name]) => `${name}`.startsWith("A"))).toBe(true);
    const [left, right] = ["left", "right"].map((side) => page?.filter(([, column]) => column === side) ?? []);
    expect(left?.length).toBeGreaterThan(1);
    expect(right?.length).toBeGreaterThan(1);
    expect(Math.max(...(left ?? []).map(([, , y]) => Number(y)))).toBeLessThan(200);
    // What is short stays in one column.
    const [short] = pagesOf([unit("A", 100, 2), unit("B", 100, 40), FULL]);
    expect(short?.filter(([name]) => `${name}`.startsWith("A")).every(([, column]) => column === "left")).toBe(true);
  });

  test("part between lines where a good part of the column is left, and never right below their heads", () => {
    const [page] = pagesOf([unit("A", 200, 0), unit("B", 120, 4), unit("C", 200, 0), FULL]);
    expect(page?.filter(([name]) => String(name).startsWith("B"))).toEqual([
      ["B", "left", 220],
      ["B0", "left", 340],
      // At least 56 points go over, so that no line or two stand alone: three of 20.
      ["B1", "right", 0],
      ["B2", "right", 20],
      ["B3", "right", 40],
    ]);
    const [other] = pagesOf([unit("A", 200, 0), unit("B", 180, 8), unit("C", 20, 0), FULL]);
    expect(other?.find(([name]) => name === "B")).toEqual(["B", "right", 0]);
  });

  test("are never on two pages", () => {
    const units = Array.from({ length: 12 }, (_, i) => unit("ABCDEFGHIJKL"[i] ?? "", 90 + 13 * i, 2 + (i % 5)));
    const pages = pagesOf(units).map((page) => new Set(page.map(([name]) => String(name)[0])));
    expect(pages.length).toBeGreaterThan(3);
    for (const [i, page] of pages.entries())
      for (const other of pages.slice(i + 1)) for (const name of page) expect(other.has(name)).toBe(false);
  });

  test("whose lines all keep together are cut all the same where they are longer than a page", () => {
    const kept = unit("A", 100, 34).map((atom) => ({ ...atom, keep: true }));
    const [page, more] = pagesOf([kept]);
    expect(page?.filter(([, column]) => column === "left")).toHaveLength(16);
    expect(page?.filter(([, column]) => column === "right")).toHaveLength(19);
    expect(more).toBeUndefined();
  });

  test("end at about the same height on the last page", () => {
    const [page] = pagesOf([unit("A", 100, 0), unit("B", 100, 0), unit("C", 100, 0), unit("D", 100, 0)]);
    expect(page?.map(([name, column]) => `${name} ${column}`)).toEqual(["A left", "B left", "C right", "D right"]);
  });

  test("stand below what is set over the width", () => {
    const [page] = pagesOf([unit("A", 100, 0)], [named("H", 40, true)]);
    expect(page).toEqual([
      ["H", "left", 0],
      ["A", "left", 50],
    ]);
  });

  // By hand: side by side A and B leave 400 − 220 − 20 = 160 of both columns. C is 240 high: no column of 160 holds it, but
  // its head of 100 and the two lines of 20 that keep together stand at the left, and five lines at the right.
  test("stand in bands where a page holds one more by that", () => {
    const [page, more] = pagesOf([unit("A", 220, 0), unit("B", 220, 0), [named("C", 100), ...unit("c", 20, 6)], FULL]);
    expect(page?.slice(0, 6)).toEqual([
      ["A", "left", 0],
      ["B", "right", 0],
      ["C", "left", 240],
      ["c", "left", 340],
      ["c0", "left", 360],
      ["c1", "right", 240],
    ]);
    expect(more?.[0]?.[0]).toBe("Z");
  });

  test("take up less only where one more goes in by that, and only those that must", () => {
    const units = [unit("A", 250, 0), unit("B", 250, 0), unit("C", 150, 0), unit("D", 150, 0), FULL];
    const smaller = [200, 200, 130, 130].map((height, i) => unit("ABCD"[i] ?? "", height, 0));
    const columns = { gap: GAP, between: 20, units, tighter: (i: number) => smaller[i] ?? null };
    const set = flow([{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns }], frame);
    const [page] = set.map(({ items }) => textsOf(items).map(({ text, y }) => [text, y - frame.y]));
    // 250 + 20 + 150 is 420: of each column one has to give, and the one that comes first stays where the other does.
    expect(page?.map(([name]) => name)).toEqual(["A", "B", "C", "D"]);
    const plain = flow(
      [
        {
          name: "a",
          title: "a",
          kind: "a",
          start: "fits",
          atoms: [],
          columns: { ...columns, units: units.slice(0, 2) },
        },
      ],
      frame,
    );
    expect(textsOf(plain[0]?.items ?? [])).toHaveLength(2);
  });

  test("take up least only where less does not do", () => {
    const units = [unit("A", 250, 0), unit("B", 250, 0), unit("C", 150, 0), unit("D", 150, 0), FULL];
    const heightsFor = (least: number, less: number): readonly (readonly [string, number])[] => {
      const sizes = { less, least };
      const tighter = (i: number, how: "less" | "least") =>
        i < 4 ? unit("ABCD"[i] ?? "", i < 2 ? sizes[how] : 140, 0) : null;
      const columns = { gap: GAP, between: 20, units, tighter };
      const [page] = flow([{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns }], frame);
      return textsOf(page?.items ?? []).map(({ text, y }) => [text, y - frame.y] as const);
    };
    expect(heightsFor(150, 200).map(([name]) => name)).toEqual(["A", "B", "C", "D"]);
    // Where less is too much still, the least goes in.
    expect(heightsFor(150, 245).map(([name]) => name)).toEqual(["A", "B", "C", "D"]);
    expect(heightsFor(245, 245).map(([name]) => name)).toHaveLength(2);
  });

  test("what goes over is tied to where it began", () => {
    const tie = (width: number) => named(`tie ${width}`, 0);
    const units = [[named("A", 100), ...unit("a", 20, 6)], FULL];
    const columns = { gap: GAP, between: 20, units, tie, tied: 12 };
    const [page] = flow(
      [{ name: "a", title: "a", kind: "a", start: "fits", atoms: [named("H", 200)], columns }],
      frame,
    );
    const told = textsOf(page?.items ?? []).map(({ text, y }) => [text, y - frame.y]);
    const top = told.find(([text]) => text === "A")?.[1] as number;
    expect(told).toContainEqual(["tie 500", top]);
    // 190 are left; a2 would still go in at the left, but the right column would be less than half as high: 12 and three lines.
    expect(told).toContainEqual(["a1", top + 12]);
  });

  test("what goes over and is not the first of both columns is named where it goes on", () => {
    const again = (i: number) => named(`again ${i}`, 32);
    const tie = (width: number) => named(`tie ${width}`, 0);
    const units = [unit("A", 200, 0), unit("B", 100, 6), unit("C", 200, 0), FULL];
    const columns = { gap: GAP, between: 20, units, tie, tied: 12, again };
    const [page] = flow([{ name: "a", title: "a", kind: "a", start: "fits", atoms: [], columns }], frame);
    const told = textsOf(page?.items ?? []).map(({ text, x, y }) => [text, x === frame.x, y - frame.y]);
    expect(told.map(([text]) => text)).not.toContain("tie 500");
    expect(told).toContainEqual(["again 1", false, 0]);
    expect(told).toContainEqual(["B3", false, 32]);
  });

  test("a heading never stands alone above columns that do not begin below it", () => {
    // 400 − 40 − 20 above: 250 would go into what is left without the 10 between, and not with it.
    const long = { name: "b", title: "b", kind: "b", start: "fits" as const, atoms: [named("H", 40, true)] };
    const first = { name: "a", title: "a", kind: "a", start: "page" as const, atoms: [named("A", 90)] };
    const pages = (height: number) =>
      flow([first, { ...long, columns: { gap: GAP, between: 20, units: [unit("B", height, 0), FULL] } }], frame);
    const free = 400 - 90 - 40;
    for (let height = free - 60; height <= free; height++)
      for (const { items } of pages(height)) {
        const names = textsOf(items).map(({ text }) => text);
        if (names.includes("H")) expect(names).toContain("B");
      }
  });
});
