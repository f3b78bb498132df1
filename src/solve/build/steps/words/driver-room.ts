/** The room that a driver has behind the screws of hardware that is fixed to what stands there. */
import { ZERO } from "../../../../units/rational.ts";
import type { Fastener, Hardware, Hole } from "../../../design.ts";
import { reach } from "../../reach/index.ts";
import { series, type Work } from "../draft.ts";
import { DRIVEN_WITH } from "./close.ts";

/** What is said of it; `blind`: behind one of the heads or more no drill goes in at all. */
interface DriverRoom {
  readonly texts: readonly string[];
  readonly blind: boolean;
}

/**
 * "There is little room behind the heads: use a right-angle driver.", where no drill goes in line behind some of the screws. `standing`: ids of the
 * parts that stand together by then.
 */
export function driverRoom(work: Work, hardware: readonly Hardware[], standing: readonly string[]): DriverRoom {
  const own = new Map(hardware.map((each) => [each.id, each]));
  const apart = [...work.motions.map(({ moves }) => moves), ...work.plan.removable.map(({ parts }) => parts)];
  // What opens is open, what comes off is off: each screw has only what goes with its part about it.
  const withIt = (id: string, part: string): boolean => apart.every((ids) => ids.includes(id) === ids.includes(part));
  const beside = (part: string) => standing.filter((id) => withIt(id, part)).map(work.part);
  const ways = reach();
  const holes = work.plan.holes.filter(({ for: id, kind }) => {
    const one = id === null ? undefined : own.get(id);
    return one !== undefined && (kind === "pilot" || one.item.kind === "wall screw");
  });
  const tools = [...new Set(holes.map((hole) => ways.toolFor(screwIn(hole), beside(hole.part))?.tool ?? null))];
  if (tools.includes(null)) {
    const heads = tools.length > 1 ? "some of the heads" : holes.length > 1 ? "the heads" : "the head";
    const these = tools.length > 1 ? "these screws" : holes.length > 1 ? "the screws" : "the screw";
    return {
      texts: [`No drill goes in behind ${heads}: turn ${these} by hand, with a slim screwdriver or an offset one.`],
      blind: true,
    };
  }
  const told = tools.flatMap((tool) => (tool && DRIVEN_WITH[tool]) ?? []);
  const too = holes.some(({ atBench }) => !atBench) ? ", for the holes too" : "";
  const texts = told.length > 0 ? [`There is little room behind the heads: use ${series(told)}${too}.`] : [];
  return { texts, blind: false };
}

/** A screw whose head lies at the mouth of a hole. */
function screwIn({ part, at, direction, stages }: Hole): Fastener {
  const diameter = stages[0]?.diameter ?? ZERO;
  return {
    ...{ id: "", joint: "", kind: "wood screw", item: "", length: ZERO, rod: diameter },
    head: { at, diameter, height: ZERO, seat: "flush" },
    ...{ direction, through: [part], into: part, travelsWith: null },
  };
}
