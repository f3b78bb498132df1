/** Four boards edge to edge, two dowels in each joint; built as two halves that are then put together. */
import type { BuildRecord, Hole } from "../record.ts";
import type { V3 } from "../vector.ts";
import { complete } from "./complete.ts";
import { box, fixed, hole, part, peg, step } from "./wood.ts";

const BOARDS = ["a", "b", "c", "d"] as const;
const RIGHT: V3 = [1, 0, 0];
const LEFT: V3 = [-1, 0, 0];

export function slab(): BuildRecord {
  const fasteners = [
    ...pegs("j1", 100, RIGHT, "a", "b"),
    ...pegs("j2", 200, RIGHT, "b", "c"),
    ...pegs("j3", 300, LEFT, "d", "c"),
  ];
  const holes = fasteners.flatMap((dowel): Hole[] => {
    const seam = Math.round(dowel.head.at[0] / 100) * 100;
    const [left, right] = [BOARDS[seam / 100 - 1] ?? "", BOARDS[seam / 100] ?? ""];
    const bore = (on: string, direction: V3) =>
      hole(on, "dowel", {
        at: [seam, 10, dowel.head.at[2]],
        direction,
        stages: [{ diameter: 8, depth: 22 }],
        for: dowel.id,
        keep: { edge: 6, end: 46, under: 78 },
      });
    return [bore(left, LEFT), bore(right, RIGHT)];
  });
  const machine = (id: string) => ({
    do: "machine" as const,
    part: id,
    features: [],
    holes: [...holes.keys()].filter((i) => holes[i]?.part === id),
  });
  const start = (id: string) => ({ do: "add" as const, parts: [id], to: [], how: "straight", legs: [] });
  const add = (ids: string[], to: string, along: V3) => ({
    do: "add" as const,
    parts: ids,
    to: [to],
    how: "straight",
    legs: [{ along, distance: null }],
  });
  const glue = (id: string) => ({ do: "glue" as const, joints: [id], openMinutes: 8 });
  return complete({
    parts: BOARDS.map((id, i) =>
      part({
        id,
        mark: i % 3 === 0 ? "A" : "B",
        stock: "board",
        axes: [1, 0, 2],
        solids: [box([100 * i, 0, 0], [100 * i + 100, 20, 200])],
      }),
    ),
    joints: [seam("j1", ["a", "b"], 100, RIGHT), seam("j2", ["b", "c"], 200, RIGHT), seam("j3", ["d", "c"], 300, LEFT)],
    fasteners,
    holes,
    steps: [
      step(1, "make", [{ do: "make", blanks: BOARDS.map((id) => `blank of ${id}`) }, ...BOARDS.map(machine)]),
      step(
        2,
        "glue-up",
        [start("a"), glue("j1"), add(["b"], "a", LEFT), start("d"), glue("j3"), add(["c"], "d", RIGHT)],
        [1],
      ),
      step(3, "glue-up", [glue("j2"), add(["c", "d"], "a", LEFT)], [2]),
    ],
  });
}

const pegs = (joint: string, x: number, way: V3, from: string, into: string) =>
  [50, 150].map((z) => peg(`${joint}.${z}`, [x - 20 * way[0], 10, z], way, from, into));

const seam = (id: string, parts: [string, string], x: number, normal: V3) =>
  fixed(id, parts, {
    method: "dowels",
    contact: [{ centre: [x, 10, 100], normal, area: 20 * 200 }],
    fasteners: [`${id}.50`, `${id}.150`],
  });
