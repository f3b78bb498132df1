/** A block screwed to a floor beside a tall wall, perhaps under a roof: room for a driver, or none. */
import type { BuildRecord } from "../record.ts";
import type { V3 } from "../vector.ts";
import { complete } from "./complete.ts";
import { box, fixed, hole, part, step } from "./wood.ts";

export interface Corner {
  /** From the wall to the axis of the screw. */
  readonly beside: number;
  /** From the head up to the roof; absent: no roof. */
  readonly under?: number;
  readonly tool: string;
  /** The driver leans away from the wall by so many degrees. */
  readonly lean?: number;
}

const DOWN: V3 = [0, 0, -1];

export function corner({ beside, under, tool, lean }: Corner): BuildRecord {
  const sheet = (id: string, axes: readonly [0 | 1 | 2, 0 | 1 | 2, 0 | 1 | 2], low: V3, high: V3) =>
    part({ id, mark: id.toUpperCase(), stock: id, axes, solids: [box(low, high)] });
  const roof = under === undefined ? undefined : 60 + under;
  const at: V3 = [20 + beside, 150, 60];
  const angle = ((lean ?? 0) * Math.PI) / 180;
  const glue = (id: string, on: string, z: number, height: number) =>
    fixed(id, [on, "wall"], { contact: [{ centre: [20, 150, z], normal: [-1, 0, 0], area: 300 * height }] });
  const enter = (id: string, along: V3) => ({
    do: "add" as const,
    parts: [id],
    to: ["wall"],
    how: "straight",
    legs: [{ along, distance: null }],
  });
  return complete({
    parts: [
      sheet("wall", [0, 1, 2], [0, 0, 0], [20, 300, 600]),
      sheet("floor", [2, 0, 1], [20, 0, 0], [220, 300, 20]),
      sheet("block", [2, 0, 1], [20, 0, 20], [160, 300, 60]),
      ...(roof === undefined ? [] : [sheet("roof", [2, 0, 1], [20, 0, roof], [220, 300, roof + 20])]),
    ],
    joints: [
      glue("j1", "floor", 10, 20),
      fixed("j2", ["block", "floor"], {
        glue: false,
        contact: [{ centre: [90, 150, 20], normal: DOWN, area: 140 * 300 }],
        fasteners: ["f1"],
      }),
      ...(roof === undefined ? [] : [glue("j3", "roof", roof + 10, 20)]),
    ],
    fasteners: [
      {
        id: "f1",
        kind: "wood screw",
        item: "4 × 50 wood screw",
        length: 50,
        rod: 4,
        head: { at, diameter: 8, height: 3, seat: "proud" },
        direction: DOWN,
        through: ["block"],
        into: "floor",
        travelsWith: null,
        with: [],
        nut: null,
        slack: null,
        solids: [],
      },
    ],
    holes: [
      hole("block", "clearance", {
        at,
        direction: DOWN,
        stages: [{ diameter: 4.5, depth: 40 }],
        through: true,
        for: "f1",
      }),
    ],
    steps: [
      step(1, "make", [
        {
          do: "make",
          blanks: ["wall", "floor", "block", "roof"].slice(0, roof === undefined ? 3 : 4).map((id) => `blank of ${id}`),
        },
        { do: "machine", part: "block", features: [], holes: [0] },
      ]),
      step(
        2,
        "join",
        [
          { do: "add", parts: ["wall"], to: [], how: "straight", legs: [] },
          { do: "glue", joints: roof === undefined ? ["j1"] : ["j1", "j3"], openMinutes: 8 },
          enter("floor", [-1, 0, 0]),
          enter("block", [-1, 0, 0]),
          ...(roof === undefined ? [] : [enter("roof", [-1, 0, 0])]),
          {
            do: "drive",
            fasteners: ["f1"],
            tool,
            axis: lean === undefined ? null : [-Math.sin(angle), 0, -Math.cos(angle)],
          },
        ],
        [1],
      ),
    ],
  });
}
