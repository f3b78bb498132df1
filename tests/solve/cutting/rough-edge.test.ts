import { describe, expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import type { Bought, Stock } from "../../../src/solve/design.ts";
import { inches, toInches } from "../../../src/units/index.ts";
import { blank, board } from "./stock.ts";

const bought = (rough: boolean): Partial<Stock> => ({
  bought: {
    at: { start: 0, end: 1, line: 1, column: 1 },
    words: "4/4",
    thickness: inches(1),
    rough,
    planed: true,
    named: null,
  } as Bought,
});
const boards = (rough: boolean, width: [number, number]) => {
  const stock = board(inches(9), [inches(96)], { width: null, ...bought(rough) });
  const two = ["a", "b"].map((id) => blank(stock, id, inches(...width), inches(90)));
  return layOut([stock], two, inches(1, 8));
};

/** To straighten an edge of a rough board 1/4 in comes off (common practice, no source), and the cut that brings the other edge off takes 1/8: of 9 in are left 8 5/8. */
describe("two pieces of a rough board and the cut between them", () => {
  test("have 8 5/8 in: twice 4 1/4 and 1/8 fill them, and each is cut off", () => {
    const { layouts } = boards(true, [17, 4]);
    expect(layouts).toHaveLength(1);
    expect(layouts[0]?.cuts.filter(({ kind }) => kind === "rip")).toHaveLength(2);
  });
  test("of twice 4 5/16 and 1/8, 8 3/4 in, the last cut along would run in the board's own edge: they take two boards", () => {
    expect(boards(true, [69, 16]).layouts).toHaveLength(2);
  });
  test("what is as wide as is left without that cut has its other edge straightened later", () => {
    const stock = board(inches(9), [inches(96)], { width: null, ...bought(true) });
    const wide = layOut([stock], [blank(stock, "a", inches(35, 4), inches(90))], inches(1, 8));
    expect(wide.findings).toEqual([]);
    expect(wide.layouts).toHaveLength(1);
  });
  test("of twice 4 3/8 and 1/8, 8 7/8 in, take two boards, and one of what is sold with straight edges", () => {
    expect(boards(true, [35, 8]).layouts).toHaveLength(2);
    expect(boards(false, [35, 8]).layouts).toHaveLength(1);
  });
  test("the proof says so", () => {
    const said = (rough: boolean) => boards(rough, [17, 4]).proof[0]?.assumes ?? "";
    expect(said(true)).toContain("straightening an edge");
    expect(said(false)).not.toContain("straightening");
  });
});

// A part 7 1/4 in wide out of a board of 10 in: the kerf takes 1/8, and of a rough board 1/4 went to straighten the edge that it was ripped along.
test.each([
  [true, 10 - 0.25 - 7.25 - 0.125],
  [false, 10 - 7.25 - 0.125],
])("what is left beside a part of a board, rough: %s, is %d in wide", (rough, left) => {
  const stock = board(inches(10), [inches(96)], { width: null, ...bought(rough) });
  const one = blank(stock, "a", inches(29, 4), inches(60));
  const { offcuts = [] } = layOut([stock], [one], inches(1, 8)).layouts[0] ?? {};
  // What is cut off across is as wide as the board yet.
  expect(offcuts.map(({ width }) => toInches(width)).toSorted((a, b) => a - b)).toEqual([left, 10]);
});
