/** Where a slide begins, and how much room it has beside its drawer, against what it wants. */
import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "../../../../units/length.ts";
import { less, max, negate, subtract, toNumber } from "../../../../units/rational.ts";
import { INDICES } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** In words. */
export interface SlideRoom {
  /** On each side; what the slide wants there; and how thick what lies behind a half must be, null where there is the room that it wants. */
  readonly is: string;
  readonly wants: string;
  readonly card: string | null;
  /** Front ends of the halves: "flush with the front edge", "1 1/4 in behind the front edge". */
  readonly onDrawer: string;
  readonly onCase: string;
}

/** Slides are made to the tenth of a millimetre; a caliper in inches reads thousandths. */
const finely = ({ design }: Work, length: Length): string =>
  design.units === "inch"
    ? `${(toNumber(length) / UNITS_PER_INCH).toFixed(3)}\u202fin`
    : `${(toNumber(length) / UNITS_PER_MM).toFixed(1)}\u202fmm`;

/** "33/64 in (0.516 in)": for a rule, and for a caliper. */
const marked = (work: Work, length: Length): string =>
  work.design.units === "inch" ? `${work.print(length)} (${finely(work, length)})` : finely(work, length);

/** Null where the slide does not say what it wants beside the drawer. */
export function slideRoom(work: Work, { id, parts }: Joint): SlideRoom | null {
  const own = work.plan.hardware.find(({ joint }) => joint === id);
  const wants = own?.item.ranges.get("side space");
  const motion = work.plan.chosen.get(id)?.motion;
  const [side, wall] = parts.map(work.part);
  if (!own || !wants || !motion || !side || !wall) return null;
  const is = INDICES.map((i) =>
    max(subtract(side.body.low[i], wall.body.high[i]), subtract(wall.body.low[i], side.body.high[i])),
  ).reduce(max);
  const out = motion.poses.at(-1)?.shift ?? [0, 0, 0];
  const run = INDICES.find((i) => Math.abs(out[i]) > 0) ?? 1;
  const behind = ({ body }: Part): Length =>
    out[run] > 0 ? subtract(body.high[run], own.at[run]) : subtract(own.at[run], body.low[run]);
  const front = (part: Part): string => {
    const by = behind(part);
    if (by.n === 0n) return "flush with the front edge";
    return by.n > 0n
      ? `${work.print(by)} behind the front edge`
      : `${work.print(negate(by))} in front of the front edge`;
  };
  return {
    is: marked(work, is),
    wants: `${finely(work, wants.low).replace(/\D+$/, "")} to ${finely(work, wants.high)}`,
    card: less(wants.high, is) ? finely(work, subtract(is, wants.high)) : null,
    onDrawer: front(side),
    onCase: front(wall),
  };
}
