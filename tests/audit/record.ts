/** The build record as its description has it, for a reader that knows nothing else of the program. */
import type { Layout, Proof, Purchase } from "./bought.ts";
import type { V3 } from "./vector.ts";

export interface Piece {
  points: V3[];
  faces: number[][];
}
export interface BoxFeature {
  kind: string;
  for: string | null;
  origin: V3;
  along: V3;
  across: V3;
  into: V3;
  size: V3;
  lean?: number;
  inPlace?: boolean;
  /** Of a curve in that box. */
  radius?: number;
}
export interface PlaneFeature {
  kind: string;
  for: string | null;
  origin: V3;
  normal: V3;
}
export interface Part {
  id: string;
  mark: string;
  name: string;
  assembly: string;
  bought: boolean;
  stock: string;
  species: string | null;
  grain: V3 | null;
  /** Where the board's directions lie in the room. */
  axes: { thickness: V3; width: V3; length: V3 };
  thickness: number;
  width: number;
  length: number;
  solids: Piece[];
  features: (BoxFeature | PlaneFeature)[];
  edgeBanding: { edge: string; item: string; thickness: number; deducted: boolean }[];
  goodFace: string | null;
  mass: number;
  cut: string;
  fitsBetween: string[];
  cutAfterStep: number | null;
  slope: Record<string, { thickness: number; width: number; length: number }>;
}
export interface Blank {
  id: string;
  part: string;
  alsoParts: string[];
  planedWhole: { beside: number; inLine: number; width: number; length: number } | null;
  stock: string;
  thickness: number;
  width: number;
  length: number;
  grain: "length" | "width" | "free";
  why: string;
  reserved: { size: "width" | "length"; largest: number; at: Record<string, number> }[];
}
export interface CutLine {
  mark: string;
  name: string;
  quantity: number;
  stock: string;
  thickness: number;
  width: number;
  length: number;
  shown: string;
  parts: string[];
  mirrorOf: string | null;
  cut: string;
  notes: string[];
}
export interface Joint {
  id: string;
  parts: [string, string];
  kind: string;
  method: string;
  glue: boolean;
  gap: number;
  still: { part: string; across: V3; at: V3; side: string } | null;
  contact: { centre: V3; normal: V3; area: number }[];
  fasteners: string[];
}
export interface Fastener {
  id: string;
  kind: string;
  item: string;
  length: number;
  rod: number;
  head: { at: V3; diameter: number; height: number; seat: string };
  direction: V3;
  through: string[];
  into: string | null;
  travelsWith: string | null;
  with: string[];
  nut: { at: V3; direction: V3; diameter: number; height: number } | null;
  slack: V3 | null;
  /** Empty for what is round. */
  solids: Piece[];
}
export interface Hole {
  part: string;
  kind: string;
  at: V3;
  direction: V3;
  stages: { diameter: number; depth: number }[];
  through: boolean;
  slot: { along: V3; length: number } | null;
  for: string | null;
  keep: { edge: number; end: number; under: number };
  plugged: boolean;
  atBench: boolean;
}
export interface DrillRow {
  bit: string;
  diameter: number;
  holes: number[];
  what: string;
  depth: number | string;
  jig: string | null;
  slot: number | null;
  backing: string | null;
  into: { mark: string; parts: number; side: string }[];
  when: string;
  steps: number[];
}
export interface Hardware {
  id: string;
  item: string;
  kind: string;
  carriedBy: string;
  at: V3;
  solids: Piece[];
  decides: Record<string, number>;
  price: number | null;
  halfOf: string | null;
}
export interface Motion {
  name: string;
  kind: string;
  parts: string[];
  range: number;
  poses: { at: number; rotate: { about: [V3, V3]; degrees: number }; shift: V3 }[];
  needs: { motion: string; open: number }[];
}
export type Leg = { along: V3; distance: number | null } | { about: [V3, V3]; degrees: number };
export type Action =
  | { do: "make"; blanks: string[] }
  | { do: "machine"; part: string; features: number[]; holes: number[] }
  | { do: "band"; part: string; edges: string[] }
  | { do: "add"; parts: string[]; to: string[]; how: string; legs: Leg[] }
  | { do: "glue"; joints: string[]; openMinutes: number }
  | { do: "clamp" | "release"; joints: string[] }
  | { do: "drive"; fasteners: string[]; tool: string; axis: V3 | null }
  | { do: "fit"; hardware: string[]; to: string[] }
  | { do: "remove"; parts: string[]; from: string[]; legs: Leg[]; undrives: string[] }
  | { do: "pull" | "push"; fasteners: string[] }
  | { do: "finish"; parts: string[]; coat: number }
  | { do: "measure"; what: string; value: number; within: number };
export interface Step {
  number: number;
  title: string;
  kind: string;
  unit: string;
  up: V3;
  after: number[];
  afterWait: number[];
  start: number | null;
  end: number | null;
  bench: number;
  waits: { for: string; minutes: number }[];
  clamps: { count: number; opening: number }[];
  jigs: string[];
  hands: number;
  text: string[];
  cautions: string[];
  reminders: string[];
  actions: Action[];
}
export interface BuildRecord {
  format: string;
  version: number;
  compiler: string | null;
  tolerance: number;
  title: string;
  units: string;
  precision: number;
  source: Record<string, unknown> & { choices: Record<string, string> };
  bounds: { min: V3; max: V3 };
  mass: number;
  centreOfMass: V3;
  parts: Part[];
  blanks: Blank[];
  cutList: CutLine[];
  joints: Joint[];
  fasteners: Fastener[];
  holes: Hole[];
  drilling: DrillRow[];
  hardware: Hardware[];
  motions: Motion[];
  layouts: Layout[];
  layoutProof: Proof[];
  purchases: Purchase[];
  steps: Step[];
  timeline: {
    bench: number;
    elapsed: number;
    lowerBound: number;
    hoursADay: number;
    days: { first: number; last: number; steps: number[]; bench: number; dries: string[] }[];
  };
  tools: unknown[];
  finishing: unknown[];
  jigs: { id: string; thickness: number | null }[];
  patterns: unknown[];
  checks: { rule: string; subject: string; verdict: string; because: string | null }[];
  findings: { rule: string; when: Record<string, string> }[];
  pages: unknown[];
}
