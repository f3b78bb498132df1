import type { Method } from "../../../parse/draft.ts";
import { ZERO } from "../../../units/rational.ts";
import { beginBridle } from "./bridle.ts";
import { beginDovetail } from "./dovetail.ts";
import { beginFingers } from "./fingers.ts";
import { beginHousing } from "./housing.ts";
import { cutKeeper } from "./keeper.ts";
import { cutLap } from "./lap.ts";
import { beginBiscuits, beginEdgeSpline, beginLooseTenon } from "./loose.ts";
import { beginMitre } from "./mitre.ts";
import { shortenShelf } from "./pins.ts";
import { beginTenon } from "./tenon.ts";
import { beginBreadboard, beginTongue } from "./tongue.ts";
import type { Craft } from "./work.ts";

/** Nothing is cut: what holds the joint is fasteners or glue. */
const beginPlain: Craft = (joining) => () => ({ joining, insertion: null, gap: ZERO });

const beginKeeper: Craft = (joining, bench, context, siblings) => () => cutKeeper(joining, siblings, bench, context);

const beginPins: Craft = (joining, bench, context) => {
  const gap = shortenShelf(joining, bench, context) ?? ZERO;
  return () => ({ joining, insertion: null, gap });
};

const beginLap: Craft = (joining, bench, context) => () => cutLap(joining, bench, context);

interface Habit {
  readonly begin: Craft;
  /** Glued when nothing is said. */
  readonly glued: boolean;
  /** Something of the joined part stands out beyond its shoulders. */
  readonly lengthens?: true;
  /** Left free to move: without glue, or even with it, since that is only in the middle. */
  readonly floats?: "without glue" | "always";
}

/** Every method of joining: what it cuts and adds, and what holds when the plan says nothing. */
export const CRAFTS: Readonly<Record<Method, Habit>> = {
  "mortise and tenon": { begin: beginTenon, lengthens: true, glued: true },
  "through tenon": { begin: beginTenon, lengthens: true, glued: true },
  "haunched tenon": { begin: beginTenon, lengthens: true, glued: true },
  "drawbored tenon": { begin: beginTenon, lengthens: true, glued: true },
  "loose tenon": { begin: beginLooseTenon, glued: true },
  dado: { begin: beginHousing, lengthens: true, glued: true },
  rabbet: { begin: beginHousing, lengthens: true, glued: true },
  groove: { begin: beginHousing, lengthens: true, glued: false, floats: "without glue" },
  "tongue and groove": { begin: beginTongue, lengthens: true, glued: false, floats: "without glue" },
  "breadboard end": { begin: beginBreadboard, lengthens: true, glued: true, floats: "always" },
  "half lap": { begin: beginLap, glued: true },
  bridle: { begin: beginBridle, glued: true },
  mitre: { begin: beginMitre, glued: true },
  "splined mitre": { begin: beginMitre, glued: true },
  "keyed mitre": { begin: beginMitre, glued: true },
  "box joint": { begin: beginFingers, glued: true },
  dovetail: { begin: beginDovetail, glued: true },
  spline: { begin: beginEdgeSpline, glued: true },
  biscuits: { begin: beginBiscuits, glued: true },
  dowels: { begin: beginPlain, glued: true },
  glue: { begin: beginPlain, glued: true },
  screws: { begin: beginPlain, glued: false },
  "pocket screws": { begin: beginPlain, glued: false },
  nails: { begin: beginPlain, glued: false },
  brads: { begin: beginPlain, glued: false },
  staples: { begin: beginPlain, glued: false },
  cleats: { begin: beginPlain, glued: false },
  "slotted screws": { begin: beginPlain, glued: false },
  "oversized holes with washers": { begin: beginPlain, glued: false },
  "figure-eight fasteners": { begin: beginPlain, glued: false },
  "buttons in a groove": { begin: beginKeeper, glued: false },
  "buttons in mortises": { begin: beginKeeper, glued: false },
  clips: { begin: beginKeeper, glued: false },
  bolts: { begin: beginPlain, glued: false },
  "bolts and cross dowels": { begin: beginPlain, glued: false },
  "lag screws": { begin: beginPlain, glued: false },
  "shelf pins": { begin: beginPins, lengthens: true, glued: false },
};
