import type { JointDraft } from "../../../parse/draft.ts";
import { inches, millimetres } from "../../../units/length.ts";
import { negate, ZERO } from "../../../units/rational.ts";
import type { Arrangement } from "../../design.ts";
import { dowels } from "./dowel.ts";
import { nails } from "./nail.ts";
import { pocketScrews } from "./pocket.ts";
import { screws } from "./screw.ts";
import type { FasteningContext, Maker, RowShift, Site } from "./site.ts";

export type FasteningMethod = "screws" | "pocket screws" | "dowels" | "nails" | "brads";

/** What fastens a joint: its own method, or what is added to glue, laps and housings. */
export function fasteningOf(draft: JointDraft): FasteningMethod | null {
  const method = draft.with.value;
  if (
    method === "screws" ||
    method === "pocket screws" ||
    method === "dowels" ||
    method === "nails" ||
    method === "brads"
  )
    return method;
  const kind = draft.fasteners?.kind;
  return kind === undefined ? null : (`${kind}s` as FasteningMethod);
}

/**
 * The ways in which a joint may be fastened, best first: as described, then shifted along the row a little either way, so that
 * fasteners of neighbouring joints can keep out of each other's way. Empty when it cannot be done, which has been reported.
 */
export function fasten(method: FasteningMethod, site: Site, context: FasteningContext): readonly Arrangement[] {
  const shifts = context.units === "inch" ? [inches(3, 8), inches(3, 4)] : [millimetres(10), millimetres(20)];
  const ways = [ZERO, ...shifts.flatMap((by) => [by, negate(by)])].map((by): RowShift => ({ by, turned: false }));
  const turned: RowShift = { by: ZERO, turned: true };
  const make = MAKERS[method];
  const [first, ...rest] = [...ways, turned];
  const best = make(site, first as RowShift, context);
  if (best.length === 0) return [];
  // What is wrong with the first is told once; the others only offer themselves.
  const quiet = { ...context, report: () => undefined };
  return [...best, ...rest.flatMap((shift) => make(site, shift, quiet))];
}

const MAKERS: Readonly<Record<FasteningMethod, Maker>> = {
  screws,
  "pocket screws": pocketScrews,
  dowels,
  nails: (site, shift, context) => nails("nail", site, shift, context),
  brads: (site, shift, context) => nails("brad", site, shift, context),
};
