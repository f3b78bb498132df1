import { fastenerNeedsRoom } from "../../../findings/rules/fastener-needs-room.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Arrangement, Fastener, Hole } from "../../design.ts";
import { extent, faceAxis, faceOf, indexOf, isHigh, middle, shift, thirdAxis, unit, withAxis } from "../space.ts";
import { drivenScrew } from "./driven-screw.ts";
import { FIGURE_EIGHT } from "./hardware.ts";
import { depthAt } from "./line.ts";
import { isHeld, slackAlong } from "./movement.ts";
import { placesOf } from "./places-of.ts";
import { lengthFor, sizeFor } from "./screw-size.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/** Cosine of 30 degrees to nine places; and cos 15° − cos 30°, which is what swinging from 30 to 15 degrees gains. */
const COSINE_30 = rational(866_025_404, 1_000_000_000);
const SWING = rational(999, 10_000);

/**
 * Figure-eight fasteners: one disc lies in a recess of the rail's edge, open to its inner face, the other under the top. On a rail along
 * the grain they stand 30 degrees askew, so that they can swing either way; across the grain they stand square and swing 30 degrees. Where
 * the wood is held they stand square to a rail along the grain and cannot give. One every 12 in, the first 3 in from the end (common practice).
 */
export function figureEights(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign, still } = site;
  const inch = context.units === "inch";
  const plate = FIGURE_EIGHT[inch ? "inch" : "mm"];
  const thin = head.frame.thickness;
  const run = thirdAxis(axis, thin);
  const lack = (part: string, why: string): readonly Arrangement[] => {
    context.report(
      fastenerNeedsRoom(draft.at, {
        part,
        what: "a figure-eight fastener",
        why,
        remedy: "use a thicker rail, buttons in a groove, or slotted screws",
      }),
    );
    return [];
  };
  if (!still || moved.turned) return [];
  if (thin === axis)
    return lack(head.id, "its broad side lies against the wood that moves, and the recess goes into an edge");
  const thick = extent(head.body, thin);
  const needs = add(add(plate.in, half(plate.disc)), plate.outside);
  if (less(thick, needs)) return lack(head.id, `${context.print(thick)} thick, and needs ${context.print(needs)}`);
  const places = placesOf(site, moved, context, {
    spacing: inch ? inches(12) : millimetres(300),
    fromEnds: inch ? inches(3) : millimetres(75),
    count: null,
    twoFrom: inch ? inches(6) : millimetres(150),
  });
  const size = sizeFor(site, inches(1), context);
  if (!places || !size || places.along !== run) return [];
  const said = options(draft).side?.value;
  const face =
    said && faceAxis(said) === thin ? said : faceOf(thin, less(middle(head.body, thin), middle(hold.body, thin)));
  const inwards = (by: Length): Length => (isHigh(face) ? by : negate(by));
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, place] of places.points.entries()) {
    const held = isHeld(still, site, places, number);
    const alongGrain = indexOf(still.across) === thin;
    const askew = alongGrain && !held;
    const skin = isHigh(face) ? head.body.high[thin] : head.body.low[thin];
    const recess = withAxis(place, thin, subtract(skin, inwards(plate.in)));
    const out = askew ? multiply(plate.apart, COSINE_30) : plate.apart;
    const at = shift(shift(recess, thin, inwards(out)), run, askew ? half(plate.apart) : ZERO);
    const room = depthAt(hold.solid, at, axis, sign);
    if (room.n === 0n) return lack(hold.id, `it does not reach ${context.print(out)} past the ${face} of ${head.id}`);
    const length = lengthFor(site, size, plate.thick, room, context, false);
    if (!length) return [];
    const short = inch ? inches(5, 8) : millimetres(16);
    const give = alongGrain ? multiply(plate.apart, SWING) : half(plate.apart);
    const screw = drivenScrew(
      site,
      {
        ...{ number, at, size, length, room, through: plate.thick },
        head: "round",
        seat: "proud",
        passes: false,
        with: [
          `figure-eight fastener ${context.printItem(plate.disc)} × ${context.printItem(plate.thick)}`,
          `wood screw ${size.name} × ${context.printItem(short)}, countersunk head`,
        ],
        ...(!(held && alongGrain) && { slack: slackAlong(indexOf(still.across), give) }),
      },
      context,
    );
    const pilot = head.softwood ? size.pilot.softwood : size.pilot.hardwood;
    fasteners.push(screw.fastener);
    holes.push(
      {
        part: head.id,
        kind: "recess",
        at: recess,
        direction: unit(axis, -sign),
        stages: [
          { diameter: plate.disc, depth: plate.thick },
          { diameter: pilot, depth: short },
        ],
        through: false,
        for: screw.fastener.id,
        keep: { edge: ZERO, end: ZERO, under: inch ? inches(1, 8) : millimetres(3) },
        atBench: true,
      },
      screw.pilot,
    );
  }
  return [{ fasteners, holes }];
}
