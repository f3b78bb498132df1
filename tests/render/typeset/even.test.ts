import { describe, expect, test } from "vitest";
import { named, pagesOf, unit } from "./units.ts";

/** Both columns full. */
const page = (name: string) => [named(name, 400), named("", 400)];
const many = (names: string) => [...names].map((name) => unit(name, 180, 0));

describe("white space is shared out among pages", () => {
  // By hand: two of 180 go below each other in a column of 400. A to D fill a page, E is alone before F, which fills one.
  test("where one would have little on it, and no page is added for that", () => {
    expect(pagesOf({ units: [...many("ABCDE"), page("F"), page("G")] })).toEqual(["ABC", "DE", "F", "G"]);
  });

  test("over several pages", () => {
    expect(pagesOf({ units: [...many("ABCDEFGHI"), page("J"), page("K")] })).toEqual(["ABC", "DEF", "GHI", "J", "K"]);
  });

  test("but not with the last one, below which something else may go", () => {
    expect(pagesOf({ units: many("ABCDE") })).toEqual(["ABCD", "E"]);
  });

  // E to G fill half a page: 96 more for each leaves 112 of 800.
  test("and not where pictures take it up", () => {
    const units = [...many("ABCD"), ...[..."EFG"].map((name) => unit(name, 120, 0)), page("H"), page("I")];
    const taller = () => ({ most: 600, by: () => null });
    expect(pagesOf({ units })).toEqual(["ABC", "DEFG", "H", "I"]);
    expect(pagesOf({ units, taller })).toEqual(["ABCD", "EFG", "H", "I"]);
  });

  // A over both columns is 150 high, B beside C 180: D goes below them no more, but beside E to G, whose pictures take up the white else.
  test("and so that a head that is crowded in its column stands over both", () => {
    const more = [unit("E", 100, 0), unit("F", 100, 0), unit("G", 200, 0)];
    const units = [...many("ABCD"), ...more, page("H"), page("I")];
    const taller = (i: number) => (i > 3 && i < 7 ? { most: 96, by: () => null } : null);
    const wide = (i: number) => (i === 0 ? [{ head: named("a", 150), below: [], larger: 2 }] : []);
    const crowded = (i: number): number => (i === 0 ? 0.75 : 0);
    expect(pagesOf({ units, wide, taller })).toEqual(["ABCD", "EFG", "H", "I"]);
    expect(pagesOf({ units, wide, taller, crowded })).toEqual(["aBC", "DEFG", "H", "I"]);
  });

  test("which it does beside another like it that has no room for that, the one sooner that others are told by", () => {
    const wide = (i: number) => (i < 2 ? [{ head: named(i === 0 ? "a" : "b", 190), below: [], larger: 2 }] : []);
    const like = (i: number): number | null => (i === 1 ? 0 : null);
    const crowded = (i: number): number => (i < 2 ? 0.75 : 0);
    const units = [...many("AB"), page("F")];
    expect(pagesOf({ units, wide, like })).toEqual(["AB", "F"]);
    expect(pagesOf({ units, wide, like, crowded })).toEqual(["aB", "F"]);
  });
});

// By hand: A over both columns is 200 high, with four lines below it in two columns of 40; B, of 180, goes below that no more.
test("a page ends sooner for what is crowded and tells much", () => {
  const units = [unit("A", 180, 4), unit("B", 180, 9), page("F")];
  const wide = (i: number) => (i === 0 ? [{ head: named("a", 200), below: unit("V", 20, 4), larger: 2 }] : []);
  const crowded = (i: number): number => (i === 0 ? 0.75 : 0);
  expect(pagesOf({ units, wide, crowded, tells: () => 1 })).toEqual([expect.stringMatching(/^A.*B/u), "F"]);
  expect(pagesOf({ units, wide, crowded, tells: () => 2 })).toEqual([
    expect.stringMatching(/^aV[V\d]*$/u),
    expect.stringMatching(/^B/u),
    "F",
  ]);
});

// Either goes over both columns beside the other, and not both.
test("of two heads that gain as much, the one that tells more stands over both columns", () => {
  const wide = (i: number) => (i < 2 ? [{ head: named(i === 0 ? "a" : "b", 190), below: [], larger: 2 }] : []);
  const units = [...many("AB"), page("F")];
  const tells = (rich: number) => (i: number) => (i === rich ? 2 : 1);
  expect(pagesOf({ units, wide, tells: tells(0) })).toEqual(["aB", "F"]);
  expect(pagesOf({ units, wide, tells: tells(1) })).toEqual(["Ab", "F"]);
});
