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
});
