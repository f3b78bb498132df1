import { describe, expect, test } from "vitest";
import { orderOfWork } from "../../../src/solve/build/order/index.ts";
import type { Design, Direction, Part } from "../../../src/solve/design.ts";
import { arrangement, type Box, fastener, joint, part, piece, type Triple } from "./pieces.ts";
import { faults } from "./replay.ts";

/** A joint with one dowel 8 mm across that reaches 20 mm into each part; `middle` lies on the contact. */
const dowelled = (from: string, into: string, direction: Direction, middle: Triple) =>
  joint(from, into, {
    method: "dowels",
    arrangements: [
      arrangement(
        fastener({
          id: `${from}-${into}`,
          kind: "dowel",
          at: [middle[0] - 20 * direction[0], middle[1] - 20 * direction[1], middle[2] - 20 * direction[2]],
          direction,
          through: from,
          into,
        }),
      ),
    ],
  });

const message = (design: Design): string | undefined => orderOfWork(design).findings[0]?.message;

const alongOf = (design: Design): Direction | null => {
  const { value } = orderOfWork(design);
  expect(value && faults(design, value)).toEqual([]);
  return value?.root.kind === "union" ? value.root.along : null;
};

const mate = part("mate", [
  [80, 0, 0],
  [160, 40, 40],
]);
const dowel = dowelled("block", "mate", [1, 0, 0], [80, 20, 20]);
const joints = [joint("block", "seat"), joint("mate", "seat")];

describe("a block on a seat, and its mate beside it", () => {
  const block = part("block", [
    [0, 0, 0],
    [80, 40, 40],
  ]);
  const floor: Box = [
    [-20, -20, -20],
    [180, 60, 0],
  ];
  const walls: readonly Box[] = [
    [
      [-20, -20, 0],
      [0, 60, 40],
    ],
    [
      [160, -20, 0],
      [180, 60, 40],
    ],
  ];

  test("part along the dowel between them", () => {
    const chain = piece([part("seat", [floor]), block, mate], [joint("block", "seat"), dowel]);
    expect(alongOf(chain)).toEqual([-1, 0, 0]);
  });

  test("go in together where walls leave no room to part them", () =>
    expect(alongOf(piece([part("seat", [floor, ...walls]), block, mate], [...joints, dowel]))?.map(Math.abs)).toEqual([
      0, 0, 1,
    ]));

  test("are locked by dowels in three directions", () => {
    const back = part("seat", [
      floor,
      [
        [-20, 40, 0],
        [180, 60, 40],
      ],
    ]);
    const second = dowelled("block", "seat", [0, 1, 0], [40, 40, 20]);
    const third = dowelled("mate", "seat", [0, 0, -1], [120, 20, 0]);
    expect(message(piece([back, block, mate], [dowel, second, third]))).toContain("lock each other");
    expect(message(piece([back, block, mate], [dowel, second, joint("mate", "seat")]))).toBeUndefined();
  });
});

test("a dowel that stands out of its part must pass what is there already", () => {
  // The block has a foot in a pit and can only be let down; the mate comes from the right, under a bridge that is part of the seat.
  const block = part("block", [
    [0, 0, -20],
    [80, 40, 40],
  ]);
  const seat = (bridge: number): Part =>
    part("seat", [
      [
        [-20, -20, -40],
        [160, 80, -20],
      ],
      [
        [80, -20, -20],
        [160, 80, 0],
      ],
      [
        [-20, -20, -20],
        [0, 80, 0],
      ],
      [
        [0, -20, -20],
        [80, 0, 0],
      ],
      [
        [0, 40, -20],
        [80, 80, 0],
      ],
      [
        [bridge, 60, 0],
        [160, 80, 80],
      ],
      [
        [bridge, 0, 60],
        [160, 60, 80],
      ],
    ]);
  expect(message(piece([seat(110), block, mate], [...joints, dowel]))).toBeUndefined();
  expect(message(piece([seat(90), block, mate], [...joints, dowel]))).toContain("lock each other");
  expect(message(piece([seat(90), block, mate], [...joints, joint("block", "mate")]))).toBeUndefined();
});
