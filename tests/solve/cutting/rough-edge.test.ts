import { describe, expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import type { Bought, Stock } from "../../../src/solve/design.ts";
import { inches } from "../../../src/units/index.ts";
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

/** To straighten an edge of a rough board 1/4 in comes off (common practice, no source): of 9 in are left 8 3/4. */
describe("two pieces of a rough board and the cut between them", () => {
  test("have 8 3/4 in: twice 4 5/16 and 1/8 fill them", () => {
    expect(boards(true, [69, 16]).layouts).toHaveLength(1);
  });
  test("of twice 4 3/8 and 1/8, 8 7/8 in, take two boards, and one of what is sold with straight edges", () => {
    expect(boards(true, [35, 8]).layouts).toHaveLength(2);
    expect(boards(false, [35, 8]).layouts).toHaveLength(1);
  });
  test("the proof says so", () => {
    const said = (rough: boolean) => boards(rough, [69, 16]).proof[0]?.assumes ?? "";
    expect(said(true)).toContain("straightening an edge");
    expect(said(false)).not.toContain("straightening");
  });
});
