/** Joints, fasteners and holes, as the record has them. */
import type { BuiltJoint, DrillRow } from "../../../solve/build.ts";
import type { Fastener, Hole } from "../../../solve/design.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import type { Frame } from "./frame.ts";
import type { Json } from "./json.ts";
import { millimetres } from "./number.ts";
import { pieceRecords } from "./parts.ts";

const SQUARE_MM = UNITS_PER_MM * UNITS_PER_MM;

export const jointRecord = (joint: BuiltJoint, frame: Frame): Json => ({
  id: joint.id,
  parts: joint.parts,
  kind: joint.kind,
  method: joint.method,
  glue: joint.glue,
  gap: millimetres(joint.gap),
  still: joint.still ? stillRecord(joint.still, frame) : null,
  contact: joint.contact.map(({ centre, normal, area }) => ({
    centre: frame.vec(centre),
    normal,
    area: area / SQUARE_MM,
  })),
  fasteners: joint.fasteners,
});

/** Through a point of the line on which the part does not move. */
function stillRecord({ part, across, side, at }: NonNullable<BuiltJoint["still"]>, frame: Frame): Json {
  const i = (["across", "deep", "up"] as const).indexOf(across) as 0 | 1 | 2;
  const along = [0, 0, 0].map((_, k) => (k === i ? 1 : 0));
  const point = frame.low.map((low, k) => (k === i ? at : low)) as unknown as Fastener["head"]["at"];
  return { part, across: along, at: frame.point(point), side };
}

export const fastenerRecord = (fastener: Fastener, frame: Frame): Json => ({
  id: fastener.id,
  kind: fastener.kind,
  item: fastener.item,
  length: millimetres(fastener.length),
  rod: millimetres(fastener.rod),
  head: {
    at: frame.point(fastener.head.at),
    diameter: millimetres(fastener.head.diameter),
    height: millimetres(fastener.head.height),
    seat: fastener.head.seat,
  },
  direction: fastener.direction,
  through: fastener.through,
  into: fastener.into,
  travelsWith: fastener.travelsWith,
  with: fastener.with ?? [],
  nut: fastener.nut
    ? {
        at: frame.point(fastener.nut.at),
        direction: fastener.nut.direction,
        diameter: millimetres(fastener.nut.diameter),
        height: millimetres(fastener.nut.height),
      }
    : null,
  slack: fastener.slack ? fastener.slack.map(millimetres) : null,
  solids: fastener.body ? pieceRecords(fastener.body, frame) : [],
});

/** The drilling table; its holes by their places in `holes`. */
export const drillRecord = ({
  bit,
  diameter,
  holes,
  what,
  depth,
  jig,
  slot,
  backing,
  into,
  when,
  steps,
}: DrillRow): Json => ({
  bit,
  diameter: millimetres(diameter),
  holes,
  what,
  depth: typeof depth === "string" ? depth : millimetres(depth),
  jig: jig?.id ?? null,
  slot: slot && millimetres(slot),
  backing,
  into: into.map(({ mark, parts, side }) => ({ mark, parts, side })),
  when,
  steps,
});

export const holeRecord = (hole: Hole, frame: Frame): Json => ({
  part: hole.part,
  kind: hole.kind,
  at: frame.point(hole.at),
  direction: hole.direction,
  stages: hole.stages.map(({ diameter, depth }) => ({ diameter: millimetres(diameter), depth: millimetres(depth) })),
  through: hole.through,
  slot: hole.slot ? { along: hole.slot.along, length: millimetres(hole.slot.length) } : null,
  for: hole.for,
  keep: { edge: millimetres(hole.keep.edge), end: millimetres(hole.keep.end), under: millimetres(hole.keep.under) },
  plugged: false,
  atBench: hole.atBench,
});
