/** A hinge cut across its pin: which leaf lies where, what is between the two parts, how deep each seat is, and how far one stands back from the other. */
import { exactBounds } from "../../../geometry/bounds.ts";
import { isSame, type Length, TOLERANCE } from "../../../units/length.ts";
import {
  absolute,
  add,
  half,
  less,
  max,
  min,
  multiply,
  rational,
  subtract,
  toNumber,
} from "../../../units/rational.ts";
import type { Build, BuiltJoint, BuiltPart } from "../../build.ts";
import { measureOf } from "../../design/hardware/items.ts";
import { acrossGap } from "../../design/joinery/touch.ts";
import { featureBox, isSquare } from "../../design/shapes/feature-box.ts";
import { type AxisIndex, axisOf, extent, faceOf, middle, thirdAxis, triple, unit } from "../../design/space.ts";
import type { Direction, Hardware, Hole, Point } from "../../design.ts";
import type { CutThrough, Measured, Rod, Sized } from "../model/cut-through.ts";
import { deepest, onwards } from "./bore.ts";

type Of = Pick<Build, "parts" | "hardware" | "holes">;

/** Of a joint with leaf hinges the first hinge; null for other hinges, and where it lies square to nothing. */
export function hingeCut({ parts, hardware, holes }: Of, joint: BuiltJoint): CutThrough | null {
  const [hung, hold] = joint.parts.map((id) => parts.find((part) => part.id === id));
  const own = hardware.filter((each) => each.joint === joint.id);
  const held = own.find(({ carriedBy, halfOf }) => carriedBy === hold?.id && halfOf === undefined);
  const leaf = own.find(({ halfOf }) => halfOf !== undefined && halfOf === held?.id);
  const pin = joint.arrangements[0]?.motion?.poses.at(-1)?.rotate.about[1];
  if (!hung || !hold || !held || !leaf || !pin || !LEAVES.has(held.item.kind) || hung.turned || hold.turned)
    return null;
  const touch = acrossGap(hung.body, hold.body);
  const along = axisOf(pin);
  if (touch.kind !== "faces" || touch.axis === along) return null;
  const screws = holes.filter((hole) => hole.for === held.id || hole.for === leaf.id);
  const first = screws.find((hole) => hole.part === hold.id);
  const at = (screws.find((hole) => isSame(hole.at[along], held.at[along])) ?? first)?.at[along] ?? held.at[along];
  const bores = screws.filter((hole) => isSame(hole.at[along], at));
  const lie: Lie = { hung, hold, leaf, held, along, apart: touch.axis, out: thirdAxis(along, touch.axis), at, joint };
  return {
    what: `a ${held.item.kind}`,
    ...{ axis: along, at, parts: joint.parts, hardware: [held.id, leaf.id], bores: [] },
    rods: bores.map(screwIn),
    rounds: [{ at: held.at, diameter: measureOf(held.item, "barrel") }],
    sizes: [...gapOf(lie, touch.gap), ...depthsOf(lie), ...leavesOn(lie), ...setBack(lie)],
  };
}

const LEAVES: ReadonlySet<string> = new Set(["butt hinge", "continuous hinge"]);

interface Lie {
  readonly hung: BuiltPart;
  readonly hold: BuiltPart;
  readonly leaf: Hardware;
  readonly held: Hardware;
  readonly joint: BuiltJoint;
  /** Along the pin; across the gap; the way that the barrel stands out. */
  readonly along: AxisIndex;
  readonly apart: AxisIndex;
  readonly out: AxisIndex;
  readonly at: Length;
}

const screwIn = (hole: Hole): Rod => ({
  from: hole.at,
  to: onwards(hole.at, hole.direction, deepest(hole)),
  diameter: hole.stages.map(({ diameter }) => diameter).reduce(min),
});

const place = ({ along, apart, at }: Lie, u: Length, v: Length): Point =>
  triple((i) => (i === along ? at : i === apart ? u : v));

/** The body of one of the two, and the way from the gap into it. */
function side({ hung, hold, apart }: Lie, of: "hung" | "hold") {
  const part = of === "hung" ? hung : hold;
  const other = of === "hung" ? hold : hung;
  const high = less(middle(other.body, apart), middle(part.body, apart));
  return { part, face: (high ? part.body.low : part.body.high)[apart], into: high ? 1 : -1 } as const;
}

const SIDES = ["hold", "hung"] as const;

/** Whether the knuckle stands at the high end of a direction. */
const outHigh = ({ hold, held, out }: Lie): boolean => less(middle(hold.body, out), held.at[out]);

/** Where a leaf ends away from the knuckle. */
function inner(lie: Lie): Length {
  const { low, high } = exactBounds(lie.leaf.solid);
  return (outHigh(lie) ? low : high)[lie.out];
}

const awayFromPin = (lie: Lie): Direction => unit(lie.out, outHigh(lie) ? -1 : 1);

function gapOf(lie: Lie, gap: Length): readonly Sized[] {
  if (toNumber(gap) <= TOLERANCE) return [];
  const [from, to] = SIDES.map((of) => place(lie, side(lie, of).face, inner(lie))) as [Point, Point];
  return [{ says: "the gap", size: gap, spans: [{ from, to, off: awayFromPin(lie) }] }];
}

function depthsOf(lie: Lie): readonly Sized[] {
  const { joint, along, apart, at } = lie;
  const all = SIDES.flatMap((of): readonly OfPart[] => {
    const { part } = side(lie, of);
    const seat = part.features
      .flatMap((each) => ("size" in each && each.for === joint.id && isSquare(each) ? [featureBox(each)] : []))
      .find(({ low, high }) => less(low[along], at) && less(at, high[along]));
    if (!seat) return [];
    const span = (u: Length): Point => place(lie, u, inner(lie));
    const measured = { from: span(seat.low[apart]), to: span(seat.high[apart]), off: awayFromPin(lie) };
    return [{ part, size: extent(seat, apart), span: measured }];
  });
  return told(all, "how deep each seat is", ({ mark }) => `how deep the seat in ${mark} is`);
}

/** How much of each leaf lies on wood: less than all of one whose part stands back. */
function leavesOn(lie: Lie): readonly Sized[] {
  const { held, leaf, apart, out } = lie;
  const isFlat = held.item.words.get("fit") === "on the face";
  const own = exactBounds(leaf.solid);
  const all = SIDES.map((of): OfPart => {
    const { part, face, into } = side(lie, of);
    const box = isFlat ? exactBounds((of === "hung" ? leaf : held).solid) : own;
    const clear = add(held.at[apart], multiply(rational(into), half(measureOf(held.item, "barrel"))));
    const leafEnds = isFlat
      ? ([clear, (into > 0 ? box.high : box.low)[apart]] as const)
      : ([own.low[out], own.high[out]] as const);
    const axis = isFlat ? apart : out;
    const wood = part.body;
    const [low, high] = [max(min(...leafEnds), wood.low[axis]), min(max(...leafEnds), wood.high[axis])];
    const outer = (outHigh(lie) ? wood.high : wood.low)[out];
    const point = (at: Length): Point => (isFlat ? place(lie, at, outer) : place(lie, face, at));
    const off = isFlat ? unit(out, outHigh(lie) ? 1 : -1) : unit(apart, into);
    return { part, size: subtract(high, low), span: { from: point(low), to: point(high), off } };
  });
  return told(all, "how much of each leaf lies on wood", ({ mark }) => `how much of the leaf lies on ${mark}`);
}

function setBack(lie: Lie): readonly Sized[] {
  const { hung, hold, apart, out } = lie;
  const high = outHigh(lie);
  const [own, that] = [hung, hold].map(({ body }) => (high ? body.high : body.low)[out]) as [Length, Length];
  const back = high ? subtract(that, own) : subtract(own, that);
  if (Math.abs(toNumber(back)) <= TOLERANCE) return [];
  const { face, into } = side(lie, "hung");
  const other = side(lie, "hold").face;
  const how = back.n > 0n ? "stands back from" : "stands out past";
  return [
    {
      says: `how far the ${faceOf(out, high)} of ${hung.mark} ${how} that of ${hold.mark}`,
      size: absolute(back),
      spans: [{ from: place(lie, other, that), to: place(lie, face, own), off: unit(apart, into) }],
    },
  ];
}

interface OfPart {
  readonly part: BuiltPart;
  readonly size: Length;
  readonly span: Measured;
}

/** In one where both are as large, else each by itself. */
function told(all: readonly OfPart[], both: string, one: (part: BuiltPart) => string): readonly Sized[] {
  const [first, second] = all;
  if (first && second && isSame(first.size, second.size))
    return [{ says: both, size: first.size, spans: [first.span, second.span] }];
  return all.map(({ part, size, span }) => ({ says: one(part), size, spans: [span] }));
}
