import { curveDoesNotFit } from "../../../findings/rules/curve-does-not-fit.ts";
import type { Span } from "../../../findings/span.ts";
import type { Face, Formula, ShapeDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import {
  add,
  equal,
  half,
  less,
  min,
  multiply,
  negate,
  type Rational,
  rational,
  subtract,
  ZERO,
} from "../../../units/rational.ts";
import type { Box, CurvedKind, Feature } from "../../design.ts";
import type { Frame } from "../placing/attitude.ts";
import {
  type AxisIndex,
  extent,
  faceAxis,
  facePosition,
  isHigh,
  middle,
  moveFace,
  otherAxes,
  point,
  thirdAxis,
  triple,
} from "../space.ts";
import { overChord, radiusOf, roundedIn, roundedOff } from "./arc.ts";
import { type Corner, outlineCut } from "./region.ts";
import { cornerBox, inward, NOTHING, opened, type Shaped, type Shaping, slab, together } from "./shaped.ts";
import { boxFeature, type Cut, planeCut } from "./workpiece.ts";

type Curved = Extract<ShapeDraft, { readonly shape: "arch" | "round-over" | "corner radius" | "cut-out" | "slot" }>;

/** Shapes with curves in them. */
export function curved(shape: Curved, body: Box, frame: Frame, shaping: Shaping): Shaped | null {
  switch (shape.shape) {
    case "arch":
      return arch(shape, body, frame, shaping);
    case "round-over":
      return rounded("round-over", shape.along.faces, shape.radius, shaping);
    case "corner radius":
      return together(shape.corners.map(({ faces }) => rounded("rounded corner", faces, shape.radius, shaping)));
    case "cut-out":
      return cutOut(shape, body, shaping);
    case "slot":
      return slot(shape, body, shaping);
  }
}

/** Tells of a measure that is nothing, or too large, or with `least` too small; true when it was told. */
function misfits(
  { part, print, report }: Shaping,
  at: Span,
  [shape, measure]: readonly [string, string],
  is: Length,
  limit: Length,
  least = false,
): boolean {
  const nothing = !less(ZERO, is);
  if (!nothing && !(least ? less(is, limit) : less(limit, is))) return false;
  const bound = nothing ? null : { atMost: !least, length: print(limit) };
  report(curveDoesNotFit(at, { part, shape, measure, is: print(is), limit: bound }));
  return true;
}

const curveFeature = (kind: CurvedKind, box: Box, face: Face, along: AxisIndex, radius: Length): Feature => ({
  ...boxFeature("notch", null, box, inward(face), along),
  kind,
  for: null,
  radius,
});

function arch(shape: Curved & { shape: "arch" }, body: Box, frame: Frame, shaping: Shaping): Shaped | null {
  const into = faceAxis(shape.in);
  // Through the thickness; an arch in a broad face spans the length.
  const run = into === frame.thickness ? frame.length : thirdAxis(into, frame.thickness);
  const from = shape.from ? shaping.measure(shape.from) : body.low[run];
  const to = shape.to ? shaping.measure(shape.to) : body.high[run];
  const deep = shaping.measure(shape.deep);
  if (!from || !to || !deep) return null;
  const width = subtract(to, from);
  if (misfits(shaping, shape.to?.at ?? shape.at, ["arch", "the width"], width, ZERO, true)) return null;
  if (misfits(shaping, shape.deep.at, ["arch", "the depth"], deep, half(width))) return null;
  const centre = half(add(from, to));
  const edge = facePosition(body, shape.in);
  const corners = overChord(width, deep).map(
    ([along, up]): Corner => [add(centre, along), isHigh(shape.in) ? subtract(edge, up) : add(edge, up)],
  );
  // Straight on from the edge that was said to the one that there is.
  const last = facePosition(shaping.whole, shape.in);
  const legs = equal(edge, last) ? [] : [corners.at(-1), corners[0]].flatMap((c) => (c ? [[c[0], last] as const] : []));
  const spanned = slab(body, shape.in, deep);
  const box: Box = {
    low: triple((i) => (i === run ? from : i === into ? spanned.low[i] : shaping.whole.low[i])),
    high: triple((i) => (i === run ? to : i === into ? spanned.high[i] : shaping.whole.high[i])),
  };
  return {
    ...NOTHING,
    cuts: [outlineCut([...corners, ...legs], [run, into], box, (side) => side < corners.length - 1)],
    features: [curveFeature("arch", box, shape.in, run, radiusOf(width, deep))],
  };
}

/** The corner between two faces taken off to a quarter circle, along the whole third direction. */
function rounded(
  kind: "round-over" | "rounded corner",
  [first, second]: readonly [Face, Face],
  formula: Formula,
  shaping: Shaping,
): Shaped | null {
  const { whole: body } = shaping;
  const radius = shaping.measure(formula);
  if (!radius) return null;
  const room = min(extent(body, faceAxis(first)), extent(body, faceAxis(second)));
  if (misfits(shaping, formula.at, [kind, "the radius"], radius, room)) return null;
  const stops = roundedOff(radius).map(([a, b]) => [inFrom(body, first, a), inFrom(body, second, b)] as const);
  const third = thirdAxis(faceAxis(first), faceAxis(second));
  const onAxes = (one: Rational, two: Rational, other: Rational) =>
    triple((i) => (i === third ? other : i === faceAxis(first) ? one : two));
  const cuts = stops.slice(1).map(([a, b], i): Cut => {
    const [c, d] = stops[i] as (typeof stops)[number];
    // The way out of the wood is towards both faces.
    const [one, two] = [outward(first, subtract(b, d)), outward(second, subtract(a, c))];
    return planeCut(point(...onAxes(c, d, body.low[third])), onAxes(one, two, ZERO), {
      ...{ smooth: true, eases: kind === "round-over" },
    });
  });
  const box = cornerBox(body, first, radius, second, radius);
  return { ...NOTHING, cuts, features: [curveFeature(kind, box, first, third, radius)] };
}

const inFrom = (body: Box, face: Face, by: Length): Length => facePosition(moveFace(body, face, negate(by)), face);
const outward = (face: Face, size: Rational): Rational => {
  const positive = less(size, ZERO) ? negate(size) : size;
  return isHigh(face) ? positive : negate(positive);
};

function cutOut(shape: Curved & { shape: "cut-out" }, body: Box, shaping: Shaping): Shaped | null {
  const through = faceAxis(shape.in);
  const [a, b] = otherAxes(through);
  const sizes = [shaping.measure(shape.wide), shaping.measure(shape.high)];
  const radius = shape.radius ? shaping.measure(shape.radius) : ZERO;
  const distances = shape.placed.map(({ distance }) => shaping.measure(distance));
  const [wide, high] = sizes;
  if (!wide || !high || !radius || distances.some((d) => d === null)) return null;
  const side = (axis: AxisIndex, size: Length): readonly [Length, Length] => {
    const i = shape.placed.findIndex(({ from }) => faceAxis(from) === axis);
    const placed = shape.placed[i];
    if (!placed) return [subtract(middle(body, axis), half(size)), add(middle(body, axis), half(size))];
    const near = inFrom(body, placed.from, distances[i] as Length);
    return isHigh(placed.from) ? [subtract(near, size), near] : [near, add(near, size)];
  };
  const [across, up] = [side(a, wide), side(b, high)];
  for (const [axis, size, formula, name] of [
    [a, wide, shape.wide, "the width"],
    [b, high, shape.high, "the height"],
  ] as const)
    if (misfits(shaping, formula.at, ["cut-out", name], size, extent(body, axis))) return null;
  const named = shape.radius;
  if (named && radius.n !== 0n && misfits(shaping, named.at, ["cut-out", "the radius"], radius, half(min(wide, high))))
    return null;
  const box: Box = {
    low: triple((i) => (i === a ? across[0] : i === b ? up[0] : shaping.whole.low[i])),
    high: triple((i) => (i === a ? across[1] : i === b ? up[1] : shaping.whole.high[i])),
  };
  return {
    ...NOTHING,
    cuts: [
      radius.n === 0n ? { kind: "box", box } : outlineCut(roundedBox(across, up, radius), [a, b], box, () => true),
    ],
    features: [curveFeature("cut-out", box, shape.in, a, radius)],
  };
}

function slot(shape: Curved & { shape: "slot" }, body: Box, shaping: Shaping): Shaped | null {
  const { measure } = shaping;
  const into = faceAxis(shape.in);
  const [inside, wide] = [measure(shape.inFrom), measure(shape.wide)];
  const [from, to] = [measure(shape.from), measure(shape.to)];
  const deep = shape.deep ? measure(shape.deep) : extent(body, into);
  if (!inside || !wide || !from || !to || !deep) return null;
  if (misfits(shaping, shape.wide.at, ["slot", "the width"], wide, extent(body, faceAxis(shape.near)))) return null;
  if (misfits(shaping, shape.to.at, ["slot", "the length"], subtract(to, from), wide, true)) return null;
  if (misfits(shaping, shape.at, ["slot", "the depth"], deep, extent(body, into))) return null;
  const run = thirdAxis(into, faceAxis(shape.near));
  const near = moveFace(body, shape.near, multiply(inside, rational(-1)));
  const strip = opened(slab(slab(near, shape.near, wide), shape.in, deep), body, shaping.whole, [into]);
  const box: Box = {
    low: triple((i) => (i === run ? from : strip.low[i])),
    high: triple((i) => (i === run ? to : strip.high[i])),
  };
  const axis = faceAxis(shape.near);
  const corners = roundedBox([from, to], [box.low[axis], box.high[axis]], half(wide));
  return {
    ...NOTHING,
    cuts: [outlineCut(corners, [run, axis], box, () => true)],
    features: [curveFeature("slot", box, shape.in, run, half(wide))],
  };
}

/** A rectangle with rounded corners, to the left: right side going up first. */
function roundedBox(
  [left, right]: readonly [Length, Length],
  [low, high]: readonly [Length, Length],
  radius: Length,
): readonly Corner[] {
  const stops = roundedIn(radius);
  const back = stops.toReversed();
  const corners = [
    ...back.map(([x, y]): Corner => [subtract(right, x), add(low, y)]),
    ...stops.map(([x, y]): Corner => [subtract(right, x), subtract(high, y)]),
    ...back.map(([x, y]): Corner => [add(left, x), subtract(high, y)]),
    ...stops.map(([x, y]): Corner => [add(left, x), add(low, y)]),
  ];
  // Where two quarters meet in the middle of a side their ends are one corner.
  return corners.filter(([x, y], i) => {
    const [u, v] = corners[(i + 1) % corners.length] as Corner;
    return subtract(x, u).n !== 0n || subtract(y, v).n !== 0n;
  });
}
