/** A board on two uprights: glued and screwed from above, all from one sheet. With a banded edge and two bought feet. */
import type { Layout } from "../bought.ts";
import type { BuildRecord, Fastener, Hole } from "../record.ts";
import type { V3 } from "../vector.ts";
import { complete } from "./complete.ts";
import { box, fixed, hole, part, step } from "./wood.ts";

const DOWN: V3 = [0, 0, -1];
const UP: V3 = [0, 0, 1];

export function stool(): BuildRecord {
  const upright = { mark: "B", stock: "ply", axes: [0, 1, 2] as const };
  const edgeBanding = [{ edge: "front", item: "birch tape", thickness: 0.5, deducted: false }];
  const screws = [screw("f1", 30, 50), screw("f2", 30, 150), screw("f3", 370, 50), screw("f4", 370, 150)];
  return complete({
    parts: [
      part({
        id: "top",
        mark: "A",
        stock: "ply",
        axes: [2, 1, 0],
        solids: [box([0, 0, 300], [400, 200, 320])],
        edgeBanding,
      }),
      part({ id: "left", ...upright, solids: [box([20, 0, 0], [40, 200, 300])] }),
      part({ id: "right", ...upright, solids: [box([360, 0, 0], [380, 200, 300])] }),
    ],
    joints: [joint("j1", "left", 30, ["f1", "f2"]), joint("j2", "right", 370, ["f3", "f4"])],
    fasteners: screws,
    holes: [...screws.map(clearance), ...screws.map(pilot)],
    hardware: ["left", "right"].map((carriedBy, i) => ({
      id: `foot ${i + 1}`,
      item: "foot",
      kind: "foot",
      carriedBy,
      at: [30 + 340 * i, 100, 0] as V3,
      solids: [box([22 + 340 * i, 90, -5], [38 + 340 * i, 110, 0])],
      decides: {},
      price: null,
      halfOf: null,
    })),
    layouts: [sheet()],
    steps: [
      step(1, "make", [
        { do: "make", blanks: ["blank of top", "blank of left", "blank of right"] },
        { do: "machine", part: "top", features: [], holes: [0, 1, 2, 3] },
        { do: "band", part: "top", edges: ["front"] },
      ]),
      step(
        2,
        "join",
        [
          { do: "add", parts: ["left"], to: [], how: "straight", legs: [] },
          { do: "glue", joints: ["j1"], openMinutes: 8 },
          { do: "add", parts: ["top"], to: ["left"], how: "straight", legs: [{ along: DOWN, distance: null }] },
          { do: "machine", part: "left", features: [], holes: [4, 5] },
          { do: "drive", fasteners: ["f1", "f2"], tool: "straight", axis: null },
        ],
        [1],
      ),
      step(
        3,
        "join",
        [
          { do: "glue", joints: ["j2"], openMinutes: 8 },
          { do: "add", parts: ["right"], to: ["top"], how: "straight", legs: [{ along: UP, distance: null }] },
          { do: "machine", part: "right", features: [], holes: [6, 7] },
          { do: "drive", fasteners: ["f3", "f4"], tool: "straight", axis: null },
        ],
        [2],
      ),
      step(4, "fit", [{ do: "fit", hardware: ["foot 1", "foot 2"], to: ["left"] }], [3]),
    ],
  });
}

const joint = (id: string, upright: string, x: number, fasteners: string[]) =>
  fixed(id, ["top", upright], {
    method: "screws",
    contact: [{ centre: [x, 100, 300], normal: DOWN, area: 20 * 200 }],
    fasteners,
  });

const screw = (id: string, x: number, y: number): Fastener => ({
  id,
  kind: "wood screw",
  item: "4 × 50 wood screw",
  length: 50,
  rod: 4,
  head: { at: [x, y, 320], diameter: 8, height: 3, seat: "flush" },
  direction: DOWN,
  through: ["top"],
  into: x < 200 ? "left" : "right",
  travelsWith: null,
  with: [],
  nut: null,
  slack: null,
  solids: [],
});

const clearance = ({ id, head }: Fastener): Hole =>
  hole("top", "clearance", {
    at: head.at,
    direction: DOWN,
    stages: [
      { diameter: 8, depth: 3 },
      { diameter: 4.5, depth: 20 },
    ],
    through: true,
    for: id,
    keep: { edge: 46, end: 26, under: 0 },
  });

const pilot = ({ id, head, into }: Fastener): Hole =>
  hole(into ?? "", "pilot", {
    at: [head.at[0], head.at[1], 300],
    direction: DOWN,
    stages: [{ diameter: 3, depth: 30 }],
    for: id,
    keep: { edge: 8.5, end: 0, under: 270 },
    atBench: false,
  });

/** 610 × 800, squared by 3 on the left and near edges, kerf 3: two strips of 200, each cut across. */
const sheet = (): Layout => ({
  stock: "ply",
  kind: "sheet",
  source: "buy",
  thickness: 20,
  width: 610,
  length: 800,
  kerf: 3,
  squaring: 3,
  placements: [
    { blank: "blank of top", mark: "A", x: 3, y: 3, width: 200, length: 400, turned: false },
    { blank: "blank of left", mark: "B", x: 3, y: 406, width: 200, length: 300, turned: false },
    { blank: "blank of right", mark: "B", x: 206, y: 3, width: 200, length: 300, turned: false },
  ],
  cuts: [
    { number: 1, kind: "rip", from: [203, 3], to: [203, 800], fence: 200 },
    { number: 2, kind: "rip", from: [406, 3], to: [406, 800], fence: 200 },
    { number: 3, kind: "crosscut", from: [3, 403], to: [203, 403], fence: 400 },
    { number: 4, kind: "crosscut", from: [3, 706], to: [203, 706], fence: 300 },
    { number: 5, kind: "crosscut", from: [206, 303], to: [406, 303], fence: 300 },
  ],
  offcuts: [
    { x: 206, y: 306, width: 200, length: 494 },
    { x: 409, y: 3, width: 201, length: 797 },
  ],
});
