import { describe, expect, test } from "vitest";
import { orderOfWork, type Plan, type Union } from "../../../src/solve/build/order/index.ts";
import type { Design } from "../../../src/solve/design.ts";
import { type Box, joint, part, piece, screwed } from "./pieces.ts";
import { faults, spelled } from "./replay.ts";

/** The plan of a piece that must have one; its replay must be sound. */
function planOf(design: Design): Plan {
  const { value, findings } = orderOfWork(design);
  if (!value) throw new Error(findings.map(({ message }) => message).join("\n"));
  expect(faults(design, value)).toEqual([]);
  return value;
}
const messages = (design: Design): readonly string[] => orderOfWork(design).findings.map(({ message }) => message);
const root = (design: Design): Union => planOf(design).root as Union;

/** Walls around a room 60 mm high, closed below and above. */
function box(lidHeads: "outside" | "inside"): Design {
  const walls = part(
    "walls",
    [
      [0, 0, 18],
      [400, 300, 78],
    ],
    [
      [
        [18, 18, 18],
        [382, 282, 78],
      ],
    ],
  );
  const up = lidHeads === "inside";
  const lid = up ? screwed("walls", "lid", [0, 0, 1], [30, 150, 60]) : screwed("lid", "walls", [0, 0, -1], [9, 9, 96]);
  return piece(
    [
      part("bottom", [
        [0, 0, 0],
        [400, 300, 18],
      ]),
      walls,
      part("lid", [
        [0, 0, 78],
        [400, 300, 96],
      ]),
    ],
    [screwed("walls", "bottom", [0, 0, -1], [30, 150, 36]), lid],
  );
}

describe("a box whose bottom is screwed on from inside", () => {
  test("gets its lid last", () => expect(spelled(root(box("outside")))).toBe("((bottom < walls) < lid)"));
  test("cannot be closed by a lid that is screwed on from inside too, and the finding names the screw and what is in its way", () =>
    expect(messages(box("inside"))).toEqual([
      "no tool reaches the 40 mm wood screw between `walls` and `lid`: `bottom` is in the way",
    ]));
});

/** Two closed frames, one through the other like links of a chain. */
const links = (split: boolean): Design => {
  const ring = part(
    "ring",
    [
      [0, 0, 0],
      [300, 300, 20],
    ],
    [
      [
        [60, 60, 0],
        [240, 240, 20],
      ],
    ],
  );
  // Upright, through the opening of the first and round its front bar; touches it.
  const whole: Box = [
    [140, -100, -100],
    [160, 200, 100],
  ];
  const opening: Box = [
    [140, -40, -40],
    [160, 140, 40],
  ];
  if (!split) return piece([ring, part("link", whole, [opening])], [joint("ring", "link")]);
  const half = (id: string, z0: number, z1: number) =>
    part(
      id,
      [
        [140, -100, z0],
        [160, 200, z1],
      ],
      [
        [
          [140, -40, z0 < 0 ? -40 : 0],
          [160, 140, z0 < 0 ? 0 : 40],
        ],
      ],
    );
  return piece(
    [ring, half("link.below", -100, 0), half("link.above", 0, 100)],
    [joint("link.above", "link.below"), joint("ring", "link.above")],
    ["link"],
  );
};

describe("two frames, one through the other", () => {
  test("lock each other when both are whole", () =>
    expect(messages(links(false))).toEqual(["`ring` and `link` lock each other: none of them can be put in last"]));
  test("go together when one closes round the other, though its halves are a group", () => {
    const whole = root(links(true));
    expect(whole.parts).toEqual(["ring", "link.below", "link.above"]);
    expect(whole.moving.kind).toBe("part");
  });
});

test("parts that no joint ties are named", () =>
  expect(
    messages(
      piece(
        [
          part("a", [
            [0, 0, 0],
            [9, 9, 9],
          ]),
          part("b", [
            [9, 0, 0],
            [18, 9, 9],
          ]),
        ],
        [],
      ),
    ),
  ).toEqual(["`b` cannot be put together with `a`: no joint ties them"]));

test("a single part needs no order", () =>
  expect(
    planOf(
      piece(
        [
          part("a", [
            [0, 0, 0],
            [9, 9, 9],
          ]),
        ],
        [],
      ),
    ).root,
  ).toEqual({ kind: "part", parts: ["a"] }));

describe("groups of the source", () => {
  const bar = (id: string, x: number, z: number) =>
    part(id, [
      [x, 0, z],
      [x + 100, 20, z + 20],
    ]);
  const stacked = (groups: readonly string[]) =>
    piece(
      [bar("a.1", 0, 0), bar("b.1", 0, 20), bar("a.2", 100, 0), bar("b.2", 100, 20)],
      [joint("a.1", "b.1"), joint("a.2", "b.2"), joint("a.1", "a.2"), joint("b.1", "b.2")],
      groups,
    );
  test("are built as units", () => expect(spelled(root(stacked(["a", "b"])))).toBe("((a.1 < a.2) < (b.1 < b.2))"));
  test("are named in the plan", () => {
    const { staying, moving } = root(stacked(["a", "b"]));
    expect([staying, moving].map((unit) => unit.kind === "union" && unit.group)).toEqual(["a", "b"]);
  });
  test("are no units where they do not hang together", () => {
    const loose = piece(
      [bar("a.1", 0, 0), bar("b", 100, 0), bar("a.2", 200, 0)],
      [joint("a.1", "b"), joint("b", "a.2")],
      ["a"],
    );
    expect(spelled(root(loose))).toBe("((a.1 < b) < a.2)");
  });
});
