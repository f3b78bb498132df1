import { expect, test } from "vitest";
import { cutClosely, stack } from "../../../src/render/typeset/stack.ts";
import { named } from "./units.ts";

// By hand: ten lines of 20 with 8 above all but the first are 272; with 2 above, 218.
const ten = stack(Array.from({ length: 10 }, (_, i) => ({ ...named(`${i}`, 20), above: 8 })));
const linesOf = (height: number) => cutClosely(ten, height, 2).map((part) => part?.atoms.length ?? 0);

test("what would leave a line for another page is set closer, and what is long is cut", () => {
  expect(linesOf(272)).toEqual([10, 0]);
  expect(linesOf(271)).toEqual([10, 0]);
  expect(linesOf(218)).toEqual([10, 0]);
  expect(linesOf(217)).toEqual([8, 2]);
  expect(cutClosely(ten, 272, 2)[0].height).toBe(272);
  expect(cutClosely(ten, 271, 2)[0].height).toBe(218);
});
