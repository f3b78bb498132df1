/** The room that a driver has behind the screws of hardware that is fixed to what stands there. */
import { ZERO } from "../../../../units/rational.ts";
import type { Fastener, Hardware, Hole } from "../../../design.ts";
import { reach } from "../../reach/index.ts";
import { series, type Work } from "../draft.ts";
import { DRIVEN_WITH } from "./driving.ts";

/**
 * "There is little room behind the heads: use a right-angle driver.", where no drill goes in line behind some of the screws. `standing`: ids of the
 * parts that stand together by then.
 */
export function driverTexts(work: Work, hardware: readonly Hardware[], standing: readonly string[]): readonly string[] {
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
  const inPlace = holes.some(({ atBench }) => !atBench);
  const told = tools.flatMap((tool) => (tool && DRIVEN_WITH[tool]) ?? []);
  if (tools.includes(null))
    return [
      inPlace && holes.every(({ stages, through }) => through && stages.length === 1)
        ? "No drill goes in behind the heads: bore these holes from the other side before the piece is lifted into its place, and turn the screws with an offset screwdriver."
        : "No drill goes in behind some of the heads: turn these screws by hand, with a slim screwdriver or an offset one.",
    ];
  if (told.length === 0) return [];
  return [`There is little room behind the heads: use ${series(told)}${inPlace ? ", for the holes too" : ""}.`];
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
