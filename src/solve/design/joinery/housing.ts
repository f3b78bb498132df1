import { housingTooDeep } from "../../../findings/rules/housing-too-deep.ts";
import type { Face } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, compare, half, less, max, min, multiply, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box } from "../../design.ts";
import { slab } from "../shapes/shaped.ts";
import { blankOf, boxFeature, type Workpiece } from "../shapes/workpiece.ts";
import {
  type AxisIndex,
  boxWithout,
  common,
  extent,
  faceAxis,
  faceOf,
  facePosition,
  isHigh,
  isSolidBox,
  moveFace,
  opposite,
  otherAxes,
  setFace,
  triple,
  unit,
} from "../space.ts";
import { type Bench, type Craft, type JoineryContext, type Joining, type Jointed, playOf } from "./work.ts";

/**
 * Dado, rabbet and groove: the joined part's body ends at the face of the other, the joint lengthens it by `deep` over its whole
 * section and cuts its room. Default depths (common practice, no source): a third of the wood, 1/4 in in a groove.
 */
export interface Housing {
  readonly joining: Joining;
  /** Face of the joined part that goes in. */
  readonly face: Face;
  readonly deep: Length;
  readonly play: Length;
}

export const beginHousing: Craft = (joining, bench, context) => {
  const housing = growHousing(joining, bench, context);
  return housing && (() => cutHousing(housing, bench, context));
};

/** Reads the numbers of a housing and lengthens the joined part. Rooms are cut when every part has its full length. */
export function growHousing(joining: Joining, bench: Bench, context: JoineryContext): Housing | null {
  const { draft, touch } = joining;
  if (touch.kind !== "faces") return null;
  const mate = bench.piece(joining.to.id);
  const groove = draft.with.value === "groove";
  const inch = context.units === "inch";
  const thick = extent(mate.body, touch.axis);
  const usual = min(inch ? inches(1, 4) : millimetres(6), half(thick));
  const deep = draft.deep ? context.measure(draft.deep) : roundTo(usual, context.precision, "down");
  const play = playOf(draft, context, groove ? usualPlay(joining, bench, deep, context) : ZERO);
  if (!deep || !play) return null;
  if (compare(deep, thick) >= 0) {
    context.report(
      housingTooDeep(draft.deep?.at ?? draft.at, {
        part: mate.entry.id,
        deep: context.print(deep),
        thick: context.print(thick),
      }),
    );
    return null;
  }
  const face = faceOf(touch.axis, touch.sign > 0);
  const piece = bench.piece(joining.join.id);
  const by = groove ? max(subtract(deep, play), ZERO) : deep;
  // Lengthened once for each face, by the deepest joint there.
  const wanted = moveFace(piece.body, face, by);
  const axis = faceAxis(face);
  const further =
    touch.sign > 0 ? max(piece.grown.high[axis], wanted.high[axis]) : min(piece.grown.low[axis], wanted.low[axis]);
  bench.grow(joining.join.id, setFace(piece.grown, face, further));
  return { joining, face, deep, play };
}

/**
 * What a panel is short of the bottom of its groove: 1/16 in (1.5 mm) for sheets; solid wood 1/32 in (1 mm) along its grain, and across it half of what its species moves
 * over its width, and half a millimetre more. Common practice, no source; the movement from published coefficients.
 */
function usualPlay({ join, touch }: Joining, bench: Bench, deep: Length | null, context: JoineryContext): Length {
  const inch = context.units === "inch";
  const share = context.movesBy(join.id);
  if (share === null || touch.kind !== "faces") return inch ? inches(1, 16) : millimetres(3, 2);
  const { body, frame } = bench.piece(join.id);
  if (frame.width !== touch.axis) return inch ? inches(1, 32) : millimetres(1);
  const wide = add(extent(body, touch.axis), add(deep ?? ZERO, deep ?? ZERO));
  const least = half(add(multiply(wide, share), inch ? inches(1, 32) : millimetres(1)));
  // What both edges leave together falls on a mark.
  const tongue = subtract(deep ?? ZERO, least);
  return subtract(deep ?? ZERO, roundTo(tongue, half(context.precision), "down"));
}

/** Cuts the room for the joined part out of the other. */
function cutHousing(housing: Housing, bench: Bench, context: JoineryContext): Jointed {
  const { joining, face, play } = housing;
  const { draft, touch } = joining;
  const method = draft.with.value as "dado" | "rabbet" | "groove";
  const axis = faceAxis(face);
  const joined = bench.piece(joining.join.id);
  const mate = bench.piece(joining.to.id);
  const into = { axis, sign: isPositive(touch) ? (1 as const) : (-1 as const) };
  let room = tongueOf(housing, bench);
  const [a, b] = otherAxes(axis);
  const thin = less(extent(joined.grown, a), extent(joined.grown, b)) ? a : b;
  if (method !== "groove") {
    room = moveFace(moveFace(room, faceOf(thin, false), half(play)), faceOf(thin, true), half(play));
  }
  const run = thin === a ? b : a;
  // What fills the other part from end to end is cut right through it, tenons included, as a plane or a saw runs.
  const blank = blankOf(mate);
  const inch = context.units === "inch";
  // A crumb that would be left standing at an end is taken as well: nobody could stop so near to it.
  const crumb = draft.stopped ? ZERO : inch ? inches(1, 4) : millimetres(6);
  const left = [subtract(room.low[run], mate.body.low[run]), subtract(mate.body.high[run], room.high[run])];
  const covers = left.every((wood) => less(wood, crumb) || wood.n <= 0n);
  if (covers)
    room = {
      low: triple((i) => (i === run ? blank.low[i] : room.low[i])),
      high: triple((i) => (i === run ? blank.high[i] : room.high[i])),
    };
  room = stop(housing, room, bench, context);
  room = common(room, blank);
  if (isSolidBox(room))
    bench.cut(
      joining.to.id,
      { kind: "box", box: room },
      boxFeature(cutAs(method, room, blank, { run, thin, axis }, mate.frame.length), joining.id, room, into, run),
    );
  return { joining, insertion: unit(axis, into.sign), gap: method === "groove" ? play : ZERO };
}

/**
 * A dado has two shoulders: one that lies at an end or an edge, with one shoulder, is a rabbet. One that runs along the grain and is closed all
 * round is a mortise where it is as deep as it is wide, else a groove. Common practice, no source.
 */
function cutAs(
  method: "dado" | "rabbet" | "groove",
  room: Box,
  blank: Box,
  { run, thin, axis }: Readonly<Record<"run" | "thin" | "axis", AxisIndex>>,
  grain: AxisIndex,
): "dado" | "rabbet" | "groove" | "mortise" {
  const shoulders = [less(blank.low[thin], room.low[thin]), less(room.high[thin], blank.high[thin])];
  if (method === "dado" && shoulders[0] !== shoulders[1]) return "rabbet";
  const closed = [run, thin].every((i) => less(blank.low[i], room.low[i]) && less(room.high[i], blank.high[i]));
  if (method !== "dado" || run !== grain || !closed) return method;
  return less(extent(room, axis), extent(room, thin)) ? "groove" : "mortise";
}

/** The part of the joined part that goes in: over its whole section, as far as its own shapes leave it. */
export function tongueOf({ joining, face, deep }: Housing, bench: Bench): Box {
  const joined = bench.piece(joining.join.id);
  return letIn(joined, slab(joined.grown, face, ZERO), face, isPositive(joining.touch) ? 1 : -1, deep);
}

/** What of a slice of the joined part goes in, as far as the shapes that the maker drew leave it. */
function letIn({ body, cuts, drawn }: Workpiece, slice: Box, face: Face, sign: 1 | -1, deep: Length): Box {
  const axis = faceAxis(face);
  const whole = setFace(
    setFace(slice, face, edgeOf(body, axis, sign, deep)),
    opposite(face),
    bodyFace(body, axis, sign),
  );
  return cuts.slice(0, drawn).reduce((box, cut) => (cut.kind === "box" ? boxWithout(box, cut.box) : box), whole);
}

/** A stopped housing ends short of a face of the joined part, whose tongue is cut back there. */
export function stop({ joining, face, deep }: Housing, room: Box, bench: Bench, context: JoineryContext): Box {
  const stopped = joining.draft.stopped;
  const by = stopped && context.measure(stopped.by);
  if (!stopped || !by) return room;
  const joined = bench.piece(joining.join.id);
  const axis = faceAxis(face);
  const sign = face === faceOf(axis, true) ? 1 : -1;
  const strip = slab(joined.grown, stopped.from, by);
  const tongue = letIn(joined, strip, face, sign, deep);
  if (isSolidBox(tongue)) {
    const from = {
      axis: faceAxis(stopped.from),
      sign: stopped.from === faceOf(faceAxis(stopped.from), true) ? (-1 as const) : (1 as const),
    };
    bench.cut(joining.join.id, { kind: "box", box: tongue }, boxFeature("notch", joining.id, tongue, from, axis));
  }
  const inner = strip[stopped.from === faceOf(faceAxis(stopped.from), true) ? "low" : "high"][faceAxis(stopped.from)];
  return isHigh(stopped.from) === less(inner, facePosition(room, stopped.from))
    ? setFace(room, stopped.from, inner)
    : room;
}

const isPositive = (touch: Joining["touch"]): boolean => touch.kind === "faces" && touch.sign > 0;
const bodyFace = (body: Box, axis: 0 | 1 | 2, sign: 1 | -1): Length => (sign > 0 ? body.high[axis] : body.low[axis]);
const edgeOf = (body: Box, axis: 0 | 1 | 2, sign: 1 | -1, deep: Length): Length =>
  sign > 0 ? add(body.high[axis], deep) : subtract(body.low[axis], deep);
