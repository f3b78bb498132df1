/** The room that a tool needs behind a head: cylinders in line, first the one next to the head. */
import { cylinder, type Hull, type Vec } from "../../../geometry/index.ts";
import { plus, times } from "../../../geometry/vec.ts";
import { toMillimetres, toNumber, UNITS_PER_MM } from "../../../units/index.ts";
import type { Tool } from "../../build.ts";
import type { Fastener } from "../../design.ts";

/** Diameter and length in mm. */
const room = (across: number, long: number) => ({ across, long });

/**
 * Drivers as the build record states them; a hand and what it holds: common practice, no source. A long bit bores in an extension, 1/2 in (13 mm)
 * thick, which begins behind the end of the bit.
 */
const ENVELOPES: Readonly<Record<Tool, readonly ReturnType<typeof room>[]>> = {
  straight: [room(8, 150), room(60, 200)],
  long: [room(8, 25), room(13, 275), room(60, 200)],
  angle: [room(8, 25), room(34, 60)],
  stubby: [room(8, 50), room(30, 70)],
  hammer: [room(40, 120)],
  stapler: [room(40, 120)],
  hand: [room(40, 120)],
  wrench: [room(40, 120)],
};

/** How many rooms a tool needs, one behind the other. */
export const roomsOf = (tool: Tool): number => ENVELOPES[tool].length;

/**
 * Room number `which` of a tool on a fastener, the one after the last for the hand that puts on its nut. The tool's axis lies along the unit vector `axis` (head to point).
 * Some heads stand above the place that their length is measured from, and the tool starts on top of them:
 * each cylinder is lengthened by the head, so that it covers both places.
 */
export function envelope(fastener: Fastener, tool: Tool, axis: Vec, which: number): Hull | null {
  const rooms = ENVELOPES[tool];
  const own = rooms[which];
  if (!own) return which === rooms.length ? nutRoom(fastener) : null;
  const start = rooms.slice(0, which).reduce((so, { long }) => so + long, 0);
  return behind(fastener, axis, {
    across: own.across,
    from: start,
    long: own.long + toMillimetres(fastener.head.height),
  });
}

/**
 * What the first room of every tool covers, however far it leans: what stands here stands in the way of all of them.
 * A bit 8 mm across that leans 5 degrees still covers 3.6 mm in line with the fastener 24 mm up.
 */
export const core = (fastener: Fastener): Hull =>
  behind(fastener, fastener.direction, { across: 3, from: 0.2, long: 23.8 });

/** What of a fastener stands out of the wood: a proud head, a nut that is turned on, the end of its bolt. */
export function outstanding({ head, nut, direction, length, rod, travelsWith }: Fastener): readonly Hull[] {
  const at: Vec = [toNumber(head.at[0]), toNumber(head.at[1]), toNumber(head.at[2])];
  const proud = head.seat === "proud" && travelsWith === null;
  const rods = proud || nut ? [cylinder(at, direction, toNumber(rod) / 2, toNumber(length))] : [];
  const heads = proud ? [cylinder(at, times(direction, -1), toNumber(head.diameter) / 2, toNumber(head.height))] : [];
  return [...rods, ...heads];
}

/** The room that a hand needs to bring the nut, or the cross dowel to its bore. */
function nutRoom({ nut }: Fastener): Hull | null {
  if (!nut) return null;
  const [hand] = ENVELOPES.hand;
  return hand ? behind({ head: nut }, nut.direction, { ...hand, from: 0 }) : null;
}

/** A cylinder behind the head; sizes in mm. */
function behind(
  { head }: { readonly head: Pick<Fastener["head"], "at"> },
  axis: Vec,
  { across, from, long }: { across: number; from: number; long: number },
): Hull {
  const top: Vec = [toNumber(head.at[0]), toNumber(head.at[1]), toNumber(head.at[2])];
  const back = times(axis, -1);
  const start = plus(top, times(back, from * UNITS_PER_MM));
  return cylinder(start, back, (across / 2) * UNITS_PER_MM, long * UNITS_PER_MM);
}
