/** A post, a rail tenoned into it and a cleat screwed to the rail, as a Build made by hand; all of it off the origin by a third of a mm. */
import { contact, cut, planeThrough, type Solid, solidBox, subtractBox, unite } from "../../../src/geometry/index.ts";
import { drilling } from "../../../src/solve/build/drilling/drilling.ts";
import type { Build, BuiltJoint, BuiltPart } from "../../../src/solve/build.ts";
import type { Direction, Fastener, Feature, Hole, Point } from "../../../src/solve/design.ts";
import { add, type Length, millimetres, subtract, ZERO } from "../../../src/units/index.ts";
import { beech } from "./beech.ts";
import { layouts } from "./boards.ts";
import { steps } from "./steps.ts";

export const at = { start: 0, end: 0, line: 3, column: 5 };
export const mm = millimetres;
type Three = readonly [number, number, number];
const SHIFT: Point = [mm(1000, 3), mm(-50), mm(22, 7)];
export const point = ([x, y, z]: Three): Point => [add(mm(x), SHIFT[0]), add(mm(y), SHIFT[1]), add(mm(z), SHIFT[2])];
const box = (low: Three, high: Three): Solid => solidBox(point(low), point(high));

const NAMES = ["across", "deep", "up"] as const;
interface Rough {
  readonly id: string;
  readonly stock: string;
  readonly mark: string;
  readonly low: Three;
  readonly high: Three;
  readonly axes: readonly [0 | 1 | 2, 0 | 1 | 2, 0 | 1 | 2];
  readonly solid: Solid;
  readonly features?: readonly Feature[];
}

function part({ id, stock, mark, low, high, axes, solid, features = [] }: Rough): BuiltPart {
  const blank = { low: point(low), high: point(high) };
  const extent = (i: 0 | 1 | 2): Length => subtract(blank.high[i], blank.low[i]);
  return {
    id,
    at,
    called: null,
    stock,
    body: blank,
    blank,
    leftOver: [ZERO, ZERO, ZERO],
    axes: { thickness: NAMES[axes[0]], width: NAMES[axes[1]], length: NAMES[axes[2]] },
    thickness: extent(axes[0]),
    width: extent(axes[1]),
    length: extent(axes[2]),
    solid,
    features,
    holes: [],
    goodFace: id === "rail" ? "front" : null,
    mark,
    name: id === "frame.post" ? "Post" : id,
    mass: id === "rail" ? 0.2 : 0.1,
  };
}

const housing = (kind: "mortise" | "tenon", deep: number): Feature => ({
  kind,
  for: "j1",
  origin: point([40, 16, 110]),
  along: [0, 1, 0],
  across: [0, 0, 1],
  into: [-1, 0, 0],
  size: [mm(8), mm(40), mm(deep)],
});

/** Off the post's outer face, so that it is 28 8/9 wide at the floor. */
const TAPER = { origin: point([0, 0, 100]), normal: [-9n, 0n, -1n] as const };
const post = subtractBox(box([0, 0, 0], [40, 40, 300]), point([18, 16, 110]), point([40, 24, 150]));

export const parts: readonly BuiltPart[] = [
  part({
    id: "frame.post",
    stock: "squares",
    mark: "A",
    low: [0, 0, 0],
    high: [40, 40, 300],
    axes: [0, 1, 2],
    solid: cut(post, planeThrough(TAPER.origin, TAPER.normal)),
    features: [
      housing("mortise", 22),
      { kind: "taper", for: null, origin: TAPER.origin, normal: TAPER.normal.map(Number) as unknown as Direction },
    ],
  }),
  part({
    id: "rail",
    stock: "boards",
    mark: "B",
    low: [20, 10, 100],
    high: [340, 30, 160],
    axes: [1, 2, 0],
    solid: unite([box([40, 10, 100], [340, 30, 160]), box([20, 16, 110], [40, 24, 150])]),
    features: [housing("tenon", 20)],
  }),
  part({
    id: "cleat",
    stock: "boards",
    mark: "C",
    low: [40, 30, 100],
    high: [340, 50, 140],
    axes: [1, 2, 0],
    solid: box([40, 30, 100], [340, 50, 140]),
  }),
];

const screws = [100, 280].map(
  (x, i): Fastener => ({
    id: `j2.${i + 1}`,
    joint: "j2",
    kind: "wood screw",
    item: "wood screw 4 × 30 mm",
    length: mm(30),
    rod: mm(4),
    head: { at: point([x, 50, 120]), diameter: mm(8), height: mm(5, 2), seat: "flush" },
    direction: [0, -1, 0],
    through: ["cleat"],
    into: "rail",
    travelsWith: null,
  }),
);

const holes = screws.flatMap((screw, i): Hole[] => {
  const x = i === 0 ? 100 : 280;
  const hole = { direction: [0, -1, 0] as const, for: screw.id };
  const none = { edge: ZERO, end: ZERO, under: ZERO };
  const kept = { edge: mm(18), end: mm(50), under: mm(10) };
  const [wide, narrow] = [
    { diameter: mm(9, 2), depth: mm(20) },
    { diameter: mm(5, 2), depth: mm(10) },
  ];
  const clearance = {
    ...hole,
    part: "cleat",
    kind: "clearance" as const,
    at: screw.head.at,
    stages: [wide],
    keep: none,
  };
  const pilot = {
    ...hole,
    part: "rail",
    kind: "pilot" as const,
    at: point([x, 30, 120]),
    stages: [narrow],
    keep: kept,
  };
  return [
    { ...clearance, through: true, atBench: true },
    { ...pilot, through: false, atBench: false },
  ];
});

function joint(id: string, names: readonly [string, string], glue: boolean, fasteners: string[]): BuiltJoint {
  const [a, b] = names.map((name) => parts.find((p) => p.id === name));
  if (a === undefined || b === undefined) throw new RangeError("no such part");
  const method = glue ? "mortise and tenon" : "screws";
  const touch = contact(a.solid, b.solid);
  const rest = { kind: "fixed" as const, gap: ZERO, insertion: null, arrangements: [] };
  return { id, at, parts: names, method, glue, contact: touch, fasteners, ...rest };
}

const mark = (id: string): string => parts.find((part) => part.id === id)?.mark ?? id;

export function stand(): Build {
  const joints = [
    joint("j1", ["rail", "frame.post"], true, []),
    joint("j2", ["cleat", "rail"], false, ["j2.1", "j2.2"]),
  ];
  const bought = { unit: "piece", price: null, onHand: 0, waste: 0 };
  return {
    design: {
      title: 'Stand "one"',
      subtitle: "",
      by: "",
      summary: "",
      edition: "",
      units: "mm",
      precision: mm(1),
      fits: mm(1),
      kerf: mm(3),
      sizes: new Map([
        ["third", mm(1000, 3)],
        ["__proto__", mm(1)],
      ]),
      stock: [beech("squares", "beech, 40 × 40", 40, 40), beech("boards", "beech, 20 thick", 20, 60)],
      parts,
      joints,
      fittings: [],
      groups: ["frame"],
    },
    parts,
    cutList: parts.map(({ mark, name, stock: of, id, thickness, width, length }) => {
      return { mark, name, stock: of, parts: [id], thickness, width, length, mirrorOf: null, notes: [] };
    }),
    blanks: parts.map(({ id, mark, stock: of, thickness, width, length }) => {
      return {
        id: `blank-${mark}`,
        part: id,
        mark,
        stock: of,
        thickness,
        width,
        length,
        grain: "length",
        why: "as finished",
      };
    }),
    joints,
    fasteners: screws,
    holes,
    drilling: drilling({
      design: { parts, stock: [], joints, units: "mm" },
      plan: { holes, fasteners: screws, hardware: [] },
      steps,
      jigs: [],
      mark,
    }),
    fastenerTable: [],
    hardware: [],
    motions: [],
    layouts,
    layoutProof: ["squares", "boards"].map((name) => {
      return { stocks: [name], count: 1, countBound: 1, optimal: true, method: "area", assumes: "kerf 3 mm" };
    }),
    purchases: [
      { section: "lumber", item: "beech, 40 × 40", quantity: 1, ...bought },
      { section: "lumber", item: "beech, 20 thick", quantity: 1, ...bought },
      { section: "fasteners", item: "wood screw 4 × 30 mm", quantity: 2, ...bought },
    ],
    steps,
    timeline: {
      ...{ bench: 55, elapsed: 90, lowerBound: 90, hoursADay: 8 },
      days: [{ first: 1, last: 1, steps: [1, 3], again: [], bench: 55, dries: [] }],
    },
    tools: [{ tool: "drill", why: "for the pilot holes" }],
    checks: [
      {
        rule: "shelf-sag",
        subject: "rail",
        verdict: "holds",
        value: 1 / 3,
        limit: 1,
        unit: "mm",
        basis: "common practice",
      },
    ],
    findings: [{ rule: "a-rule", severity: "advice", at, label: "", message: "A message.", also: [] }],
  };
}
