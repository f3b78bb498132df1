import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { screwComesThrough } from "../../../findings/rules/screw-comes-through.ts";
import { screwNearEdge } from "../../../findings/rules/screw-near-edge.ts";
import { screwSizeUnknown } from "../../../findings/rules/screw-size-unknown.ts";
import { screwTooShort } from "../../../findings/rules/screw-too-short.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, less, min, multiply, negate, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Fastener, Hole } from "../../design.ts";
import { shift, unit } from "../space.ts";
import { INCH_SCREWS, METRIC_SCREWS, type ScrewSize, SOLD_LENGTHS } from "./catalogue.ts";
import { depthAt, runAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/** Screws straight through the headed part into the other, with clearance hole, countersink or counterbore, and pilot. */
export function screws(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign } = site;
  const said = options(draft);
  const places = placesOf(site, moved, context);
  const counterbore = said.counterbore ? context.measure(said.counterbore) : ZERO;
  const oversized = said.oversized ? context.measure(said.oversized) : undefined;
  if (!places || counterbore === null || oversized === null) return [];
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const passed = runAt(head.solid, at, axis, sign > 0 ? -1 : 1);
    if (passed.interrupted || passed.depth.n === 0n) {
      context.report(holeRunsIntoCut(draft.at, { part: head.id, hole: "screw", cut: "cut" }));
      return [];
    }
    const through = subtract(passed.depth, counterbore);
    const size = sizeFor(site, through, context);
    if (!size) return [];
    // Where the far face slopes, the side of the screw comes near it before its point does.
    const straight = depthAt(hold.solid, at, axis, sign);
    const room = hold.askew ? subtract(straight, size.shank) : straight;
    const length = lengthFor(site, size, through, room, context);
    if (!length) return [];
    const bite = subtract(length, through);
    if (number === 0 && less(places.toEdge, multiply(size.shank, rational(2))))
      context.report(screwNearEdge(draft.at, { part: hold.id, edge: context.print(places.toEdge), screw: size.name }));
    const direction = unit(axis, sign);
    const surface = shift(at, axis, sign > 0 ? negate(add(through, counterbore)) : add(through, counterbore));
    const seatAt = shift(surface, axis, sign > 0 ? counterbore : negate(counterbore));
    const round = said.head?.value === "round";
    const sunk = counterbore.n > 0n;
    const plugged = said.head?.value === "plugged";
    const id = `${site.joint}.${number + 1}`;
    const headWord = plugged ? "plugged" : round ? "round head" : "countersunk head";
    fasteners.push({
      id,
      joint: site.joint,
      kind: "wood screw",
      item: `wood screw ${size.name} × ${context.printItem(length)}, ${headWord}`,
      length,
      rod: size.shank,
      head: {
        at: seatAt,
        diameter: size.head,
        height: size.headHeight,
        seat: plugged ? "plugged" : sunk ? "sunk" : round ? "proud" : "flush",
      },
      direction,
      through: [head.id],
      into: hold.id,
      travelsWith: null,
    });
    const clearance = oversized ?? size.clearance;
    const wide = sunk
      ? [{ diameter: counterboreFor(size, context), depth: counterbore }]
      : round
        ? []
        : [{ diameter: size.head, depth: size.headHeight }];
    holes.push({
      part: head.id,
      kind: oversized ? "oversized" : "clearance",
      at: surface,
      direction,
      stages: [...wide, { diameter: clearance, depth: add(through, counterbore) }],
      through: true,
      for: id,
      keep: { edge: ZERO, end: ZERO, under: ZERO },
      atBench: true,
    });
    holes.push({
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
    });
  }
  return [{ fasteners, holes }];
}

/** A bit that lets the head in: the next 1/16 in or millimetre above it. */
const counterboreFor = ({ head }: ScrewSize, { units }: FasteningContext): Length =>
  units === "inch"
    ? roundTo(add(head, inches(1, 32)), inches(1, 16), "up")
    : roundTo(add(head, millimetres(1, 2)), millimetres(1), "up");

/** Wood that should stay under a point: 1/8 in (common practice, no source). */
const underLimit = (context: FasteningContext): Length => (context.units === "inch" ? inches(1, 8) : millimetres(3));

/** The gauge asked for, or by the wood under the head (common practice, no source): #6 under 1/2 in, #8 to 1 1/2, #10 above. */
function sizeFor({ draft }: Site, through: Length, context: FasteningContext): ScrewSize | null {
  const said = options(draft);
  const inch = context.units === "inch";
  const sizes = inch ? INCH_SCREWS : METRIC_SCREWS;
  const diameter = said.diameter ? context.measure(said.diameter) : undefined;
  if (diameter === null) return null;
  const asked = said.gauge?.value;
  const usual = less(through, inches(1, 2)) ? 1 : compare(through, inches(3, 2)) <= 0 ? 2 : 4;
  const found =
    asked !== undefined
      ? INCH_SCREWS.find(({ gauge }) => gauge === asked)
      : diameter !== undefined
        ? sizes.find(({ shank }) => compare(shank, diameter) === 0)
        : sizes[inch && usual === 4 ? 3 : usual];
  if (found) return found;
  context.report(
    screwSizeUnknown(said.gauge?.at ?? said.at ?? draft.at, { sold: sizes.map(({ name }) => name), metric: !inch }),
  );
  return null;
}

/** Screws of a gauge are sold up to about this length (common practice, no source). */
const LONGEST: ReadonlyMap<string, Length> = new Map([
  ["#4", inches(1)],
  ["#6", inches(2)],
  ["#8", inches(3)],
  ["#10", inches(4)],
]);

/** The length asked for, or the longest sold that has at most two thirds in the second part and leaves 1/4 in under its far face. */
function lengthFor(
  site: Site,
  size: ScrewSize,
  through: Length,
  room: Length,
  context: FasteningContext,
): Length | null {
  const { draft, head, hold } = site;
  const said = options(draft);
  const inch = context.units === "inch";
  const place = said.at ?? draft.at;
  if (said.length) {
    const length = context.measure(said.length);
    if (!length) return null;
    const bite = subtract(length, through);
    if (bite.n <= 0n) {
      context.report(
        screwTooShort(place, { length: context.print(length), part: head.id, thick: context.print(through) }),
      );
      return null;
    }
    const left = subtract(room, bite);
    if (less(left, underLimit(context)))
      context.report(
        screwComesThrough(
          place,
          { length: context.print(length), part: hold.id, left: context.print(left), out: left.n <= 0n },
          { severity: left.n <= 0n ? "error" : "warning" },
        ),
      );
    return left.n <= 0n ? null : length;
  }
  const most = subtract(add(through, room), inch ? inches(1, 4) : millimetres(6));
  const balanced = multiply(through, rational(3));
  const longest = LONGEST.get(size.name);
  const fitting = SOLD_LENGTHS.screw[inch ? "inch" : "mm"].filter(
    (length) =>
      compare(length, most) <= 0 &&
      compare(length, balanced) <= 0 &&
      less(through, length) &&
      (!longest || compare(length, longest) <= 0),
  );
  const best = fitting.at(-1);
  if (!best) context.report(screwTooShort(place, { length: null, part: head.id, thick: context.print(through) }));
  return best ?? null;
}
