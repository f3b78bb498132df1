import type { Contact } from "../../../geometry/index.ts";
import type { JointDraft } from "../../../parse/draft.ts";
import { inches, millimetres } from "../../../units/length.ts";
import { negate, ZERO } from "../../../units/rational.ts";
import type { Arrangement } from "../../design.ts";
import { touchOf } from "../joinery/touch.ts";
import { type AxisIndex, common } from "../space.ts";
import type { FasteningMethod } from "./methods.ts";
import { contactBox } from "./row.ts";
import type { FasteningContext, Member, RowShift, Site } from "./site.ts";

/**
 * The ways in which a joint may be fastened, best first: as described, then shifted along the row a little either way, so that
 * fasteners of neighbouring joints can keep out of each other's way. Empty when it cannot be done, which has been reported.
 */
export function fasten(
  { make, steps }: FasteningMethod,
  site: Site,
  context: FasteningContext,
): readonly Arrangement[] {
  const shifts = steps.map((n) => (context.units === "inch" ? inches(3 * n, 8) : millimetres(10 * n)));
  const ways = [ZERO, ...shifts.flatMap((by) => [by, negate(by)])].map((by): RowShift => ({ by, turned: false }));
  const turned: RowShift = { by: ZERO, turned: true };
  const [first, ...rest] = [...ways, turned];
  const best = make(site, first as RowShift, context);
  if (best.length === 0) return [];
  // What is wrong with the first is told once; the others only offer themselves.
  const quiet = { ...context, report: () => undefined };
  return [...best, ...rest.flatMap((shift) => make(site, shift, quiet))];
}

/** The site of a joint: its largest contact that faces along an axis; null where there is none. */
export function siteOf(
  joint: string,
  draft: JointDraft,
  head: Member,
  hold: Member,
  contacts: readonly Contact[],
  headIsFirst: boolean,
): Omit<Site, "still"> | null {
  const square = contacts.filter(({ normal }) => normal.filter((n) => Math.abs(n) < 1e-9).length === 2);
  const [first, ...others] = square;
  if (!first) return null;
  const largest = others.reduce((best, c) => (c.area > best.area ? c : best), first);
  const axis = largest.normal.findIndex((n) => Math.abs(n) > 0.5) as AxisIndex;
  const away = largest.normal[axis] > 0 === headIsFirst;
  const area = contactBox(head.body, hold.body, largest);
  return { joint, draft, head, hold, axis, sign: away ? 1 : -1, area };
}

/** The site of a joint whose parts are kept apart on purpose: where their bodies would meet. Null where they would not. */
export function openSiteOf(joint: string, draft: JointDraft, head: Member, hold: Member): Omit<Site, "still"> | null {
  const touch = touchOf(head.body, hold.body);
  if (touch.kind !== "faces") return null;
  return { joint, draft, head, hold, axis: touch.axis, sign: touch.sign, area: common(head.body, hold.body) };
}
