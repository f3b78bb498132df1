/** Joints, fasteners and holes, as the record has them. */
import type { BuiltJoint } from "../../../solve/build.ts";
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
  contact: joint.contact.map(({ centre, normal, area }) => ({
    centre: frame.vec(centre),
    normal,
    area: area / SQUARE_MM,
  })),
  fasteners: joint.fasteners,
});

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
  solids: fastener.body ? pieceRecords(fastener.body, frame) : [],
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
