/** Where a slide begins, and how much room it has beside its drawer, against what it wants. */
import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "../../../../units/length.ts";
import { half, less, multiply, negate, ONE, rational, subtract, toNumber } from "../../../../units/rational.ts";
import { INDICES } from "../../../design/space.ts";
import type { Joint, Part } from "../../../design.ts";
import { series, type Work } from "../draft.ts";
import { type Beside, besideDrawers } from "./drawer-runs.ts";

/** In words. */
export interface SlideRoom {
  /** How much there is, what the slides want, and what makes up for more. */
  readonly told: string;
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
export function slideRoom(work: Work, joints: readonly Joint[]): SlideRoom | null {
  const { id, parts } = joints[0] as Joint;
  const own = work.plan.hardware.find(({ joint }) => joint === id);
  const wants = own?.item.ranges.get("side space");
  const motion = work.plan.chosen.get(id)?.motion;
  const [side, wall] = parts.map(work.part);
  if (!own || !wants || !motion || !side || !wall) return null;
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
    told: roomText(work, besideDrawers(work, joints), wants),
    onDrawer: front(side),
    onCase: front(wall),
  };
}

/** What a pair of slides wants of the room that a drawer leaves, and what makes up for more; empty where they do not say it. */
export function pairWants(work: Work, joint: Joint, left: Length): string {
  const wants = work.plan.hardware.find((each) => each.joint === joint.id)?.item.ranges.get("side space");
  if (!wants) return "";
  const card = less(multiply(wants.high, TWO), left) ? ", and card behind them makes up the rest" : "";
  return `a pair of slides wants ${rangeOf(work, wants, TWO)}${card}`;
}

/** "1.016 to 1.039 in": so many times. */
const rangeOf = (work: Work, { low, high }: Wanted, times: Length): string =>
  `${finely(work, multiply(low, times)).replace(/\D+$/, "")} to ${finely(work, multiply(high, times))}`;

interface Wanted {
  readonly low: Length;
  readonly high: Length;
}

const TWO = rational(2);
const AS_DRAWN =
  "where it is loose or binds, the case is not as drawn there; put card behind the case half, or plane the box side.";

/** Of several that are not alike each is told; where there is more on one side than on the other, both sides together. `wants`: on each side. */
function roomText(work: Work, all: readonly Beside[], wants: Wanted): string {
  const range = (n: Length): string => rangeOf(work, wants, n);
  const over = ({ both }: Beside): Length => subtract(both, multiply(wants.high, TWO));
  const [first] = all;
  if (!first) return `The slide wants ${range(ONE)} of room on each side: ${AS_DRAWN}`;
  if (all.length === 1 && first.even) {
    const card = half(over(first));
    const what = card.n > 0n ? `put card ${finely(work, card)} thick behind each case half.` : AS_DRAWN;
    return `There is ${marked(work, half(first.both))} of room on each side, and the slide wants ${range(ONE)}: ${what}`;
  }
  const of = (each: Beside, word: string): string => (each.of ? ` ${word} ${each.of}` : "");
  const rooms = series(
    all.map((each, i) => `${marked(work, each.both)}${i === 0 ? " of room" : ""}${of(each, "for")}`),
  );
  const cards = all.flatMap((each) =>
    over(each).n > 0n
      ? [`put card ${finely(work, over(each))} thick in all behind the case halves${of(each, "of")}`]
      : [],
  );
  const rest = cards.length < all.length ? [`${cards.length > 0 ? "for the rest, " : ""}${AS_DRAWN.slice(0, -1)}`] : [];
  return `On both sides together there is ${rooms}; a pair of slides wants ${range(TWO)}: ${[...cards, ...rest].join("; ")}.`;
}
