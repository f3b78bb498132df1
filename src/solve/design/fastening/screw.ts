import { fastenerNeedsRoom } from "../../../findings/rules/fastener-needs-room.ts";
import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { screwNearEdge } from "../../../findings/rules/screw-near-edge.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, min, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Box, Fastener, Hole, Point } from "../../design.ts";
import { type AxisIndex, otherAxes } from "../space.ts";
import type { ScrewSize } from "./catalogue.ts";
import { drivenScrew, passage } from "./driven-screw.ts";
import { plugFor, washerFor } from "./hardware.ts";
import { depthAt, runAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { lengthFor, sizeFor } from "./screw-size.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/**
 * Screws straight through the headed part into the other, with clearance hole, countersink or counterbore, and pilot. A plugged
 * screw is counterbored for its plug: 3/8 in deep, but no more than a third of the wood (common practice, no source). Under the head of one
 * in a wide hole lies a washer, and a counterbore gives that room to slide.
 */
export function screws(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign } = site;
  const said = options(draft);
  const places = placesOf(site, moved, context);
  const sunkBy = said.counterbore ? context.measure(said.counterbore) : undefined;
  const oversized = said.oversized ? context.measure(said.oversized) : undefined;
  if (!places || sunkBy === null || oversized === null) return [];
  const style = said.head?.value ?? (oversized ? "round" : "countersunk");
  const washer = oversized && washerFor(oversized, context);
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const passed = runAt(head.solid, at, axis, sign > 0 ? -1 : 1);
    if (passed.interrupted || passed.depth.n === 0n) {
      context.report(holeRunsIntoCut(draft.at, { part: head.id, hole: "screw", cut: "cut" }));
      return [];
    }
    const counterbore = sunkBy ?? (style === "plugged" ? plugDepth(passed.depth, context) : ZERO);
    const wood = subtract(passed.depth, counterbore);
    const through = washer ? add(wood, washer.thick) : wood;
    const size = sizeFor(site, through, context);
    if (!size) return [];
    // Where the far face slopes, the side of the screw comes near it before its point does.
    const straight = depthAt(hold.solid, at, axis, sign);
    const room = hold.askew ? subtract(straight, size.shank) : straight;
    const length = lengthFor(site, size, through, room, context);
    if (!length) return [];
    if (number === 0 && less(places.toEdge, multiply(size.shank, rational(2))))
      context.report(screwNearEdge(draft.at, { part: hold.id, edge: context.print(places.toEdge), screw: size.name }));
    const sunk = counterbore.n > 0n;
    const plug = style === "plugged" ? plugFor(size, context) : null;
    const slides = oversized ? subtract(oversized, size.clearance) : ZERO;
    const bore = washer
      ? wholeBit(add(washer.diameter, slides), context)
      : (plug?.diameter ?? counterboreFor(size, context));
    if (washer && (plug || style === "countersunk" || (sunk && !holds(head.body, axis, at, bore, context)))) {
      context.report(fastenerNeedsRoom(draft.at, tooWide(site, bore, style, context)));
      return [];
    }
    const screw = drivenScrew(
      site,
      {
        ...{ number, at, size, length, through, room },
        head: style,
        seat: plug ? "plugged" : sunk ? "sunk" : style === "round" ? "proud" : "flush",
        ...(plug && { with: [plug.item] }),
        ...(washer && { with: [`${washer.item}, hole for ${size.name}`], headDiameter: washer.diameter }),
      },
      context,
    );
    const wide = sunk
      ? [{ diameter: bore, depth: counterbore }]
      : style === "round"
        ? []
        : [{ diameter: size.head, depth: size.headHeight, cone: true as const }];
    const stages = [...wide, { diameter: oversized ?? size.clearance, depth: passed.depth }];
    const kind = oversized ? "oversized" : "clearance";
    fasteners.push(screw.fastener);
    holes.push(passage(site, { number, at }, passed.depth, { kind, stages }), screw.pilot);
  }
  return [{ fasteners, holes }];
}

/** Whether a counterbore leaves wood round it in the part that it is bored into. */
function holds({ low, high }: Box, axis: AxisIndex, at: Point, bore: Length, { units }: FasteningContext): boolean {
  const wall = units === "inch" ? inches(1, 8) : millimetres(3);
  const least = add(half(bore), wall);
  return otherAxes(axis).every((i) => !less(subtract(at[i], low[i]), least) && !less(subtract(high[i], at[i]), least));
}

/** A washer over a wide hole that a plug or a countersink does not cover, or that no counterbore takes. */
const tooWide = ({ head }: Site, bore: Length, style: string, { print }: FasteningContext) => ({
  part: head.id,
  what: "a washer over the wide hole",
  why:
    style === "round"
      ? `its counterbore is ${print(bore)} wide, and does not fit into the wood`
      : `a ${style} head would go through the hole, or hold the wood fast`,
  remedy:
    style === "round"
      ? "take a smaller `oversized`, leave the `counterbore` away, or use buttons or clips"
      : "write `head: round`, or leave `oversized` away",
});

const plugDepth = (thick: Length, { units }: FasteningContext): Length => {
  const third = multiply(thick, rational(1, 3));
  return units === "inch"
    ? min(inches(3, 8), roundTo(third, inches(1, 16), "down"))
    : min(millimetres(10), roundTo(third, millimetres(1), "down"));
};

/** A bit that lets the head in: the next 1/16 in or millimetre above it. */
export const counterboreFor = ({ head }: ScrewSize, context: Pick<FasteningContext, "units">): Length =>
  wholeBit(add(head, context.units === "inch" ? inches(1, 32) : millimetres(1, 2)), context);

const wholeBit = (wide: Length, { units }: Pick<FasteningContext, "units">): Length =>
  roundTo(wide, units === "inch" ? inches(1, 16) : millimetres(1), "up");
