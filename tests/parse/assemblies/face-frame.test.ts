import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { orderOfWork } from "../../../src/solve/build/order/order-of-work.ts";
import type { Assembly } from "../../../src/solve/build/order/plan.ts";
import { toInches } from "../../../src/units/length.ts";
import { said } from "../../examples/compiled.ts";
import { designOf, soundDesign } from "../../solve/design/plan.ts";

/** A cabinet of 30 × 20 × 30 behind a frame of 2 in. */
const framed = (openings: string, more = "") => `plan: 1
title: Framed cabinet
units: inch
outside: { width: 30, depth: 20, height: 30 }
stock:
  ply: { sold as: 3/4 plywood, measures: 3/4 }
  show: { wood: hard maple, sold as: 4/4, planed to: 3/4 }
piece:
  frame:
    kind: face-frame
    made of: show
    stiles: 2
    case: cabinet
    ${openings}
  cabinet: { kind: case, behind: frame.left-stile, made of: ply${more} }
`;
const rows = "openings: { down: [{ high: 6, across: [equal, { divider: stile, wide: 3 }, equal] }, the rest] }";

describe("a face frame", () => {
  const place = (text: string, id: string): readonly number[] => {
    const part = soundDesign(text).parts.find((each) => each.id === id);
    if (!part) throw new Error(`no part ${id}`);
    return [0, 2].flatMap((axis) => [part.body.low[axis as 0 | 2], part.body.high[axis as 0 | 2]].map(toInches));
  };
  const ids = (text: string): readonly string[] => soundDesign(text).parts.map(({ id }) => id);

  test("without openings is four members round one", () => {
    expect(ids(framed("")).filter((id) => id.startsWith("frame."))).toEqual(
      ["left-stile", "right-stile", "top-rail", "bottom-rail"].map((name) => `frame.${name}`),
    );
  });

  // 30 − 2 − 6 = 22 is the upper edge of the rail; (30 − 2 × 2 − 3) / 2 = 11 1/2 lies on each side of the stile.
  test("with a row of openings above one has a rail, and a stile between the rails", () => {
    expect(place(framed(rows), "frame.rail-1")).toEqual([2, 28, 20, 22]);
    expect(place(framed(rows), "frame.opening-1-stile-1")).toEqual([13.5, 16.5, 22, 28]);
  });

  test("a case behind it has a panel in the middle of the stile, and one level with the rail", () => {
    const text = framed(rows, ", join: { with: dado, deep: 1/4 }, openings: { behind: frame }");
    // Without what is let in: between the shelf at 22 and the top panel at 30 − 3/4, and between the sides.
    expect(place(text, "cabinet.opening-1-divider-1")).toEqual([14.625, 15.375, 22, 29.25]);
    expect(place(text, "cabinet.divider-1")).toEqual([0.75, 29.25, 21.25, 22]);
    expect(ids(framed(rows)).filter((id) => id.includes("divider"))).toEqual([]);
  });

  test("its shelves are those of the case", () => {
    const shelves = rows.replace("the rest", "{ shelves: 2 }");
    const text = framed(shelves, ", openings: { behind: frame }");
    expect(ids(text).filter((id) => id.includes("shelf"))).toEqual([
      "cabinet.opening-2-shelf-1",
      "cabinet.opening-2-shelf-2",
    ]);
  });

  test("what is no frame with openings is told", () => {
    for (const [openings, name] of [
      ["", "frame"],
      [rows, "fram"],
    ] as const) {
      const { findings } = designOf(framed(openings, `, openings: { behind: ${name} }`));
      expect(said(findings).join("\n")).toMatch(/a face frame with `openings`/);
    }
  });
});

/** The piece that the reference shows, of 32 × 18 × 34: a top, a plinth, a case and a frame. */
const shown = /\*\*A face frame\*\*[\s\S]*?\n\n((?: {4}.*\n)+)/.exec(
  readFileSync(new URL("../../../scripts/docs/preface.md", import.meta.url), "utf8"),
)?.[1] as string;
const stood = (...changes: readonly (readonly [string, string])[]) =>
  changes.reduce(
    (text, [from, to]) => {
      if (!text.includes(from)) throw new Error(`no ${from}`);
      return text.replace(from, to);
    },
    `plan: 1
title: Framed cabinet
units: inch
outside: { width: 32, depth: 18, height: 34 }
stock:
  ply: { sold as: 3/4 plywood, measures: 3/4 }
  thin: { sold as: 1/4 plywood, measures: 1/4 }
  maple: { wood: hard maple, sold as: 4/4, planed to: 3/4 }
${shown.replaceAll(/^ {4}/gmu, "")}`,
  );
const boxes = (text: string, ids: readonly string[]) => {
  const { parts } = soundDesign(text);
  return ids.map((id) => {
    const { body } = parts.find((part) => part.id === id) ?? expect.fail(`no ${id}`);
    return [0, 1, 2].map((i) => [body.low[i as 0], body.high[i as 0]].map(toInches));
  });
};

describe("a face frame has the place of its case", () => {
  // Overhangs of 3/4 at both ends and in front; plinth of 3; top, frame and ply 3/4.
  const FRAME = ["frame.left-stile", "cabinet.left-side"];
  const BOXES = [
    [
      [0.75, 2.25],
      [0.75, 1.5],
      [3, 33.25],
    ],
    [
      [0.75, 1.5],
      [1.5, 18],
      [3, 33.25],
    ],
  ];
  test.each([
    ["as the reference shows it", []],
    ["behind: frame", [["kind: case,", "kind: case, behind: frame,"]]],
    ["behind: a stile", [["kind: case,", "kind: case, behind: frame.left-stile,"]]],
    ["in front of: cabinet", [["case: cabinet,", "case: cabinet, in front of: cabinet,"]]],
    [
      "both",
      [
        ["kind: case,", "kind: case, behind: frame,"],
        ["case: cabinet,", "case: cabinet, in front of: cabinet,"],
      ],
    ],
    ["the front of the case", [["kind: case,", "kind: case, front: 1 1/2,"]]],
  ] as const)("%s", (_, changes) => {
    expect(boxes(stood(...changes), FRAME)).toEqual(BOXES);
  });

  test("what is said of it comes first", () => {
    expect(boxes(stood(["case: cabinet,", "case: cabinet, left: 0,"]), ["frame.left-stile"])[0]?.[0]).toEqual([0, 1.5]);
  });

  test("its drawers are not meant by its name", () => {
    const drawer = "{ high: 8, drawer: { made of: ply, bottom: thin } }";
    const text = stood([" 8,", ` ${drawer},`], ["kind: case,", "kind: case, behind: frame,"]);
    const { findings } = designOf(text);
    expect(said(findings).join("\n")).not.toMatch(/circle/);
    expect(
      boxes(
        stood([
          "piece:",
          "piece:\n  rule: { kind: space, front: 0, back: frame.back, left: 0, right: 1, bottom: 0, top: 1 }",
        ]),
        FRAME,
      ),
    ).toEqual(BOXES);
  });

  test("a circle with the top is told in the names of the plan", () => {
    const { findings } = designOf(
      stood(
        ["case: cabinet,", "case: cabinet, front: worktop.footprint.front,"],
        ["kind: case,", "kind: case, front: 1,"],
      ),
    );
    expect(findings.map(({ message, help }) => [message, help])).toEqual([
      [
        "these need each other: frame → worktop → frame, from front to back",
        "leave out the `front` of frame, or give one of them its own measure",
      ],
    ]);
  });
});

test("parts in one place are told with the direction", () => {
  const { findings } = designOf(
    stood(["case: cabinet,", "case: cabinet, front: 2,"], ["kind: case,", "kind: case, front: 2 1/2,"]),
  );
  expect(findings[0]?.message).toBe(
    "frame.left-stile and cabinet.left-side are in the same place: they overlap by 1/4 in, from front to back",
  );
});

test("a frame with a drawer is put together by itself, with its pockets on the back", () => {
  const drawer = "{ high: 8, drawer: { made of: ply, bottom: thin, packing: maple, carries: 5 lb } }";
  const design = soundDesign(stood([" 8,", ` ${drawer},`], ["case: cabinet,", "case: cabinet, stiles: 1 1/2,"]));
  const { value: plan } = orderOfWork(design);
  const members = ["left-stile", "right-stile", "top-rail", "bottom-rail", "rail-1"].map((name) => `frame.${name}`);
  const pockets = (plan?.holes ?? []).filter(({ kind, part }) => kind === "pocket" && members.includes(part));
  // Two in each end of three rails.
  expect(pockets).toHaveLength(12);
  for (const { part, at } of pockets) expect(at[1]).toEqual(design.parts.find(({ id }) => id === part)?.body.high[1]);
  const bodies = (assembly: Assembly): readonly string[] => [
    assembly.parts.toSorted().join(),
    ...(assembly.kind === "union" ? [assembly.staying, assembly.moving].flatMap(bodies) : []),
  ];
  expect(plan && bodies(plan.root)).toContain(members.toSorted().join());
});

test("to be built as one, a frame is its stiles and rails, without the drawer in it", () => {
  const drawer = "{ high: 8, drawer: { made of: ply, bottom: thin, packing: maple, carries: 5 lb } }";
  const text = stood([" 8,", ` ${drawer},`], ["case: cabinet,", "case: cabinet, stiles: 1 1/2,"]);
  const { wishes } = soundDesign(`${text}order:\n  - { build as one: frame }\n`);
  expect(wishes).toMatchObject([
    {
      kind: "unit",
      parts: ["left-stile", "right-stile", "top-rail", "bottom-rail", "rail-1"].map((name) => `frame.${name}`),
    },
  ]);
});
