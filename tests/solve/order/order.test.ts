import { describe, expect, test } from "vitest";
import { orderOfWork, type Plan, type Union } from "../../../src/solve/build/order/index.ts";
import type { Design } from "../../../src/solve/design.ts";
import { arrangement, type Box, fastener, joint, part, piece, screwed } from "./pieces.ts";
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

/** Four posts 40 mm square, 400 high, at the corners of 600 by 300, with tenoned rails all round. */
function frame(): Design {
  const corners = new Map<string, readonly [number, number]>([
    ["lf", [0, 0]],
    ["rf", [560, 0]],
    ["lb", [0, 260]],
    ["rb", [560, 260]],
  ]);
  const rails = [
    { id: "front-rail", ends: ["lf", "rf"], across: true },
    { id: "back-rail", ends: ["lb", "rb"], across: true },
    { id: "left-rail", ends: ["lf", "lb"], across: false },
    { id: "right-rail", ends: ["rf", "rb"], across: false },
  ] as const;
  /** 20 mm into the post. The mortises of the two directions lie one above the other. */
  const tenon = (post: string, across: boolean): Box => {
    const [x, y] = corners.get(post) ?? [0, 0];
    const [from, z] = [(across ? x : y) === 0 ? 20 : 0, across ? 302 : 332];
    return across
      ? [
          [x + from, y + 15, z],
          [x + from + 20, y + 25, z + 26],
        ]
      : [
          [x + 15, y + from, z],
          [x + 25, y + from + 20, z + 26],
        ];
  };
  const railOf = ({ id, ends, across }: (typeof rails)[number]) => {
    const [[x0, y0], [x1, y1]] = ends.map((end) => corners.get(end) ?? [0, 0]) as [[number, number], [number, number]];
    const bar: Box = across
      ? [
          [x0 + 40, y0 + 10, 300],
          [x1, y1 + 30, 360],
        ]
      : [
          [x0 + 10, y0 + 40, 300],
          [x1 + 30, y1, 360],
        ];
    return part(id, [bar, ...ends.map((end) => tenon(end, across))]);
  };
  const posts = [...corners].map(([id, [x, y]]) => {
    const mortises = rails
      .filter(({ ends }) => (ends as readonly string[]).includes(id))
      .map(({ across }) => tenon(id, across));
    return part(
      id,
      [
        [x, y, 0],
        [x + 40, y + 40, 400],
      ],
      mortises,
    );
  });
  const joints = rails.flatMap(({ id, ends, across }) =>
    ends.map((end, i) => {
      const way = i === 0 ? -1 : 1;
      return joint(id, end, { method: "mortise and tenon", insertion: across ? [way, 0, 0] : [0, way, 0] });
    }),
  );
  return piece([...posts, ...rails.map(railOf)], joints);
}

test("rails tenoned in two directions: the short ends are built first, as units", () => {
  const whole = root(frame());
  expect(spelled(whole)).toBe("(((((lf < left-rail) < lb) < front-rail) < back-rail) < ((rf < right-rail) < rb))");
  expect(whole.along).toEqual([-1, 0, 0]);
  expect(whole.sliding).toEqual([]);
});

describe("a bookcase", () => {
  const dado = (x: number, z: number): Box => [
    [x, 0, z],
    [x + 6, 250, z + 18],
  ];
  const heights = [100, 400, 700];
  const parts = [
    part(
      "left-side",
      [
        [0, 0, 0],
        [18, 250, 900],
      ],
      heights.map((z) => dado(12, z)),
    ),
    part(
      "right-side",
      [
        [582, 0, 0],
        [600, 250, 900],
      ],
      heights.map((z) => dado(582, z)),
    ),
    ...heights.map((z, i) =>
      part(`shelf.${i + 1}`, [
        [12, 0, z],
        [588, 250, z + 18],
      ]),
    ),
    part("back", [
      [0, 250, 0],
      [600, 256, 900],
    ]),
  ];
  const shelves = heights.flatMap((_, i) => [
    joint(`shelf.${i + 1}`, "left-side", { method: "dado", insertion: [-1, 0, 0] }),
    joint(`shelf.${i + 1}`, "right-side", { method: "dado", insertion: [1, 0, 0] }),
  ]);
  const nailed = ["left-side", "right-side"].map((side, i) =>
    joint("back", side, {
      method: "nails",
      glue: false,
      arrangements: [
        arrangement(
          fastener({
            id: `n${i}`,
            kind: "nail",
            at: [i === 0 ? 9 : 591, 256, 450],
            direction: [0, -1, 0],
            through: "back",
            into: side,
            length: 30,
          }),
        ),
      ],
    }),
  );
  const bookcase = piece(parts, [...shelves, ...nailed]);

  test("closes its dados squarely and gets its back last", () => {
    const whole = root(bookcase);
    expect(spelled(whole)).toBe("(((((left-side < shelf.1) < shelf.2) < shelf.3) < right-side) < back)");
    expect(whole.work.flatMap(({ drives }) => drives.map(({ tool }) => tool))).toEqual(["hammer", "hammer"]);
    for (let body = whole.staying; body.kind === "union"; body = body.staying) expect(body.sliding).toEqual([]);
  });

  test("has the same plan whatever was solved before", () => {
    const before = JSON.stringify(planOf(bookcase).root, (_, v) => (typeof v === "bigint" ? String(v) : v));
    planOf(frame());
    expect(JSON.stringify(planOf(bookcase).root, (_, v) => (typeof v === "bigint" ? String(v) : v))).toBe(before);
  });
});

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
