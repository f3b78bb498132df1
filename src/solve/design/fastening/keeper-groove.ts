import { fastenerNeedsRoom } from "../../../findings/rules/fastener-needs-room.ts";
import type { Face, JointDraft } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, half, less, max, min, multiply, negate, rational, subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box, Still } from "../../design.ts";
import type { Frame } from "../placing/attitude.ts";
import { type AxisIndex, extent, faceAxis, faceOf, indexOf, isHigh, middle, thirdAxis, withAxis } from "../space.ts";
import { hairOf, KEEPERS, type Keeper } from "./hardware.ts";
import { allowance } from "./movement.ts";
import type { FasteningContext } from "./site.ts";

type MovementContext = Pick<FasteningContext, "units" | "movesBy">;

/** What buttons and clips need of a rail: worked out before the wood is cut, and again when they are placed. */
export interface KeeperPlan {
  readonly keeper: Keeper;
  readonly kind: "button" | "clip";
  /** The face of the rail that they are let into. */
  readonly face: Face;
  /** Between the rail and the shoulder; zero where the wood is held. */
  readonly gap: Length;
  readonly tongue: Length;
  readonly deep: Length;
  /** Direction of the rail under the top. */
  readonly run: AxisIndex;
}

/** The rail and the part that moves on it, as far as they are known before joints are cut. */
export interface RailAndTop {
  readonly draft: JointDraft;
  readonly rail: { readonly id: string; readonly body: Box; readonly frame: Frame };
  readonly top: { readonly id: string; readonly body: Box };
  /** From the rail into the top. */
  readonly axis: AxisIndex;
  readonly sign: 1 | -1;
  readonly area: Box;
  readonly still: Still;
}

type Context = Pick<FasteningContext, "units" | "measure" | "report" | "print"> & MovementContext;

/** Null: reported. */
export function keeperPlan(kind: "button" | "clip", joint: RailAndTop, context: Context): KeeperPlan | null {
  const { draft, rail, axis, still } = joint;
  const inch = context.units === "inch";
  const keeper = KEEPERS[kind][inch ? "inch" : "mm"];
  const thin = rail.frame.thickness;
  const run = thirdAxis(axis, thin);
  const asked = draft.gap ? context.measure(draft.gap) : undefined;
  if (asked === null) return null;
  const lack = (why: string): null => {
    context.report(
      fastenerNeedsRoom(draft.at, {
        part: rail.id,
        what: `a ${kind}`,
        why,
        remedy: "use a thicker or higher rail, figure-eight fasteners, or slotted screws",
      }),
    );
    return null;
  };
  if (thin === axis)
    return lack("its broad side lies against the wood that moves, and the groove goes into a broad side beside it");
  const alongGrain = indexOf(still.across) !== run;
  const held = alongGrain && !less(still.at, joint.area.low[thin]) && !less(joint.area.high[thin], still.at);
  const hair = hairOf(inch);
  const thick = extent(rail.body, thin);
  const left = inch ? inches(1, 4) : millimetres(6);
  const gap =
    asked ?? (alongGrain ? usualGap(joint, context, subtract(subtract(thick, left), add(hair, hair))) : smallest(inch));
  const tongue = add(add(gap, gap), hair);
  const deep = add(tongue, hair);
  if (less(subtract(thick, deep), left))
    return lack(
      `${context.print(thick)} thick, and a groove ${context.print(deep)} deep should leave ${context.print(left)}`,
    );
  const high = extent(rail.body, axis);
  const needs = add(add(keeper.down, keeper.wide), inch ? inches(1, 4) : millimetres(6));
  if (less(high, needs)) return lack(`${context.print(high)} high, and needs ${context.print(needs)}`);
  return { keeper, kind, face: innerFace(joint, thin), gap: held ? rational(0) : gap, tongue, deep, run };
}

const smallest = (inch: boolean): Length => (inch ? inches(1, 8) : millimetres(3));

/** The movement and 1/32 in (1 mm) more, no more than half of what tongue and groove may take of the rail, at least 1/8 in (3 mm). */
function usualGap({ still, area, top }: RailAndTop, context: MovementContext, most: Length): Length {
  const { units } = context;
  const inch = units === "inch";
  const i = indexOf(still.across);
  const off = subtract(half(add(area.low[i], area.high[i])), still.at);
  const step = inch ? inches(1, 32) : millimetres(1);
  return max(
    smallest(inch),
    min(add(allowance(off, units, context.movesBy(top.id)), step), roundTo(half(most), step, "down")),
  );
}

/** The face named, or the one that looks to the middle of the top. */
function innerFace({ draft, rail, top }: RailAndTop, thin: AxisIndex): Face {
  const said = draft.fasteners?.side?.value;
  if (said && faceAxis(said) === thin) return said;
  return faceOf(thin, less(middle(rail.body, thin), middle(top.body, thin)));
}

/** The groove's section over the whole contact: cut along it for a groove, in pieces for mortises. */
export function grooveBox({ rail, axis, sign, area }: RailAndTop, { keeper, face, deep }: KeeperPlan): Box {
  const thin = faceAxis(face);
  const edge = area.low[axis];
  const near = sign > 0 ? subtract(edge, keeper.down) : add(edge, keeper.down);
  const far = sign > 0 ? subtract(near, keeper.wide) : add(near, keeper.wide);
  const skin = isHigh(face) ? rail.body.high[thin] : rail.body.low[thin];
  const bottom = add(skin, isHigh(face) ? negate(deep) : deep);
  const span = (box: Box, i: AxisIndex, a: Length, b: Length): Box => ({
    low: withAxis(box.low, i, less(a, b) ? a : b),
    high: withAxis(box.high, i, less(a, b) ? b : a),
  });
  return span(span(area, axis, near, far), thin, skin, bottom);
}

/** A mortise is as long as its button is wide, and longer by what the top moves along the rail. */
export function mortiseLength(
  { still, area, top }: RailAndTop,
  { keeper, run }: KeeperPlan,
  { units, movesBy }: MovementContext,
): Length {
  const hair = hairOf(units === "inch");
  const across = indexOf(still.across);
  const far = max(subtract(area.high[across], still.at), subtract(still.at, area.low[across]));
  const room = across === run ? allowance(far, units, movesBy(top.id)) : hair;
  return add(keeper.across, multiply(room, rational(2)));
}
