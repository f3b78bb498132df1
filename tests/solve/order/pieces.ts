/** Small pieces made of boxes, in whole millimetres, for judging orders of work. */
import { contact, type Solid, solidBox, subtractBox, unite } from "../../../src/geometry/index.ts";
import type { Arrangement, Design, Direction, Fastener, Hole, Joint, Part, Point } from "../../../src/solve/design.ts";
import { millimetres, subtract } from "../../../src/units/index.ts";

export type Triple = readonly [number, number, number];
export type Box = readonly [Triple, Triple];

const at = ([x, y, z]: Triple): Point => [millimetres(x), millimetres(y), millimetres(z)];
const AT = { start: 0, end: 1, line: 1, column: 1 };

/** A part of one or more boxes that do not overlap, less the boxes that are cut out. */
export function part(id: string, boxes: Box | readonly Box[], cuts: readonly Box[] = []): Part {
  const all = (Array.isArray(boxes[0]?.[0]) ? boxes : [boxes]) as readonly Box[];
  const whole: Solid = unite(all.map(([low, high]) => solidBox(at(low), at(high))));
  const solid = cuts.reduce((so, [low, high]) => subtractBox(so, at(low), at(high)), whole);
  const bound = (of: (...n: number[]) => number, which: 0 | 1): Triple => [
    of(...all.map((box) => box[which][0])),
    of(...all.map((box) => box[which][1])),
    of(...all.map((box) => box[which][2])),
  ];
  const body = { low: at(bound(Math.min, 0)), high: at(bound(Math.max, 1)) };
  const size = (i: 0 | 1 | 2) => subtract(body.high[i], body.low[i]);
  return {
    id,
    at: AT,
    called: null,
    stock: "wood",
    body,
    blank: body,
    leftOver: at([0, 0, 0]),
    axes: { thickness: "across", width: "deep", length: "up" },
    thickness: size(0),
    width: size(1),
    length: size(2),
    solid,
    features: [],
    holes: [],
    goodFace: null,
  };
}

type Options = Partial<Pick<Joint, "method" | "glue" | "kind" | "insertion" | "arrangements">>;

/** Its contacts are measured when the design is put together. */
export const joint = (a: string, b: string, options: Options = {}): Joint => ({
  id: `${a}-${b}`,
  at: AT,
  parts: [a, b],
  kind: "fixed",
  method: "glue",
  glue: true,
  gap: millimetres(0),
  contact: [],
  insertion: null,
  arrangements: [],
  ...options,
});

interface Driven {
  readonly id: string;
  readonly at: Triple;
  readonly direction: Direction;
  readonly through: string;
  readonly into: string;
  readonly length?: number;
  readonly kind?: Fastener["kind"];
}

/** 4 mm across, flush, 40 mm long unless said. A dowel travels in the part that it goes through. */
export const fastener = ({
  id,
  at: head,
  direction,
  through,
  into,
  length = 40,
  kind = "wood screw",
}: Driven): Fastener => ({
  id,
  joint: `${through}-${into}`,
  kind,
  item: `${length} mm ${kind}`,
  length: millimetres(length),
  rod: millimetres(kind === "dowel" ? 8 : 4),
  head: { at: at(head), diameter: millimetres(8), height: millimetres(0), seat: "flush" },
  direction,
  through: [through],
  into,
  travelsWith: kind === "dowel" ? through : null,
});

/** One hole for each fastener, in the part that it goes into, as long as the fastener. */
export const arrangement = (...fasteners: readonly Fastener[]): Arrangement => ({
  fasteners,
  holes: fasteners.map(
    (f): Hole => ({
      part: f.into,
      kind: "pilot",
      at: f.head.at,
      direction: f.direction,
      stages: [{ diameter: f.rod, depth: f.length }],
      through: false,
      for: f.id,
      keep: { edge: millimetres(0), end: millimetres(0), under: millimetres(0) },
      atBench: false,
    }),
  ),
});

/** A joint by screws, each given by the place of its head. */
export const screwed = (through: string, into: string, direction: Direction, ...heads: readonly Triple[]): Joint =>
  joint(through, into, {
    method: "screws",
    glue: false,
    arrangements: [
      arrangement(
        ...heads.map((head, i) => fastener({ id: `${through}-${into}.${i}`, at: head, direction, through, into })),
      ),
    ],
  });

export function piece(parts: readonly Part[], joints: readonly Joint[], groups: readonly string[] = []): Design {
  const solid = (id: string) => parts.find((p) => p.id === id)?.solid;
  const measured = joints.map((j) => {
    const [a, b] = [solid(j.parts[0]), solid(j.parts[1])];
    return a && b ? { ...j, contact: contact(a, b) } : j;
  });
  return {
    title: "test",
    subtitle: "",
    by: "",
    summary: "",
    edition: "",
    units: "mm",
    precision: millimetres(1),
    fits: millimetres(1),
    kerf: millimetres(3),
    sizes: new Map(),
    stock: [],
    parts,
    joints: measured,
    fittings: [],
    groups,
  };
}
