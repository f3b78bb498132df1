import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { screwNearEdge } from "../../../findings/rules/screw-near-edge.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, less, min, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Fastener, Hole } from "../../design.ts";
import type { ScrewSize } from "./catalogue.ts";
import { drivenScrew, passage } from "./driven-screw.ts";
import { plugFor } from "./hardware.ts";
import { depthAt, runAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { lengthFor, sizeFor } from "./screw-size.ts";
import { type FasteningContext, options, type RowShift, type Site } from "./site.ts";

/**
 * Screws straight through the headed part into the other, with clearance hole, countersink or counterbore, and pilot. A plugged
 * screw is counterbored for its plug: 3/8 in deep, but no more than a third of the wood (common practice, no source).
 */
export function screws(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign } = site;
  const said = options(draft);
  const places = placesOf(site, moved, context);
  const sunkBy = said.counterbore ? context.measure(said.counterbore) : undefined;
  const oversized = said.oversized ? context.measure(said.oversized) : undefined;
  if (!places || sunkBy === null || oversized === null) return [];
  const style = said.head?.value ?? "countersunk";
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const passed = runAt(head.solid, at, axis, sign > 0 ? -1 : 1);
    if (passed.interrupted || passed.depth.n === 0n) {
      context.report(holeRunsIntoCut(draft.at, { part: head.id, hole: "screw", cut: "cut" }));
      return [];
    }
    const counterbore = sunkBy ?? (style === "plugged" ? plugDepth(passed.depth, context) : ZERO);
    const through = subtract(passed.depth, counterbore);
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
    const screw = drivenScrew(
      site,
      {
        ...{ number, at, size, length, through, room },
        head: style,
        seat: plug ? "plugged" : sunk ? "sunk" : style === "round" ? "proud" : "flush",
        ...(plug && { with: [plug.item] }),
      },
      context,
    );
    const wide = sunk
      ? [{ diameter: plug?.diameter ?? counterboreFor(size, context), depth: counterbore }]
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

const plugDepth = (thick: Length, { units }: FasteningContext): Length => {
  const third = multiply(thick, rational(1, 3));
  return units === "inch"
    ? min(inches(3, 8), roundTo(third, inches(1, 16), "down"))
    : min(millimetres(10), roundTo(third, millimetres(1), "down"));
};

/** A bit that lets the head in: the next 1/16 in or millimetre above it. */
export const counterboreFor = ({ head }: ScrewSize, { units }: Pick<FasteningContext, "units">): Length =>
  units === "inch"
    ? roundTo(add(head, inches(1, 32)), inches(1, 16), "up")
    : roundTo(add(head, millimetres(1, 2)), millimetres(1), "up");
