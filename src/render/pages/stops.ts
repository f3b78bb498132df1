/** To which depths the drills are set, each once in its true size. */
import type { DrillRow } from "../../solve/build.ts";
import { sayDrill } from "../../solve/design/boring/drills.ts";
import { compare, type Length, toNumber } from "../../units/index.ts";
import { fitsBeside, stopDrawing } from "../drawing/template/stop.ts";
import type { Atom } from "../typeset/atom.ts";
import { cell } from "./cells.ts";
import type { Plan } from "./plan.ts";
import { trueSize } from "./true-size.ts";

interface Stop {
  readonly diameter: Length;
  readonly depth: Length;
  readonly steps: readonly number[];
  /** The jigs that the depth holds, "jig 2". */
  readonly jigs: readonly string[];
}

export function stopsInTrueSize(plan: Plan): readonly Atom[] {
  const { build, printer, frame, pen } = plan;
  const all = stopsOf(build.drilling);
  const stops = all.filter(({ depth }) => fitsBeside(depth));
  if (stops.length === 0) return [];
  const longer = all
    .filter((stop) => !stops.includes(stop))
    .map(({ diameter, depth }) => `${sayDrill(diameter, build.design.units)} at ${printer.exact(depth)}`);
  const cells = stops.map(({ diameter, depth, steps, jigs }) => {
    const word = steps.length === 1 ? "Step" : "Steps";
    const through = jigs.length === 0 ? "" : `, through ${jigs.join(" or ")}`;
    const when = steps.length === 0 ? "" : `${word}\u00a0${steps.join(", ")}${through}.`;
    const head = `${sayDrill(diameter, build.design.units)}, stop at ${printer.exact(depth)}`;
    return cell(head, when, stopDrawing(diameter, depth, { ...pen, print: printer.exact }), frame.width, "four");
  });
  const besides = longer.length === 0 ? "" : `Longer, by a rule: ${longer.join("; ")}.`;
  return trueSize(plan, "Stops in their true size", "lay a drill on its picture and set its stop", cells, besides);
}

/** Those that are set by a depth, drill by drill. */
function stopsOf(rows: readonly DrillRow[]): readonly Stop[] {
  const found = new Map<string, Stop>();
  for (const { bit, diameter, depth, steps, jig } of rows) {
    if (bit !== "drill" || typeof depth === "string" || jig?.scrap || toNumber(depth) <= 0) continue;
    const key = [...[diameter, depth].map(({ n, d }) => `${n}/${d}`), jig ? "by a jig" : ""].join();
    const before = found.get(key);
    const all = new Set([...(before?.steps ?? []), ...steps]);
    const jigs = [...new Set([...(before?.jigs ?? []), ...(jig ? [jig.id] : [])])];
    found.set(key, { diameter, depth, steps: [...all].sort((a, b) => a - b), jigs });
  }
  return [...found.values()].sort((a, b) => compare(a.diameter, b.diameter) || compare(a.depth, b.depth));
}
