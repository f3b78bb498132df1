/** The part of a sheet or board that its layout uses, against arithmetic by hand: kerf 1/8 in, 1/8 in squared off two edges of a sheet. */
import { expect, test } from "vitest";
import { layOut } from "../../../src/solve/build/cutting/lay-out.ts";
import { enoughOf, sayEnough } from "../../../src/solve/build/enough.ts";
import type { Stock } from "../../../src/solve/design.ts";
import { inches, type Length, sayLength } from "../../../src/units/index.ts";
import { blank, board, sheet } from "./stock.ts";

const PLY = sheet(inches(48), inches(96));
const PINE = board(inches(7), [inches(96)], { bought: { rough: true } as never });
const KERF = inches(1, 8);
const print = (length: Length): string => sayLength(length, { units: "inch" });

const said = (stock: Stock, sizes: readonly (readonly [number, number])[], from: string | null = null) => {
  const blanks = sizes.map(([wide, long], i) => blank(stock, `p${i}`, inches(wide), inches(long)));
  const { layouts } = layOut([stock], blanks, KERF);
  const enough = enoughOf(stock, layouts, [{ id: "jig 1", from }], "inch");
  return enough && sayEnough(enough, layouts.length, print);
};

// 1/8 + 20 + 1/8 = 20 1/4; 1/8 + 30 + 1/8 = 30 1/4.
test("of a sheet the corner that is used, its squared edges and the kerfs beyond it", () => {
  expect(said(PLY, [[20, 30]])).toBe("a piece 21 in wide and 31 in long, along the grain, is enough");
});

// One end trimmed by 1/4 and a kerf: 3/8 + 30 + 1/8 = 30 1/2. 3 + 1/8 + 1/4 for a straight edge = 3 3/8.
test("of a rough board its trimmed end and its straightened edge too", () => {
  expect(said(PINE, [[3, 30]])).toBe("a piece 4 in wide and 31 in long, along the grain, is enough");
});

test("of several, that of which the least is used, by its number", () => {
  expect(
    said(PLY, [
      [47, 95],
      [10, 20],
    ]),
  ).toBe("for sheet 2 a piece 11 in wide and 21 in long, along the grain, is enough");
});

test("nothing is said where more than half is used", () => {
  expect(said(PLY, [[47, 50]])).toBeNull();
});

test("a jig that the layouts have room for beside it needs wood of its own", () => {
  expect(said(PLY, [[20, 30]], PLY.name)).toMatch(/is enough, besides an offcut of something as thick for jig 1$/u);
});

test("a sheet without a grain has none to mind", () => {
  expect(said(sheet(inches(48), inches(96), { grainless: true }), [[20, 30]])).toBe(
    "a piece 21 in wide and 31 in long is enough",
  );
});
