/** The room that a tool needs behind a head: cylinders in line, first the one next to the head. */
import { cylinder, type Hull, type Vec } from "../../../geometry/index.ts";
import { plus, times } from "../../../geometry/vec.ts";
import { toNumber, UNITS_PER_MM } from "../../../units/index.ts";
import type { Tool } from "../../build.ts";
import type { Fastener } from "../../design.ts";

/** Diameter and length in mm. */
const room = (across: number, long: number) => ({ across, long });

/** Drivers as the build record states them; a hand and what it holds: common practice, no source. */
const ENVELOPES: Readonly<Record<Tool, readonly ReturnType<typeof room>[]>> = {
  straight: [room(8, 150), room(60, 200)],
  long: [room(8, 300), room(60, 200)],
  angle: [room(8, 25), room(34, 60)],
  stubby: [room(8, 50), room(30, 70)],
  hammer: [room(40, 120)],
  stapler: [room(40, 120)],
  hand: [room(40, 120)],
  wrench: [room(40, 120)],
};

/**
 * The tool's envelope on a fastener, its axis along the unit vector `axis` (head to point).
 * Some heads stand above the place that their length is measured from, and the tool starts on top of them:
 * each cylinder is lengthened by the head, so that it covers both places.
 */
export function envelope(fastener: Fastener, tool: Tool, axis: Vec): readonly Hull[] {
  const { at, height } = fastener.head;
  const top: Vec = [toNumber(at[0]), toNumber(at[1]), toNumber(at[2])];
  const back = times(axis, -1);
  let start = 0;
  return ENVELOPES[tool].map(({ across, long }) => {
    const from = plus(top, times(back, start));
    start += long * UNITS_PER_MM;
    return cylinder(from, back, (across / 2) * UNITS_PER_MM, long * UNITS_PER_MM + toNumber(height));
  });
}
