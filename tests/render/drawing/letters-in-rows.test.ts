/** Which of many holes alike have their letter. */
import { expect, test } from "vitest";
import { boredBoard } from "./fixture/bored-board.ts";
import { bored } from "./fixture/making.ts";
import { texts } from "./look.ts";

const turned = (items: Parameters<typeof texts>[0]) => texts(items).filter(({ turn }) => turn === 90);

// Their order in the list of holes is not that on the wood.
test("of many holes alike those at both ends of the row and one in the middle have the letter", () => {
  const along = [11, 3.5, 20, 7, 1, 15.25, 18];
  const made = boredBoard(along.map((x) => bored(x, 1)));
  const scale = made.points * 406_400;
  const start = Math.min(...turned(made.items).map(({ x }) => x));
  const at = texts(made.items).filter(({ text, font }) => text === "a" && font === "italic");
  const near = at.map(
    ({ x }) => along.toSorted((p, q) => Math.abs(start + p * scale - x) - Math.abs(start + q * scale - x))[0],
  );
  expect(near.toSorted((p = 0, q = 0) => p - q)).toEqual([1, 11, 20]);
});
