import { holeRunsIntoCut } from "../../../findings/rules/hole-runs-into-cut.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, multiply, rational, subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Arrangement, Fastener, Hole } from "../../design.ts";
import { boltHole, boltRow, sinkFor } from "./bolt.ts";
import { boltSizeFor } from "./bolt-size.ts";
import type { ScrewSize } from "./catalogue.ts";
import { drivenScrew, passage } from "./driven-screw.ts";
import type { BoltSize } from "./hardware.ts";
import { depthAt, runAt } from "./line.ts";
import { placesOf } from "./places-of.ts";
import { lengthFor } from "./screw-size.ts";
import type { FasteningContext, RowShift, Site } from "./site.ts";

/** Lag screws with washers: through one part and into the other, turned with a wrench. */
export function lagScrews(site: Site, moved: RowShift, context: FasteningContext): readonly Arrangement[] {
  const { draft, head, hold, axis, sign } = site;
  const inch = context.units === "inch";
  const places = placesOf(site, moved, context, boltRow(inch));
  const bolt = boltSizeFor(site, context);
  const sink = bolt && sinkFor(site, bolt, context);
  if (!places || !bolt || !sink) return [];
  const size = lagOf(bolt, inch);
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  for (const [number, at] of places.points.entries()) {
    const passed = runAt(head.solid, at, axis, sign > 0 ? -1 : 1);
    const wood = subtract(passed.depth, sink.depth);
    if (passed.interrupted || wood.n <= 0n) {
      context.report(holeRunsIntoCut(draft.at, { part: head.id, hole: "lag screw", cut: "cut" }));
      return [];
    }
    const through = add(wood, bolt.washer.thick);
    const room = depthAt(hold.solid, at, axis, sign);
    const length = lengthFor(site, size, through, room, context);
    if (!length) return [];
    const seat = sink.depth.n > 0n ? "sunk" : "proud";
    const { fastener, pilot } = drivenScrew(
      site,
      { ...{ number, at, size, length, through, room }, head: "round", seat },
      context,
    );
    const washer = `washer ${context.printItem(bolt.washer.diameter)} wide for a ${bolt.name} lag screw`;
    fasteners.push({
      ...fastener,
      kind: "lag screw",
      item: `lag screw ${bolt.name} × ${context.printItem(length)}, hexagon head`,
      with: [washer],
    });
    const stages = [...sink.stages, { diameter: boltHole(bolt, inch), depth: passed.depth }];
    holes.push(passage(site, { number, at }, passed.depth, { kind: "clearance", stages }), pilot);
  }
  return [{ fasteners, holes }];
}

/** Pilots five eighths of the shank in softwood, three quarters in hardwood (common practice, no source). */
function lagOf({ name, rod, head, headHeight }: BoltSize, inch: boolean): ScrewSize {
  const bit = (eighths: number): Length =>
    roundTo(multiply(rod, rational(eighths, 8)), inch ? inches(1, 64) : millimetres(1, 2), "nearest");
  return {
    name,
    gauge: 0,
    shank: rod,
    head,
    headHeight,
    clearance: rod,
    pilot: { softwood: bit(5), hardwood: bit(6) },
  };
}
