import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reach, toolFor, toolsFor } from "../../../src/solve/build/reach/index.ts";
import type { Tool } from "../../../src/solve/build.ts";
import type { Direction, Fastener, Part } from "../../../src/solve/design.ts";
import { type Box, fastener, part } from "../order/pieces.ts";
import { boxesOf } from "../order/replay.ts";
import { pointsOf } from "./points.ts";

const screw = (kind: Fastener["kind"] = "wood screw"): Fastener =>
  fastener({ id: "f", kind, at: [0, 0, 0], direction: [0, 1, 0], through: "cleat", into: "side" });

/** A plate in front of the head, `away` mm from it. */
const wall = (away: number): Part =>
  part("wall", [
    [-500, -away - 10, -500],
    [500, -away, 500],
  ]);

/** Whether the tool's cloud of points reaches into a part by more than `by` mm. */
const hits = (f: Fastener, tool: Tool, axis: Direction, body: readonly Part[], by: number): boolean => {
  const boxes = body.flatMap(boxesOf);
  return pointsOf(f, tool, axis).some((p) =>
    boxes.some(({ low, high }) => p.every((x, i) => x > (low[i] ?? 0) + by && x < (high[i] ?? 0) - by)),
  );
};

describe("room behind a head decides the tool", () => {
  test.each([
    [351, "straight"],
    [349, "angle"],
    [86, "angle"],
    [84, undefined],
  ] as const)("%d mm: %s", (away, tool) => expect(toolFor(screw(), [wall(away)])?.tool).toBe(tool));

  test("a stubby driver fits between parts that a drill's head does not pass", () => {
    // A gap 32 mm wide and 130 mm deep.
    const gap = [
      part("a", [
        [16, -300, -100],
        [40, 0, 100],
      ]),
      part("b", [
        [-40, -300, -100],
        [-16, 0, 100],
      ]),
      wall(130),
    ];
    expect(toolFor(screw(), gap)).toEqual({ tool: "stubby", axis: null });
  });

  // Beside the line of the screw a post begins, 100 mm away and 200 mm deep; farther up something keeps a short drill out.
  test.each([
    [7, "long"],
    [6, "angle"],
  ] as const)("an extension 13 mm thick passes a post %d mm beside its line: %s", (aside, tool) => {
    const post = part("post", [
      [aside, -300, -500],
      [aside + 60, -100, 500],
    ]);
    expect(toolFor(screw(), [post])?.tool).toBe(tool);
  });

  test.each([
    ["nail", 121, "hammer"],
    ["brad", 119, undefined],
  ] as const)("a %s with %d mm: %s", (kind, away, tool) => expect(toolFor(screw(kind), [wall(away)])?.tool).toBe(tool));

  test("dowels are not driven", () => {
    expect(toolFor(screw("dowel"), [])).toBeNull();
    expect(toolsFor("dowel")).toEqual([]);
  });
});

test("the parts that a screw goes through and into are in no tool's way", () => {
  const own = ["cleat", "side"].map((id) =>
    part(id, [
      [-500, -300, -500],
      [500, 300, 500],
    ]),
  );
  expect(toolFor(screw(), own)).toEqual({ tool: "straight", axis: null });
  expect(
    reach()
      .inTheWay(screw(), [...own, wall(100)])
      .map(({ id }) => id),
  ).toEqual(["wall"]);
});

test("a screw through the middle of a 3/4 in cleat under a shelf is driven with a long bit that leans", () => {
  // 10 mm from the shelf, in whole millimetres; a drill 60 mm across is 30 mm from its axis.
  const near = part("shelf", [
    [-300, -600, 10],
    [300, 0, 28],
  ]);
  const reached = toolFor(screw(), [near]);
  expect(reached?.tool).toBe("long");
  const [, y, z] = reached?.axis ?? [0, 0, 0];
  expect(z).toBeGreaterThan(0);
  expect(y).toBeGreaterThan(0.9961947); // cos 5°
  expect(hits(screw(), "long", reached?.axis ?? [0, 1, 0], [near], 0.01)).toBe(false);
  expect(hits(screw(), "long", [0, 1, 0], [near], 0.01)).toBe(true);
});

test("what covers the head stops every tool; what lies beside it does not", () => {
  const plate = (gap: number) =>
    part("plate", [
      [gap, -20, -50],
      [200, 0, 50],
    ]);
  expect(toolFor(screw(), [plate(-100)])).toBeNull();
  expect(toolFor(screw(), [plate(0)])).toBeNull();
  expect(toolFor(screw(), [plate(5)])?.tool).toBe("straight");
});

const boxes = fc.array(
  fc
    .tuple(fc.integer({ min: -120, max: 90 }), fc.integer({ min: -420, max: 0 }), fc.integer({ min: -120, max: 90 }))
    .chain(([x, y, z]) =>
      fc
        .record({
          w: fc.integer({ min: 10, max: 120 }),
          d: fc.integer({ min: 10, max: 120 }),
          h: fc.integer({ min: 10, max: 120 }),
        })
        .map(
          ({ w, d, h }): Box => [
            [x, y, z],
            [x + w, y + d, z + h],
          ],
        ),
    ),
  { minLength: 1, maxLength: 3 },
);

test("the tool that is named has room, and one that was easier has not, held in line", () => {
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(boxes, (all) => {
      const body = all.map((box, i) => part(`b${i}`, box));
      const reached = toolFor(screw(), body);
      const name = reached ? `${reached.tool}${reached.axis ? ", leaning" : ""}` : "none";
      seen.set(name, (seen.get(name) ?? 0) + 1);
      if (reached) expect(hits(screw(), reached.tool, reached.axis ?? [0, 1, 0], body, 0.01)).toBe(false);
      const order = toolsFor("wood screw");
      const easier = reached ? order.slice(0, order.indexOf(reached.tool) + (reached.axis ? 1 : 0)) : order;
      // Tools are judged by a prism of 12 sides around the cylinder, at most 3.6 % thicker: a cloud may miss what it touches.
      for (const tool of easier) {
        const grown = body.map((_, i) =>
          part(`g${i}`, (all[i] as Box).map((corner, k) => corner.map((c) => c + (k ? 4 : -4))) as unknown as Box),
        );
        expect([tool, hits(screw(), tool, [0, 1, 0], grown, 0)]).toEqual([tool, true]);
      }
    }),
    { seed: 3, numRuns: 60 },
  );
  for (const name of ["straight", "angle", "none"]) expect([name, seen.has(name)]).toEqual([name, true]);
  expect([...seen.keys()].some((name) => name.endsWith("leaning"))).toBe(true);
});
