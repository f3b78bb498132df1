/** Where a drawer runs: the directions of its joint, how far it comes out, and the slide that is long enough. */
import { inches, type Length, millimetres, toMillimetres } from "../../../units/length.ts";
import {
  add,
  compare,
  divide,
  floor,
  min,
  multiply,
  rational,
  subtract,
  toNumber,
  ZERO,
} from "../../../units/rational.ts";
import type { Item, Motion, Pose } from "../../design.ts";
import type { FasteningContext, Member, Site } from "../fastening/site.ts";
import { measureOf } from "../hardware/items.ts";
import { type AxisIndex, faceAxis, isHigh, thirdAxis } from "../space.ts";

export interface Run {
  /** The way that the drawer opens. */
  readonly axis: AxisIndex;
  readonly out: 1 | -1;
  /** Square to that and to the way from the drawer to the case: up, for slides at the sides. */
  readonly cross: AxisIndex;
}

/** Null where it would open towards what it runs on. */
export function runOf({ draft, axis }: Site): Run | null {
  const opens = draft.opens?.value ?? "front";
  const along = faceAxis(opens);
  return along === axis ? null : { axis: along, out: isHigh(opens) ? 1 : -1, cross: thirdAxis(along, axis) };
}

/** The end of a member that faces the way out. */
export const frontOf = ({ body }: Member, { axis, out }: Run): Length => (out > 0 ? body.high : body.low)[axis];
/** A place so far behind another. */
export const behind = (from: Length, by: Length, { out }: Run): Length =>
  out > 0 ? subtract(from, by) : add(from, by);

/** Left free behind a slide (common practice, no source). */
export const roomBehind = (units: FasteningContext["units"]): Length =>
  units === "inch" ? inches(1, 8) : millimetres(3);

/** The longest that is sold and fits between its front end and the ends of both members; the shortest where none does. */
export function slideLength(
  item: Item,
  start: Length,
  { head, hold }: Site,
  run: Run,
  context: FasteningContext,
): Length {
  const said = item.measures.get("length");
  if (said) return said;
  const depth = (end: Length): Length => (run.out > 0 ? subtract(start, end) : subtract(end, start));
  const back = ({ body }: Member): Length => (run.out > 0 ? body.low : body.high)[run.axis];
  const room = min(depth(back(head)), subtract(depth(back(hold)), roomBehind(context.units)));
  return longestSold(item, room);
}

export function longestSold(item: Item, room: Length): Length {
  const sold = [...(item.lists.get("lengths") ?? [])].sort(compare);
  return sold.findLast((each) => compare(each, room) <= 0) ?? sold[0] ?? room;
}

/** Near enough that nothing as thick as a back slips through between two of them. */
const STEP = toNumber(millimetres(10));

/** Straight out. */
export function slidesOut({ axis, out }: Run, range: Length): Motion {
  const whole = toNumber(range);
  const steps = Math.max(1, Math.ceil(whole / STEP));
  const poses = Array.from({ length: steps + 1 }, (_, i): Pose => {
    const at = (whole * i) / steps;
    const shift: [number, number, number] = [0, 0, 0];
    shift[axis] = i === 0 ? 0 : out * at;
    return {
      at,
      shift,
      rotate: {
        about: [
          [0, 0, 0],
          [0, 0, 1],
        ],
        degrees: 0,
      },
    };
  });
  return { kind: "slide", range: whole, poses };
}

/** How far a slide lets its drawer out: its length, three quarters of it, or an inch more. */
export function extensionOf(item: Item, length: Length, units: FasteningContext["units"]): Length {
  const word = item.words.get("extension");
  if (word === "three quarters") return multiply(length, rational(3, 4));
  return word === "over" ? add(length, units === "inch" ? inches(1) : millimetres(25)) : length;
}

/** The holes of slides stand 32 mm apart, the first of them 37 mm from the front end. */
const [FIRST, MODULE] = [millimetres(37), millimetres(32)];

/** What has to agree for holes that are bored ahead to be where the slide has its own. */
export const SCREW_HOLES = "screw holes";
const HOLES = {
  name: SCREW_HOLES,
  value: `${toMillimetres(MODULE)} mm apart, the first ${toMillimetres(FIRST)} mm from the front end`,
};

/** The slide as it is bought: of this length. */
export const ofLength = (item: Item, length: Length, context: FasteningContext): Item => {
  const value = context.printItem(length);
  return {
    ...item,
    label: `${item.label}, ${value} long`,
    measures: new Map([...item.measures, ["length", length]]),
    decides: [{ name: "length", value }, ...item.decides, HOLES],
  };
};

/** Where the slide begins: `set back` behind the front of what carries it in the case, or as its kind does behind the drawer's side. */
export function startOf(site: Site, item: Item, run: Run, context: FasteningContext): Length | null {
  if (!site.draft.setBack) {
    const usual = item.measures.has("set back") ? measureOf(item, "set back") : ZERO;
    return behind(frontOf(site.head, run), usual, run);
  }
  const said = context.measure(site.draft.setBack);
  return said && behind(frontOf(site.hold, run), said, run);
}

/** Which of its holes lies so far behind the front end of a slide, the first as 1; null where none of them does. */
export function holeNumber(behindFront: Length): number | null {
  const steps = divide(subtract(behindFront, FIRST), MODULE);
  const whole = floor(steps);
  return whole < 0n || compare(steps, rational(whole)) !== 0 ? null : Number(whole) + 1;
}

/** Which hole those between the ends take: the even one, the next, the one before. */
const BESIDE = [0, 1, -1] as const;

/** The screws of a member, from its front end: three, and one more for each 6 in (150 mm) beyond 18 in (450 mm); or in other holes: the outer ones `shifted` farther in. */
export function screwPlaces(length: Length, shifted: 0 | 1 | 2): readonly Length[] {
  const modules = Number(floor(divide(subtract(length, add(FIRST, FIRST)), MODULE)));
  const count = 3 + Math.max(0, Math.ceil((toMillimetres(length) - 460) / 150));
  return Array.from({ length: count }, (_, i) => {
    const even = Math.floor((modules * i) / (count - 1));
    const hole = i === 0 ? shifted : i === count - 1 ? modules - shifted : even + BESIDE[shifted];
    return add(FIRST, multiply(MODULE, rational(hole)));
  });
}
