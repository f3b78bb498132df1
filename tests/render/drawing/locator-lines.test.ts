import { expect, test } from "vitest";
import { joinedUp } from "../../../src/render/drawing/step/locator.ts";

test("an edge in many short runs is one line, whichever way each runs; what stands beside it is another", () => {
  const [line, other, ...more] = joinedUp([
    [
      [10, 0],
      [10, 1],
    ],
    [
      [10, 2],
      [10, 1],
    ],
    [
      [10, 2],
      [10, 3],
    ],
    [
      [14, 0],
      [14, 1],
    ],
  ]).map((run) => [...run].sort((a, b) => a[1] - b[1]));
  expect(line).toEqual([
    [10, 0],
    [10, 3],
  ]);
  expect(other).toEqual([
    [14, 0],
    [14, 1],
  ]);
  expect(more).toEqual([]);
});

test("runs with a gap stay apart", () => {
  expect(
    joinedUp([
      [
        [0, 0],
        [1, 1],
      ],
      [
        [3, 3],
        [4, 4],
      ],
    ]),
  ).toHaveLength(2);
});
