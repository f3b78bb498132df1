import type { Method } from "../../../parse/draft.ts";
import { ZERO } from "../../../units/rational.ts";
import { normalOf, opposite } from "../space.ts";
import { beginBridle } from "./bridle.ts";
import { beginDovetail } from "./dovetail.ts";
import { beginFingers } from "./fingers.ts";
import { beginHousing } from "./housing.ts";
import { cutKeeper } from "./keeper.ts";
import { cutLap } from "./lap.ts";
import { beginLeaves } from "./leaves.ts";
import { beginBiscuits, beginEdgeSpline, beginLooseTenon } from "./loose.ts";
import { beginMitre } from "./mitre.ts";
import { shortenShelf } from "./pins.ts";
import { beginSlidingDovetail } from "./sliding-dovetail.ts";
import { beginTenon } from "./tenon.ts";
import { beginBreadboard, beginTongue } from "./tongue.ts";
import type { Craft } from "./work.ts";

/** Nothing is cut: what holds the joint is fasteners or glue. */
const beginPlain: Craft = (joining) => () => ({ joining, insertion: null, gap: ZERO });

/** Hardware spans what is open between the two. */
const beginApart: Craft = (joining) => () => {
  const { touch } = joining;
  return { joining, insertion: null, gap: touch.kind === "faces" ? touch.gap : ZERO };
};

/** What runs goes in against the way that it opens. */
const beginRunning: Craft = (joining) => () => {
  const { touch, draft } = joining;
  const insertion = normalOf(opposite(draft.opens?.value ?? "front"));
  return { joining, insertion, gap: touch.kind === "faces" ? touch.gap : ZERO };
};

const beginKeeper: Craft = (joining, bench, context, siblings) => () => cutKeeper(joining, siblings, bench, context);

const beginPins: Craft = (joining, bench, context) => {
  const gap = shortenShelf(joining, bench, context) ?? ZERO;
  return () => ({ joining, insertion: null, gap });
};

const beginLap: Craft = (joining, bench, context) => () => cutLap(joining, bench, context);

interface Habit {
  readonly begin: Craft;
  /** It cuts both parts square to each other. */
  readonly cuts: boolean;
  /** It lets an end or an edge into a face, or both alike. */
  readonly faces?: true;
  /** Glued when nothing is said. */
  readonly glued: boolean;
  /** Something of the joined part stands out beyond its shoulders. */
  readonly lengthens?: true;
  /** Cut when the joints of the other methods are: it stands beside their grooves. */
  readonly last?: true;
  /** Not held at all: it stands or lies there, and can be taken away. */
  readonly loose?: true;
  /** Left free to move: without glue, or even with it, since that is only in the middle. */
  readonly floats?: "without glue" | "always";
}

/** Every method of joining: what it cuts and adds, and what holds when the plan says nothing. */
export const CRAFTS: Readonly<Record<Method, Habit>> = {
  "mortise and tenon": { begin: beginTenon, cuts: true, faces: true, lengthens: true, glued: true, last: true },
  "through tenon": { begin: beginTenon, cuts: true, faces: true, lengthens: true, glued: true, last: true },
  "haunched tenon": { begin: beginTenon, cuts: true, faces: true, lengthens: true, glued: true, last: true },
  "drawbored tenon": { begin: beginTenon, cuts: true, faces: true, lengthens: true, glued: true, last: true },
  "loose tenon": { begin: beginLooseTenon, cuts: true, faces: true, glued: true },
  dado: { begin: beginHousing, cuts: true, faces: true, lengthens: true, glued: true },
  rabbet: { begin: beginHousing, cuts: true, faces: true, lengthens: true, glued: true },
  groove: { begin: beginHousing, cuts: true, faces: true, lengthens: true, glued: false, floats: "without glue" },
  "sliding dovetail": {
    begin: beginSlidingDovetail,
    cuts: true,
    faces: true,
    lengthens: true,
    glued: true,
    floats: "without glue",
  },
  "tongue and groove": {
    begin: beginTongue,
    cuts: true,
    faces: true,
    lengthens: true,
    glued: false,
    floats: "without glue",
  },
  "breadboard end": { begin: beginBreadboard, cuts: true, faces: true, lengthens: true, glued: true, floats: "always" },
  "half lap": { begin: beginLap, cuts: true, glued: true },
  bridle: { begin: beginBridle, cuts: true, glued: true },
  mitre: { begin: beginMitre, cuts: true, glued: true },
  "splined mitre": { begin: beginMitre, cuts: true, glued: true },
  "keyed mitre": { begin: beginMitre, cuts: true, glued: true },
  "box joint": { begin: beginFingers, cuts: true, glued: true },
  dovetail: { begin: beginDovetail, cuts: true, glued: true },
  spline: { begin: beginEdgeSpline, cuts: true, faces: true, glued: true },
  biscuits: { begin: beginBiscuits, cuts: true, faces: true, glued: true },
  dowels: { begin: beginPlain, cuts: false, glued: true },
  glue: { begin: beginPlain, cuts: false, glued: true },
  screws: { begin: beginPlain, cuts: false, glued: false },
  "pocket screws": { begin: beginPlain, cuts: false, glued: false },
  nails: { begin: beginPlain, cuts: false, glued: false },
  brads: { begin: beginPlain, cuts: false, glued: false },
  staples: { begin: beginPlain, cuts: false, glued: false },
  cleats: { begin: beginPlain, cuts: false, glued: false },
  "slotted screws": { begin: beginPlain, cuts: false, glued: false },
  "oversized holes with washers": { begin: beginPlain, cuts: false, glued: false },
  "figure-eight fasteners": { begin: beginPlain, cuts: false, glued: false },
  "buttons in a groove": { begin: beginKeeper, cuts: true, glued: false },
  "buttons in mortises": { begin: beginKeeper, cuts: true, glued: false },
  clips: { begin: beginKeeper, cuts: true, glued: false },
  bolts: { begin: beginPlain, cuts: false, glued: false },
  "bolts and cross dowels": { begin: beginPlain, cuts: false, glued: false },
  "lag screws": { begin: beginPlain, cuts: false, glued: false },
  glazed: { begin: beginPlain, cuts: false, glued: false, floats: "always" },
  loose: { begin: beginPlain, cuts: false, glued: false, loose: true },
  "hangs on": { begin: beginPlain, cuts: false, glued: false, loose: true },
  "runs on": { begin: beginRunning, cuts: false, glued: false },
  "cup hinges": { begin: beginApart, cuts: false, glued: false },
  "butt hinges": { begin: beginLeaves, cuts: true, glued: false },
  "continuous hinge": { begin: beginLeaves, cuts: true, glued: false },
  slides: { begin: beginRunning, cuts: false, glued: false },
  "undermount slides": { begin: beginRunning, cuts: false, glued: false },
  "shelf pins": { begin: beginPins, cuts: true, lengthens: true, glued: false },
};
