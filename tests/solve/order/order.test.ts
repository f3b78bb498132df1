import { describe, expect, test } from "vitest";
import { orderOfWork, type Plan, type Union } from "../../../src/solve/build/order/index.ts";
import type { Design } from "../../../src/solve/design.ts";
import { arrangement, type Box, fastener, joint, part, piece } from "./pieces.ts";
import { faults, spelled } from "./replay.ts";

/** The plan of a piece that must have one; its replay must be sound. */
function planOf(design: Design): Plan {
  const { value, findings } = orderOfWork(design);
  if (!value) throw new Error(findings.map(({ message }) => message).join("\n"));
  expect(faults(design, value)).toEqual([]);
  return value;
}
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
