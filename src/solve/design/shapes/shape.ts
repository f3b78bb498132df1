import type { Face, RunDraft, ShapeDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, half, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Box, Hole } from "../../design.ts";
import type { Frame } from "../placing/attitude.ts";
import {
  type AxisIndex,
  extent,
  faceAxis,
  facePosition,
  isHigh,
  middle,
  moveFace,
  normalOf,
  opposite,
  otherAxes,
  point,
  thirdAxis,
  triple,
} from "../space.ts";
import { curved } from "./curved.ts";
import {
  boxCut,
  cornerBox,
  type Measure,
  NOTHING,
  opened,
  type Shaped,
  type Shaping,
  shownEdges,
  slab,
  together,
} from "./shaped.ts";
import { slopeBetween, taper } from "./taper.ts";
import { boxFeature } from "./workpiece.ts";

/**
 * The shape as cuts in space. `body` is the untapered box that faces refer to: a cut reaches as far from them as is said, and goes on through
 * what is let in beyond them. Corners and edges are those that there are on the bench.
 */
export function shapePart(part: string, shape: ShapeDraft, body: Box, frame: Frame, shaping: Shaping): Shaped | null {
  const { measure, whole } = shaping;
  switch (shape.shape) {
    case "taper":
      return taper(shape, body, measure);
    case "chamfer":
    case "bevel": {
      const wide = measure(shape.shape === "chamfer" ? shape.by : shape.wide);
      const deep = measure(shape.shape === "chamfer" ? shape.by : shape.deep);
      return wide && deep && slope(shape.shape, shape.along.faces, wide, deep, whole);
    }
    case "notch":
    case "rabbet": {
      const wide = measure(shape.wide);
      const deep = measure(shape.deep);
      if (!wide || !deep) return null;
      const [first, second] = shape.along.faces;
      // A notch reaches `wide` in from the first face; a rabbet is `deep` there and `wide` from the second.
      const [inFirst, inSecond] = shape.shape === "notch" ? [wide, deep] : [deep, wide];
      const run = thirdAxis(faceAxis(first), faceAxis(second));
      const corner = cornerBox(body, first, inFirst, second, inSecond);
      const box = shape.shape === "notch" ? corner : between(corner, run, shape, measure);
      return box && boxCut(shape.shape, opened(box, body, whole), first, run);
    }
    case "groove":
    case "dado":
    case "mortise":
      return channel(shape, body, shaping);
    case "tenon":
      return tenon(shape, body, frame, measure);
    case "hole":
      return hole(part, shape, body, shaping);
    case "edges": {
      const { except } = shape;
      const shown = shownEdges(body, frame).filter((faces) => !except || !faces.includes(except));
      const edges = shown.map((faces) => ({ faces, at: shape.at }));
      const each = edges.map(
        (along): ShapeDraft =>
          shape.how === "chamfer"
            ? { shape: "chamfer", at: shape.at, along, by: shape.by }
            : { shape: "round-over", at: shape.at, along, radius: shape.by },
      );
      return together(each.map((one) => shapePart(part, one, body, frame, shaping)));
    }
    default:
      return curved(shape, body, frame, shaping);
  }
}

const slope = (
  kind: "chamfer" | "bevel",
  [first, second]: readonly [Face, Face],
  wide: Length,
  deep: Length,
  body: Box,
): Shaped => slopeBetween(kind, first, second, wide, deep, body);

function channel(
  shape: ShapeDraft & { shape: "groove" | "dado" | "mortise" },
  body: Box,
  { measure, whole }: Shaping,
): Shaped | null {
  const [inFrom, wide, deep] = [measure(shape.inFrom), measure(shape.wide), measure(shape.deep)];
  if (!inFrom || !wide || !deep) return null;
  const run = thirdAxis(faceAxis(shape.in), faceAxis(shape.near));
  const near = moveFace(body, shape.near, multiply(inFrom, rational(-1)));
  const box = slab(slab(near, shape.near, wide), shape.in, deep);
  const cut = between(box, run, shape, measure);
  return cut && boxCut(shape.shape, opened(cut, body, whole), shape.in, run);
}

/** What of a cut along `run` lies between the positions that are said. */
function between(box: Box, run: AxisIndex, said: RunDraft, measure: Measure): Box | null {
  const from = said.from ? measure(said.from) : undefined;
  const to = said.to ? measure(said.to) : undefined;
  if (from === null || to === null) return null;
  const low = triple((axis) => (axis === run && from ? from : box.low[axis]));
  const high = triple((axis) => (axis === run && to ? to : box.high[axis]));
  return { low, high };
}

function tenon(shape: ShapeDraft & { shape: "tenon" }, body: Box, frame: Frame, measure: Measure): Shaped | null {
  const [long, thick] = [measure(shape.long), measure(shape.thick)];
  const wide = shape.wide ? measure(shape.wide) : undefined;
  if (!long || !thick || wide === null) return null;
  const axis = faceAxis(shape.on);
  const [a, b] = otherAxes(axis);
  const thin = frame.thickness === axis ? a : frame.thickness;
  const broad = thin === a ? b : a;
  const across = (i: AxisIndex, size: Length, sign: 1 | -1): Length =>
    add(middle(body, i), multiply(half(size), rational(sign)));
  const section = (i: AxisIndex): Length => (i === thin ? thick : i === broad && wide ? wide : extent(body, i));
  const outer = slab(moveFace(body, shape.on, long), shape.on, long);
  const box: Box = {
    low: triple((i) => (i === axis ? outer.low[i] : across(i, section(i), -1))),
    high: triple((i) => (i === axis ? outer.high[i] : across(i, section(i), 1))),
  };
  const into = { axis, sign: isHigh(shape.on) ? (1 as const) : (-1 as const) };
  return { ...NOTHING, tongues: [box], features: [boxFeature("tenon", null, box, into, broad)] };
}

const sign = (face: Face) => rational(isHigh(face) ? 1 : -1);

function hole(
  part: string,
  shape: ShapeDraft & { shape: "hole" },
  body: Box,
  { measure, whole }: Shaping,
): Shaped | null {
  const diameter = measure(shape.diameter);
  const deep = shape.deep ? measure(shape.deep) : extent(body, faceAxis(shape.in));
  const distances = shape.centre.map(({ distance }) => measure(distance));
  const counterbore = shape.counterbore && {
    diameter: measure(shape.counterbore.diameter),
    depth: measure(shape.counterbore.deep),
  };
  if (!diameter || !deep || distances.some((d) => d === null)) return null;
  if (counterbore && (!counterbore.diameter || !counterbore.depth)) return null;
  const at = triple((axis) => {
    const side = shape.centre.findIndex(({ from }) => faceAxis(from) === axis);
    if (side < 0) return facePosition(whole, shape.in);
    const { from } = shape.centre[side] as { from: Face };
    return facePosition(moveFace(body, from, multiply(distances[side] as Length, rational(-1))), from);
  });
  // As far into the body as is said, from where the wood begins.
  const before = multiply(subtract(facePosition(whole, shape.in), facePosition(body, shape.in)), sign(shape.in));
  const stages = [
    ...(counterbore
      ? [{ diameter: counterbore.diameter as Length, depth: add(counterbore.depth as Length, before) }]
      : []),
    { diameter, depth: shape.deep ? add(deep, before) : extent(whole, faceAxis(shape.in)) },
  ];
  const keep = { edge: ZERO, end: ZERO, under: ZERO };
  const direction = normalOf(opposite(shape.in));
  const bored: Hole = {
    part,
    kind: "bolt",
    at: point(...at),
    direction,
    stages,
    through: !shape.deep,
    for: null,
    keep,
    atBench: true,
  };
  return { ...NOTHING, holes: [bored] };
}
