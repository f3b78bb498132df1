import type { Length } from "../../../units/length.ts";
import { half, min, negate, subtract, ZERO } from "../../../units/rational.ts";
import type { Fastener, Hole, Point } from "../../design.ts";
import { shift, unit } from "../space.ts";
import type { ScrewSize } from "./catalogue.ts";
import { underLimit } from "./screw-size.ts";
import type { FasteningContext, Site } from "./site.ts";

/** A screw driven square into the part that holds its point. */
export interface ScrewAt {
  /** Counted from 0 along the joint. */
  readonly number: number;
  /** Where the axis enters the part that holds the point. */
  readonly at: Point;
  readonly size: ScrewSize;
  readonly length: Length;
  /** From where the length is measured to `at`. */
  readonly through: Length;
  /** Wood ahead of `at`. */
  readonly room: Length;
  readonly head: "countersunk" | "round" | "plugged";
  readonly seat: Fastener["head"]["seat"];
  /** False where something other than the headed part lies under the head. */
  readonly passes?: false;
  readonly with?: readonly string[];
  /** Of a washer under its head. */
  readonly headDiameter?: Length;
  readonly slack?: NonNullable<Fastener["slack"]>;
}

const HEADS = { countersunk: "countersunk head", round: "round head", plugged: "plugged" } as const;

/** The screw, and its pilot hole, drilled in place. */
export function drivenScrew(
  { joint, head, hold, axis, sign }: Site,
  screw: ScrewAt,
  context: FasteningContext,
): { readonly fastener: Fastener; readonly pilot: Hole } {
  const { at, size, length, through, room } = screw;
  const id = `${joint}.${screw.number + 1}`;
  const direction = unit(axis, sign);
  const bite = subtract(length, through);
  return {
    fastener: {
      id,
      joint,
      kind: "wood screw",
      item: `wood screw ${size.name} × ${context.printItem(length)}, ${HEADS[screw.head]}`,
      length,
      rod: size.shank,
      head: {
        at: shift(at, axis, sign > 0 ? negate(through) : through),
        diameter: screw.headDiameter ?? size.head,
        height: size.headHeight,
        seat: screw.seat,
      },
      direction,
      through: screw.passes === false ? [] : [head.id],
      into: hold.id,
      travelsWith: null,
      ...(screw.with && { with: screw.with }),
      ...(screw.slack && { slack: screw.slack }),
    },
    pilot: {
      part: hold.id,
      kind: "pilot",
      at,
      direction,
      stages: [{ diameter: hold.softwood ? size.pilot.softwood : size.pilot.hardwood, depth: bite }],
      through: false,
      for: id,
      keep: {
        edge: half(size.shank),
        end: half(size.shank),
        under: hold.askew ? ZERO : min(underLimit(context), subtract(room, bite)),
      },
      atBench: false,
    },
  };
}

/** A hole from the head's side right through the headed part, bored at the bench. */
export function passage(
  { joint, head, axis, sign }: Site,
  { number, at }: Pick<ScrewAt, "number" | "at">,
  thick: Length,
  bored: Pick<Hole, "kind" | "stages"> & Partial<Pick<Hole, "slot">>,
): Hole {
  return {
    part: head.id,
    at: shift(at, axis, sign > 0 ? negate(thick) : thick),
    direction: unit(axis, sign),
    through: true,
    for: `${joint}.${number + 1}`,
    keep: { edge: ZERO, end: ZERO, under: ZERO },
    atBench: true,
    ...bored,
  };
}
