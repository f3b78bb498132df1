/** The holes of a part in one of its views, each kind with a small letter. */
import type { Vec } from "../../../geometry/types.ts";
import { dot, plus, times } from "../../../geometry/vec.ts";
import { sideWord } from "../../../solve/build/steps/words/measured.ts";
import type { BuiltPart } from "../../../solve/build.ts";
import { type AxisIndex, faceOf, INDICES } from "../../../solve/design/space.ts";
import type { Hole } from "../../../solve/design.ts";
import { toNumber } from "../../../units/index.ts";
import type { Item, Stroke } from "../../document.ts";
import { circle, slot } from "../../shapes.ts";
import type { Spot } from "../drawing.ts";
import { toVec } from "../feature-box.ts";
import { strokes } from "../ink.ts";
import { boxAround, type Plate, type Segment } from "../plate.ts";
import { HIDDEN, NARROW, OUTLINE } from "../strokes.ts";
import { type Ladder, laddersOf, setsOf } from "./ladders.ts";
import type { Lying } from "./lying.ts";
import { nearest } from "./near-holes.ts";
import { framed } from "./places.ts";
import { acrossView } from "./side-bores.ts";

/** Holes alike into one side of the part that stand in one row, or in none. */
export interface Bore {
  readonly letter: string;
  readonly holes: readonly Hole[];
  /** Where that side lies as the part is drawn. */
  readonly on: "face" | "other face" | "upper edge" | "lower edge" | "left end" | "right end";
  /** Its name in the finished piece: "left face", "top end". */
  readonly side: string;
}

const LETTERS = "abcdefghijkmnpqrstuvwxyz";

/** The holes of a part with their letters, and their rows. */
export function boresOf(lying: Lying): { readonly bores: readonly Bore[]; readonly ladders: readonly Ladder[] } {
  const kinds = new Map<string, Hole[]>();
  for (const hole of lying.holes) {
    const stages = hole.stages.map(({ diameter, depth }) => `${toNumber(diameter)} ${toNumber(depth)}`);
    const slot = hole.slot ? toNumber(hole.slot.length) : "";
    const key = [sideAsDrawn(lying, hole), hole.kind, hole.through, ...stages, slot].join("|");
    kinds.set(key, [...(kinds.get(key) ?? []), hole]);
  }
  const frame = framed(lying);
  const spots = new Map(lying.holes.map((hole) => [hole, frame(toVec(hole.at))]));
  const spotOf = (hole: Hole) => spots.get(hole) ?? ([0, 0, 0] as const);
  const wayOf = (hole: Hole) => frame(hole.direction);
  let count = 0;
  const lettered = [...kinds.values()].map((holes) =>
    setsOf(holes, spotOf, wayOf).map((set): Bore => {
      const [first] = set as [Hole];
      const letter = LETTERS[count] ?? `a${count}`;
      count++;
      return { letter, holes: set, on: sideAsDrawn(lying, first), side: sideNamed(lying.part, first) };
    }),
  );
  return { bores: lettered.flat(), ladders: laddersOf(lettered, spotOf, wayOf) };
}

/** A pocket is looked for where it comes out. */
function sideAsDrawn({ face, edge }: Lying, { direction, kind }: Hole): Bore["on"] {
  const along = (axis: Vec) => ((kind === "pocket" ? -1 : 1) * dot(direction, axis)) / Math.sqrt(dot(axis, axis));
  const [toEye, up, right] = [along(face.towards), along(edge.towards), along(face.right)];
  const most = Math.max(Math.abs(toEye), Math.abs(up), Math.abs(right));
  if (most - Math.abs(toEye) < 1e-6) return toEye < 0 ? "face" : "other face";
  if (most - Math.abs(up) < 1e-6) return up < 0 ? "lower edge" : "upper edge";
  return right < 0 ? "right end" : "left end";
}

/** A pocket is bored at a slant into a face, and comes out at an end or edge. */
function sideNamed(part: BuiltPart, { direction, kind }: Hole): string {
  // Of directions that run as much along two axes the first counts, whatever the last digit says.
  const along = (axis: AxisIndex): number => Math.round(Math.abs(direction[axis]) * 1e6);
  const [first, second] = INDICES.toSorted((a, b) => along(b) - along(a));
  const side = (axis: AxisIndex, into: boolean): string =>
    `${faceOf(axis, into === direction[axis] < 0)} ${sideWord(part, axis)}`;
  return kind === "pocket"
    ? `${side(second as AxisIndex, true)}, towards its ${side(first as AxisIndex, false)}`
    : side(first as AxisIndex, true);
}

/** Where a view shows a place of the piece, its direction to the eye, and points for a unit. */
export interface Shown {
  readonly spot: (p: Vec) => Spot;
  readonly towards: Vec;
  readonly scale: number;
}

/** Circles where they are looked into, broken lines where they run across; with a cross at each mouth. */
export function drawBores(bores: readonly Bore[], { spot, towards, scale }: Shown, plate: Plate): readonly Item[] {
  const mouths = bores.flatMap(({ holes }) =>
    holes.flatMap((hole) => (Math.abs(facingOf(hole, towards)) > 0.95 ? [spot(toVec(hole.at))] : [])),
  );
  return bores.flatMap(({ holes }) =>
    holes.flatMap((hole): readonly Item[] => {
      const at = toVec(hole.at);
      const facing = facingOf(hole, towards);
      const mouth = spot(at);
      const look: Stroke = facing > 0 || hole.through ? { ...OUTLINE, width: 0.6 } : HIDDEN;
      if (Math.abs(facing) > 0.95) {
        const out = comesOut(hole, towards);
        const stages = out ? hole.stages.slice(-1) : hole.stages;
        const middle = out ? spot(bottomOf(hole)) : mouth;
        const wide = (toNumber(stages[0]?.diameter ?? { n: 0n, d: 1n }) * scale) / 2;
        // Where holes crowd their crosses do not meet.
        const reach = Math.max(wide + 0.5, Math.min(Math.max(wide, 1) + 2.5, CROSS * nearest(middle, mouths)));
        plate.addBox(boxAround(middle[0], middle[1], 2 * wide, 2 * wide));
        const lines = cross(middle, reach);
        for (const line of lines) plate.addLine(line);
        return [
          ...stages.map((stage) =>
            out ? circle(...middle, wide, { stroke: look }) : round(hole, stage, spot, scale, look),
          ),
          ...strokes(lines, look.dash ? { ...NARROW, dash: look.dash } : NARROW),
        ];
      }
      const opens = hole.kind === "pocket" && facing > 0.1;
      const hidden = opens ? hole.stages.slice(1) : hole.stages;
      const lines = hidden.flatMap((stage) => acrossView(hole, stage, spot, scale));
      for (const line of lines) plate.addLine(line);
      return [...strokes(lines, HIDDEN), ...(opens ? pocketMouth(hole, { spot, towards, scale }, plate) : [])];
    }),
  );
}

/** A cross reaches so much of the way to the next one. */
const CROSS = 0.4;

type Stage = Hole["stages"][number];

/** 1 where a hole is looked into, -1 from behind. */
const facingOf = ({ direction }: Hole, towards: Vec): number =>
  -dot(direction, towards) / Math.sqrt(dot(towards, towards));

/** Where a pocket is looked at from the end at which it comes out, only that is seen of it. */
export const comesOut = (hole: Hole, towards: Vec): boolean =>
  hole.kind === "pocket" && facingOf(hole, towards) < -0.95;

export const bottomOf = ({ at, direction, stages }: Hole): Vec =>
  plus(toVec(at), times(direction, Math.max(...stages.map(({ depth }) => toNumber(depth)))));

/** A circle, or a slot with round ends. */
function round(hole: Hole, { diameter }: Stage, spot: Shown["spot"], scale: number, stroke: Stroke): Item {
  const r = (toNumber(diameter) * scale) / 2;
  const at: Vec = [toNumber(hole.at[0]), toNumber(hole.at[1]), toNumber(hole.at[2])];
  const last = diameter === hole.stages.at(-1)?.diameter;
  const half = hole.slot && last ? (toNumber(hole.slot.length) - toNumber(diameter)) / 2 : 0;
  if (!hole.slot || half <= 0) return circle(...spot(at), r, { stroke });
  const { along } = hole.slot;
  return slot(spot(plus(at, times(along, half))), spot(plus(at, times(along, -half))), r, { stroke });
}

/** Where a pocket's head goes in at a slant it leaves an opening as much longer than it is wide. */
function pocketMouth(hole: Hole, { spot, scale, towards }: Shown, plate: Plate): readonly Item[] {
  const { at, direction, stages } = hole;
  const eye = times(towards, 1 / Math.sqrt(dot(towards, towards)));
  const facing = facingOf(hole, towards);
  const level = plus(direction, times(eye, facing));
  const along = times(level, 1 / Math.sqrt(dot(level, level)));
  const r = toNumber((stages[0] as Stage).diameter) / 2;
  const half = r / facing - r;
  const [from, to] = [spot(plus(toVec(at), times(along, -half))), spot(plus(toVec(at), times(along, half)))];
  for (const line of around(from, to, r * scale)) plate.addLine(line);
  return [slot(from, to, r * scale, { stroke: { ...OUTLINE, width: 0.6 } })];
}

/** The sides of the rectangle that a slot fills. */
function around([x, y]: Spot, [u, v]: Spot, r: number): readonly Segment[] {
  const long = Math.max(1e-9, Math.sqrt((u - x) * (u - x) + (v - y) * (v - y)));
  const [dx, dy] = [((u - x) * r) / long, ((v - y) * r) / long];
  const corners: readonly Spot[] = [
    [x - dx - dy, y - dy + dx],
    [u + dx - dy, v + dy + dx],
    [u + dx + dy, v + dy - dx],
    [x - dx + dy, y - dy - dx],
  ];
  return corners.map((corner, i) => [corner, corners[(i + 1) % corners.length] as Spot]);
}

const cross = ([x, y]: Spot, reach: number): readonly Segment[] => [
  [
    [x - reach, y],
    [x + reach, y],
  ],
  [
    [x, y - reach],
    [x, y + reach],
  ],
];
