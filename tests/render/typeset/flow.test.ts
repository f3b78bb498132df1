import { describe, expect, test } from "vitest";
import { TYPE } from "../../../src/render/style.ts";
import { type Atom, block, list, paragraph } from "../../../src/render/typeset/atom.ts";
import { flow } from "../../../src/render/typeset/flow.ts";
import { table } from "../../../src/render/typeset/table.ts";
import { textsOf } from "../boxes.ts";
import { columns, frame, marks, rows, section } from "./pieces.ts";

const box = (height: number, keep = false): Atom => block(height, () => [], { keep });

describe("sections", () => {
  test("share a page where they fit, and begin a new one where they do not", () => {
    const pages = flow([section("a", [box(100)]), section("b", [box(200)]), section("c", [box(100)])], frame);
    expect(pages.map((p) => p.begins)).toEqual([["a", "b"], ["c"]]);
  });
  test("that go on over the page begin only where much of the page is free", () => {
    const long = Array.from({ length: 30 }, () => box(20));
    expect(flow([section("a", [box(100)]), section("b", long)], frame).map((p) => p.begins)).toEqual([["a", "b"], []]);
    expect(flow([section("a", [box(280)]), section("b", long)], frame)[0]?.begins).toEqual(["a", "b"]);
    expect(flow([section("a", [box(280)]), section("b", long.slice(0, 9))], frame)[0]?.begins).toEqual(["a"]);
    expect(flow([section("a", [box(320)]), section("b", long)], frame).map((p) => p.begins)).toEqual([
      ["a"],
      ["b"],
      [],
    ]);
  });
  test("begin on the page where their first lines come to stand", () => {
    const [tall, rest] = [box(300), Array.from({ length: 20 }, () => box(20))];
    const pages = flow([section("a", [box(200)]), section("b", [tall, ...rest])], frame);
    expect(pages.map((p) => p.begins)).toEqual([["a"], ["b"], []]);
  });
  test("stand closer where little would be left over for the last page", () => {
    // 340 + 32 + 40 is more than 400, 340 + 20 + 40 is not; and a box of 270 is worth a page.
    expect(flow([section("a", [box(340)]), section("b", [box(40)])], frame)).toHaveLength(1);
    expect(flow([section("a", [box(110)]), section("b", [box(270)])], frame)).toHaveLength(2);
  });
  test("are set closer, lists as well as tables, where only a few lines would go over", () => {
    const items = Array.from({ length: 18 }, () => "one line");
    // 18 lines of 16 and 17 times 6 between are 390; with 2 between they are 322.
    const all = list(items, TYPE.body, 300, { between: 6 });
    const end = section("c", [box(400)]);
    expect(flow([section("a", [box(36), ...all]), end], frame)).toHaveLength(2);
    expect(flow([section("a", [box(80), ...all]), end], frame)).toHaveLength(3);
  });
  test("stand closer where one goes in whole by that, on whichever page", () => {
    // 16 lines of 16 and 15 times 6 between are 346, with 2 between 286; with 32 above a box of 60 is too much, with 20 it is not.
    const all = list(
      Array.from({ length: 16 }, () => "one line"),
      TYPE.body,
      300,
      { between: 6 },
    );
    const ends = [box(400), box(300), box(300)].map((atom, i) => section(`end ${i}`, [atom], "page"));
    const begun = (height: number) =>
      flow([section("a", all), section("b", [box(height)]), ...ends], frame)[0]?.begins ?? [];
    expect(begun(60)).toEqual(["a", "b"]);
    expect(begun(120)).toEqual(["a"]);
  });
  test("may ask for a page of their own", () => {
    expect(flow([section("a", [box(20)]), section("b", [box(20)], "page")], frame)).toHaveLength(2);
  });
});

describe("what can be drawn lower", () => {
  const asked: number[] = [];
  const low = (height: number, least: number) => ({
    ...box(height),
    lower: (most: number) => {
      asked.push(Math.floor(most));
      return most < least ? null : box(least);
    },
  });
  const pagesOf = (above: number, atom: Atom) => flow([section("a", [box(above), box(20, true), atom])], frame).length;

  // By hand: of 400 points 200 are left, less the 20 of its heading.
  test("goes in at the foot of a page so, with its heading", () => {
    expect(pagesOf(200, low(180, 0))).toBe(1);
    expect(asked).toEqual([]);
    expect(pagesOf(200, low(220, 150))).toBe(1);
    expect(asked).toEqual([180]);
  });
  test("stays as it is where that is too low to be read, or where it would lose something", () => {
    asked.length = 0;
    // 180 of 288 are less than two thirds.
    expect(pagesOf(200, low(288, 100))).toBe(2);
    expect(asked).toEqual([]);
    expect(pagesOf(200, low(220, 188))).toBe(2);
    expect(new Set(asked)).toEqual(new Set([180]));
  });
  test("lets a section begin on a page that has room for it so", () => {
    const long = [low(220, 150), box(300)];
    expect(flow([section("a", [box(168)]), section("b", long)], frame).map(({ begins }) => begins)).toEqual([
      ["a", "b"],
      [],
    ]);
  });
});

test("a heading goes with what follows, and a clump larger than a page is split", () => {
  const pages = flow([section("a", [box(380), box(20, true), box(40)])], frame);
  expect(pages).toHaveLength(2);
  expect(flow([section("a", [box(300, true), box(300, true), box(300)])], frame)).toHaveLength(3);
});

test("a paragraph leaves no line alone at the foot or the head of a page", () => {
  const text = "word ".repeat(60).trim();
  const lines = paragraph(text, TYPE.body, 300).length;
  expect(lines).toBeGreaterThan(4);
  for (let filled = 300; filled <= 400; filled += 4) {
    const pages = flow([section("a", [box(filled), ...paragraph(text, TYPE.body, 300)])], frame);
    const counts = pages.map((p) => textsOf(p.items).length).filter((n) => n > 0);
    expect(counts.reduce((a, b) => a + b, 0)).toBe(lines);
    for (const count of counts) expect(count).toBeGreaterThan(1);
  }
});

describe("a table over several pages", () => {
  for (let filled = 0; filled <= 400; filled += 20)
    test(`below ${filled} points: heads repeat, every row is there once, none stands alone`, () => {
      const atoms = table({ columns, rows: rows(40), width: 300 });
      const pages = flow([section("a", [box(filled), ...atoms])], frame);
      expect(pages.flatMap((p) => marks(p.items))).toEqual(rows(40).map(([mark]) => mark));
      for (const page of pages) {
        const own = marks(page.items);
        if (own.length === 0) continue;
        expect(own.length).toBeGreaterThan(1);
        expect(textsOf(page.items).filter((t) => t.text === "Length")).toHaveLength(1);
        for (const t of textsOf(page.items)) expect(t.y).toBeLessThan(frame.y + frame.height);
      }
    });

  test("under its headings too no row stands alone, unless the heading has but one", () => {
    const groups = [5, 1, 4, 3, 7, 2, 6].map((count, g) => [
      `group ${g}`,
      ...rows(count).map(([m = "", ...more]) => [`${m}.${g}`, ...more]),
    ]);
    for (let filled = 0; filled <= 400; filled += 4) {
      const pages = flow([section("a", [box(filled), ...table({ columns, rows: groups.flat(), width: 300 })])], frame);
      for (const { items } of pages)
        for (const [g, group] of groups.entries()) {
          const own = marks(items).filter((mark) => mark.endsWith(`.${g}`)).length;
          if (own > 0) expect(own, `${filled}, group ${g}`).toBeGreaterThanOrEqual(Math.min(2, group.length - 1));
        }
    }
  });

  test("neither its first nor its last row stands alone, though a heading of its own stands above each", () => {
    const each = rows(20).flatMap((row, i) => [`group ${i}`, row]);
    for (let filled = 0; filled <= 400; filled += 4) {
      const pages = flow([section("a", [box(filled), ...table({ columns, rows: each, width: 300 })])], frame);
      const counts = pages.map(({ items }) => marks(items).length).filter((count) => count > 0);
      expect(Math.min(...counts), `${filled}`).toBeGreaterThan(1);
    }
  });

  test("draws in two rows that would go over, whatever stands below it", () => {
    const over = Array.from({ length: 20 }, (_, i) => {
      const atoms = table({ columns, rows: rows(i + 10), width: 300 });
      return marks(flow([section("a", [...atoms, box(250)]), section("b", [box(400)])], frame)[1]?.items ?? []).length;
    });
    expect(over).toContain(0);
    expect(over).not.toContain(2);
    expect(Math.max(...over)).toBeGreaterThan(2);
  });

  test("is one table on each page, in the structure too", () => {
    const pages = flow([section("a", table({ columns, rows: rows(40), width: 300 }))], frame);
    for (const { items } of pages) {
      expect(items.map((item) => item.kind === "group" && item.role)).toEqual(["table"]);
      const [first] = items;
      if (first?.kind !== "group") throw new Error("no table");
      const heads = first.items.filter(
        (row) => row.kind === "group" && row.role === "row" && JSON.stringify(row).includes('"header cell"'),
      );
      expect(heads).toHaveLength(1);
    }
  });
});

test("whole numbers end and fractions begin on one line", () => {
  const items = table({
    columns,
    rows: [
      ["a", "b", "9\u202f1⁄2"],
      ["a", "b", "120"],
      ["a", "b", "3⁄4"],
    ],
    width: 300,
  });
  const texts = items.flatMap((atom) => textsOf(atom.paint(0, 0)));
  const at = (text: string) => texts.find((t) => t.text === text) as (typeof texts)[number];
  expect(at("9\u202f").x + at("9\u202f").width).toBeCloseTo(at("1⁄2").x, 6);
  expect(at("120").x + at("120").width).toBeCloseTo(at("1⁄2").x, 6);
  expect(at("3⁄4").x).toBeCloseTo(at("1⁄2").x, 6);
});

test("columns fit the width whatever stands in them", () => {
  const long = ["M1", "a name of many words ".repeat(12), "w".repeat(90)];
  for (const width of [120, 200, 300, 500]) {
    const atoms = table({ columns: [{ head: "Mark" }, { head: "Part" }, { head: "Notes" }], rows: [long], width });
    for (const atom of atoms)
      for (const t of textsOf(atom.paint(0, 0))) expect(t.x + t.width).toBeLessThanOrEqual(width + 0.02);
  }
});

test("a cell of very many lines goes on over the page", () => {
  const rowsOf = [
    ["M1", "word ".repeat(900), "1"],
    ["M2", "x", "2"],
  ];
  const pages = flow([section("a", table({ columns, rows: rowsOf, width: 300 }))], frame);
  expect(pages.length).toBeGreaterThan(1);
  const words = pages
    .flatMap((p) => textsOf(p.items))
    .flatMap((t) => t.text.split(" "))
    .filter((w) => w === "word");
  expect(words).toHaveLength(900);
  for (const p of pages) for (const t of textsOf(p.items)) expect(t.y).toBeLessThan(frame.y + frame.height);
});

test("items of a list are in the structure, with their signs outside it", () => {
  const [page] = flow([section("a", list(["one", "two"], TYPE.body, 300))], frame);
  const [group] = page?.items ?? [];
  if (group?.kind !== "group") throw new Error("no list");
  expect(group.role).toBe("list");
  expect(group.items.map((item) => item.kind === "group" && item.role)).toEqual(["list item", "list item"]);
  expect(textsOf(group.items).map((t) => t.text)).toEqual(["one", "two"]);
});
