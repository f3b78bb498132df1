import { fastenerNeedsRoom } from "../../../findings/rules/fastener-needs-room.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, min, subtract } from "../../../units/rational.ts";
import type { Arrangement, Fastener, Hole, Point } from "../../design.ts";
import { type AxisIndex, faceAxis, isHigh, withAxis } from "../space.ts";
import { drivenScrew } from "./driven-screw.ts";
import { hairOf } from "./hardware.ts";
import { buttonOf, buttonSizes } from "./keeper-button.ts";
import { type KeeperPlan, keeperPlan } from "./keeper-groove.ts";
import { depthAt } from "./line.ts";
import { slackAlong } from "./movement.ts";
import { placesOf, type RowSite } from "./places-of.ts";
import type { RowPlan } from "./row.ts";
import { lengthFor, sizeFor } from "./screw-size.ts";
import type { FasteningContext, RowShift, Site } from "./site.ts";

/** One every 6 to 10 in, the first 2 1/2 in from the end (common practice, no source). */
export const keeperRow = (inch: boolean): RowPlan => ({
  spacing: inch ? inches(6) : millimetres(150),
  fromEnds: inch ? inches(5, 2) : millimetres(64),
  count: null,
  twoFrom: inch ? inches(6) : millimetres(150),
});

/** The places of buttons or clips along a rail. */
export const keeperPlaces = (site: RowSite, moved: RowShift, context: Parameters<typeof placesOf>[2]) =>
  placesOf(site, moved, context, keeperRow(context.units === "inch"));

/** Buttons or clips whose tongues lie in a groove of the rail, screwed up into the part that moves. In mortises their places are fixed. */
export function keepers(
  kind: "button" | "clip",
  mortised: boolean,
  site: Site,
  moved: RowShift,
  context: FasteningContext,
): readonly Arrangement[] {
  const { draft, head, hold, axis, sign, still } = site;
  const plan = still && keeperPlan(kind, { ...site, still, rail: head, top: hold }, context);
  if (!plan || moved.turned || (mortised && moved.by.n !== 0n)) return [];
  const places = keeperPlaces(site, moved, context);
  if (!places) return [];
  // Turned round, the row would stand across the rail.
  if (places.along !== plan.run) return [];
  const thin = faceAxis(plan.face);
  const [fasteners, holes]: [Fastener[], Hole[]] = [[], []];
  const size = sizeFor(site, inches(1), context);
  if (!size) return [];
  for (const [number, place] of places.points.entries()) {
    const at = beside(head.body, place, thin, plan);
    const room = depthAt(hold.solid, at, axis, sign);
    if (room.n === 0n) {
      context.report(
        fastenerNeedsRoom(draft.at, {
          part: hold.id,
          what: `a ${kind}`,
          why: `it does not reach ${context.print(add(plan.gap, plan.keeper.body))} past the ${plan.face} of ${head.id}`,
          remedy: "say on which `side` of the rail they are, or use slotted screws",
        }),
      );
      return [];
    }
    const length = lengthFor(site, size, plan.keeper.under, room, context, false);
    if (!length) return [];
    const screw = drivenScrew(
      site,
      {
        ...{ number, at, size, length, room, through: plan.keeper.under },
        head: "round",
        seat: "proud",
        passes: false,
        with: [itemOf(plan, context)],
        slack: slackOf(site, plan, mortised, context),
      },
      context,
    );
    const button = kind === "button" ? buttonOf(site, plan, place[plan.run], context.units) : null;
    fasteners.push(button ? { ...screw.fastener, button } : screw.fastener);
    holes.push(screw.pilot);
  }
  return [{ fasteners, holes }];
}

function beside(rail: Site["head"]["body"], place: Point, thin: AxisIndex, { face, gap, keeper }: KeeperPlan): Point {
  const out = add(gap, keeper.toScrew);
  return withAxis(place, thin, isHigh(face) ? add(rail.high[thin], out) : subtract(rail.low[thin], out));
}

/** Off the rail: by the gap before the shoulder meets it, and as far the other way before the tongue slips out. Along it: freely, or within its mortise. */
function slackOf(site: Site, plan: KeeperPlan, mortised: boolean, { units }: FasteningContext) {
  const { area, head } = site;
  const thin = faceAxis(plan.face);
  const hair = hairOf(units === "inch");
  const off = plan.gap.n === 0n ? plan.gap : min(plan.gap, subtract(subtract(plan.tongue, plan.gap), hair));
  const own = head.features.find((feature) => feature.kind === "mortise" && feature.for === site.joint);
  const long = own && "size" in own ? own.size[own.along[plan.run] === 0 ? 1 : 0] : null;
  const along: Length =
    mortised && long
      ? half(subtract(long, plan.keeper.across))
      : half(subtract(area.high[plan.run], area.low[plan.run]));
  return slackAlong(thin, off, [plan.run, along]);
}

function itemOf(plan: KeeperPlan, { printItem, units }: FasteningContext): string {
  if (plan.kind === "clip") return "metal table-top clip";
  const { thick, wide, long, tongue } = buttonSizes(plan, units);
  return `wooden button ${printItem(thick)} × ${printItem(wide)} × ${printItem(long)}, tongue ${printItem(tongue.thick)} × ${printItem(tongue.long)}, ${printItem(tongue.down)} under its top`;
}
