/** Parts of hand-made records, as boxes. */
import type { BuildRecord, Fastener, Hole, Joint, Part, Piece, Step } from "../record.ts";
import { type V3, ZERO } from "../vector.ts";

/** A box as a record has it: eight corners, six faces counter-clockwise from outside. */
export function box([a, b, c]: V3, [x, y, z]: V3): Piece {
  const low: V3[] = [
    [a, b, c],
    [x, b, c],
    [x, y, c],
    [a, y, c],
  ];
  const high: V3[] = [
    [a, b, z],
    [x, b, z],
    [x, y, z],
    [a, y, z],
  ];
  const faces = [
    [3, 2, 1, 0],
    [4, 5, 6, 7],
    [0, 1, 5, 4],
    [1, 2, 6, 5],
    [2, 3, 7, 6],
    [3, 0, 4, 7],
  ];
  return { points: [...low, ...high], faces };
}

type Axis = 0 | 1 | 2;
const UNIT: readonly V3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

interface Wood {
  readonly id: string;
  readonly mark: string;
  readonly stock: string;
  /** Along which axes thickness, width and length lie. */
  readonly axes: readonly [Axis, Axis, Axis];
  readonly solids: Piece[];
  readonly features?: Part["features"];
  readonly edgeBanding?: Part["edgeBanding"];
}

export function part({ id, mark, stock, axes, solids, features = [], edgeBanding = [] }: Wood): Part {
  const points = solids.flatMap((piece) => piece.points);
  const extent = (axis: Axis) => Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
  const [thickness, width, length] = [extent(axes[0]), extent(axes[1]), extent(axes[2])];
  const direction = (axis: Axis): V3 => UNIT[axis] ?? ZERO;
  const grain = UNIT[axes[2]] ?? null;
  const plain = {
    assembly: "",
    bought: false,
    species: null,
    goodFace: null,
    mass: 1,
    cut: "list",
    fitsBetween: [],
    cutAfterStep: null,
  };
  return {
    id,
    mark,
    name: id,
    stock,
    grain,
    axes: { thickness: direction(axes[0]), width: direction(axes[1]), length: direction(axes[2]) },
    thickness,
    width,
    length,
    solids,
    features,
    edgeBanding,
    ...plain,
    slope: {},
  };
}

export function fixed(id: string, parts: [string, string], more: Partial<Joint>): Joint {
  return {
    id,
    parts,
    kind: "fixed",
    method: "glue",
    glue: true,
    gap: 0,
    still: null,
    contact: [],
    fasteners: [],
    ...more,
  };
}

export const hole = (
  on: string,
  kind: string,
  more: Pick<Hole, "at" | "direction" | "stages" | "for"> & Partial<Hole>,
): Hole => ({
  part: on,
  kind,
  through: false,
  slot: null,
  keep: { edge: 0, end: 0, under: 0 },
  plugged: false,
  atBench: true,
  ...more,
});

export const peg = (id: string, at: V3, direction: V3, from: string, into: string): Fastener => ({
  id,
  kind: "dowel",
  item: "8 × 40 dowel",
  length: 40,
  rod: 8,
  head: { at, diameter: 8, height: 0, seat: "flush" },
  direction,
  through: [from],
  into,
  travelsWith: from,
  with: [],
  nut: null,
  slack: null,
  solids: [],
});

export const step = (number: number, kind: string, actions: Step["actions"], after: number[] = []): Step => ({
  number,
  title: `Step ${number}`,
  kind,
  unit: "piece",
  up: [0, 0, 1],
  after,
  afterWait: [],
  start: null,
  end: null,
  bench: 10,
  waits: [],
  clamps: [],
  jigs: [],
  hands: 1,
  text: [""],
  cautions: [],
  reminders: [],
  actions,
});

export type Made = Pick<BuildRecord, "parts" | "joints" | "fasteners" | "holes" | "steps"> & Partial<BuildRecord>;
