/** Full-size patterns of the curves that are sawn: arches, rounded corners, openings. */
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, equal, half, less, min, multiply, rational, subtract, toNumber, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { axisOf, faceOf } from "../../design/space.ts";
import { onBench } from "../../design/turning.ts";
import type { Design, Feature, Part } from "../../design.ts";
import type { CurvePattern, Spot, Stroke } from "../model/pattern.ts";
import { spanOf } from "../steps/words/boxes.ts";
import { type CurvedFeature, isCurved } from "../steps/words/curves.ts";
import { sideWord } from "../steps/words/measured.ts";
import { fitsPaper, tiles } from "./sheets.ts";

/** Paper round a curve, and how near an edge of the part is drawn too. */
const AROUND = inches(1, 2);
const NEAR = inches(3);
/** Smaller radii are drawn round a coin or bored. Common practice, no source. */
const LEAST = { "rounded corner": millimetres(12), "cut-out": millimetres(6) } as const;
/** Stretches of a half that is set out by offsets. */
const STATIONS = 8;

export type CurveDraft = Omit<CurvePattern, "id" | "marks" | "uses">;

/** Of a feature of a part; null where it is measured as easily. */
export function curveOf(design: Design, part: Part, feature: Feature, print: (l: Length) => string): CurveDraft | null {
  if (!isCurved(feature)) return null;
  if (feature.kind === "arch") return archOf(design, onBench(part), feature, print);
  if (feature.kind === "rounded corner" && !less(feature.radius, LEAST["rounded corner"]))
    return cornerOf(feature.radius, print);
  if (feature.kind === "cut-out" && !less(feature.radius, LEAST["cut-out"])) return openingOf(feature, print);
  return null;
}

const line = (from: Spot, to: Spot): Stroke => ({ is: "line", from, to });
const arc = (from: Spot, to: Spot, centre: Spot): Stroke => ({ is: "arc", from, to, centre });

/** One half, from the nearer end of the part if that is near and square, up to the middle. */
function archOf(design: Design, part: Part, feature: CurvedFeature, print: (l: Length) => string): CurveDraft {
  const [width, , rise] = feature.size;
  const [run, into] = [axisOf(feature.along), axisOf(feature.into)];
  const { low, high } = spanOf(feature, run);
  const [before, after] = [subtract(low, part.body.low[run]), subtract(part.body.high[run], high)];
  const beside = min(before, after);
  const square = part.features.every(({ kind }) => kind !== "angled end" && kind !== "mitre" && kind !== "taper");
  const reach = (start: Length): Length => add(start, half(width));
  const showsEnd =
    square && !less(NEAR, beside) && (less(beside, AROUND) || tiles(reach(beside)) <= tiles(reach(AROUND)));
  const start = showsEnd ? beside : AROUND;
  const middle = reach(start);
  const size = { width: middle, height: add(rise, AROUND) };
  const edge = `${faceOf(into, (feature.into[into] as number) < 0)} ${sideWord(part, into)}`;
  const isLong = less(AROUND, start);
  const toEnd =
    showsEnd || !equal(before, after) ? null : `from the arch to the ${sideWord(part, run)} ${print(beside)}`;
  const full = fitsPaper(size.width, size.height);
  const centre: Spot = [middle, subtract(rise, feature.radius)];
  return {
    ...{ of: "curve", what: `half of an arch ${print(width)} wide and ${print(rise)} high`, ...size, half: true, full },
    outline: [arc([start, ZERO], [middle, rise], centre)],
    edges: [
      // Over the arch the edge is sawn away.
      ...(less(ZERO, start) ? [{ from: [ZERO, ZERO], to: [start, ZERO], is: isLong ? edge : "" } as const] : []),
      {
        from: [start, ZERO],
        to: [middle, ZERO],
        is: isLong ? "" : edge,
        ...(toEnd !== null && { first: toEnd }),
        gone: true,
      },
      ...(showsEnd && less(ZERO, start)
        ? [{ from: [ZERO, ZERO], to: [ZERO, size.height], is: sideWord(part, run) } as const]
        : []),
      { from: [middle, ZERO], to: [middle, size.height], is: "middle" },
    ],
    ...(!full && { offsets: offsets(start, half(width), rise, feature.radius, design.precision) }),
  };
}

/** Heights of an arc over its chord at even distances, as they are marked. */
function offsets(start: Length, wide: Length, rise: Length, radius: Length, precision: Length): readonly Spot[] {
  const r = toNumber(radius);
  return Array.from({ length: STATIONS + 1 }, (_, k): Spot => {
    const along = roundTo(multiply(wide, rational(k, STATIONS)), precision);
    const out = toNumber(wide) - toNumber(along);
    const up = Math.sqrt(Math.max(0, r * r - out * out)) - r + toNumber(rise);
    return [add(start, along), roundTo(rational(Math.round(up)), precision)];
  });
}

function cornerOf(radius: Length, print: (l: Length) => string): CurveDraft {
  const size = add(radius, AROUND);
  return {
    ...{ of: "curve", what: `corner of ${print(radius)} radius`, width: size, height: size, half: false },
    full: fitsPaper(size, size),
    outline: [arc([ZERO, radius], [radius, ZERO], [radius, radius])],
    edges: [
      { from: [ZERO, radius], to: [ZERO, size], is: "edge" },
      { from: [radius, ZERO], to: [size, ZERO], is: "edge" },
    ],
  };
}

function openingOf({ size: [wide, high], radius: r }: CurvedFeature, print: (l: Length) => string): CurveDraft | null {
  const [left, bottom] = [AROUND, AROUND];
  const [right, top] = [add(left, wide), add(bottom, high)];
  const size = { width: add(right, AROUND), height: add(top, AROUND) };
  if (!fitsPaper(size.width, size.height)) return null;
  const [l, b, rr, t] = [add(left, r), add(bottom, r), subtract(right, r), subtract(top, r)];
  const [across, up] = [add(left, half(wide)), add(bottom, half(high))];
  return {
    ...{ of: "curve", what: `opening ${print(wide)} × ${print(high)}`, ...size, half: false, full: true },
    outline: [
      ...[line([l, bottom], [rr, bottom]), arc([rr, bottom], [right, b], [rr, b])],
      ...[line([right, b], [right, t]), arc([right, t], [rr, top], [rr, t])],
      ...[line([rr, top], [l, top]), arc([l, top], [left, t], [l, t])],
      ...[line([left, t], [left, b]), arc([left, b], [l, bottom], [l, b])],
    ],
    edges: [
      { from: [across, ZERO], to: [across, size.height], is: "middle" },
      { from: [ZERO, up], to: [size.width, up], is: "middle" },
    ],
  };
}
