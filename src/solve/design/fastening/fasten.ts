import type { JointDraft } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { negate, ZERO } from "../../../units/rational.ts";
import type { Arrangement } from "../../design.ts";
import { acrossGap } from "../joinery/touch.ts";
import { common } from "../space.ts";
import type { FasteningMethod } from "./methods.ts";
import type { FasteningContext, Member, RowShift, Site } from "./site.ts";

/**
 * The ways in which a joint may be fastened, best first: as described, then shifted along the row a little either way, so that
 * fasteners of neighbouring joints can keep out of each other's way, then drawn in at both ends; then with heads let in, where they may be. Empty when it cannot be done, which has been reported.
 */
export function fasten(
  { make, steps, drawnIn = [], sinks }: FasteningMethod,
  site: Site,
  context: FasteningContext,
): readonly Arrangement[] {
  const step = (n: number): Length => (context.units === "inch" ? inches(3 * n, 8) : millimetres(10 * n));
  const shifts = steps.map(step);
  const ways = [ZERO, ...shifts.flatMap((by) => [by, negate(by)])].map((by): RowShift => ({ by, turned: false }));
  const turned: RowShift = { by: ZERO, turned: true };
  const closer = drawnIn.map((n): RowShift => ({ by: ZERO, in: step(n), turned: false }));
  const [first, ...rest] = [...ways, ...closer, turned];
  const best = make(site, first as RowShift, context);
  if (best.length === 0) return [];
  // What is wrong with the first is told once; the others only offer themselves.
  const quiet = { ...context, report: () => undefined };
  const sunk = sinks ? [...ways, turned].map((shift): RowShift => ({ ...shift, sunk: true })) : [];
  return [...best, ...[...rest, ...sunk].flatMap((shift) => make(site, shift, quiet))];
}

/** The site of a joint whose parts are kept apart on purpose: where their bodies would meet. Null where they would not. */
export function openSiteOf(joint: string, draft: JointDraft, head: Member, hold: Member): Omit<Site, "still"> | null {
  const touch = acrossGap(head.body, hold.body);
  if (touch.kind !== "faces") return null;
  return { joint, draft, head, hold, axis: touch.axis, sign: touch.sign, area: common(head.body, hold.body) };
}
