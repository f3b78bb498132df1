import type { Length } from "../../../../units/length.ts";
import { absolute, add, divide, equal, max, min, multiply, rational, subtract } from "../../../../units/rational.ts";
import { type AxisIndex, extent, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Direction, Feature, Part } from "../../../design.ts";
import { capital, series, type Work } from "../draft.ts";
import { isSawnToFit } from "../sawn-to-fit.ts";
import { groupedBy } from "../wishes/own-key.ts";
import type { BoxFeature } from "./boxes.ts";
import { sideWord } from "./measured.ts";

/** Mitred ends of parts, and mitred ends of tenons: where the saw starts, and where it comes out. */
export function mitreTexts(work: Work, part: Part, mitres: readonly Feature[]): readonly string[] {
  return mitres.flatMap((mitre) => {
    if (!("normal" in mitre)) return [];
    return part.features.some((other) => other.kind === "tenon" && other.for === mitre.for)
      ? [tenonText(work, part, mitre)]
      : [endText(work, part, mitre.origin, mitre.normal)];
  });
}

function endText(work: Work, part: Part, origin: readonly Length[], normal: Direction): string {
  const { which, long, short, lost, angle } = endOf(work, part, origin, normal);
  return `Mitre the ${which}: it keeps its full length at the ${long}, and is ${lost} at the ${short}${angle}.`;
}

/**
 * The same of the ends that are mitred while a part is cut to fit, which another sentence tells how: "Its left end and its right end are both mitred so: full
 * length at the front, 1 in shorter at the back, an angle of 45°."
 */
export function fittedMitres(work: Work, part: Part): readonly string[] {
  const ends = part.features
    .flatMap((each) =>
      "normal" in each && isSawnToFit(each, part) ? [endOf(work, part, each.origin, each.normal)] : [],
    )
    .toSorted((a, b) => Number(a.high) - Number(b.high));
  const howOf = ({ long, short, lost, angle }: (typeof ends)[number]): string =>
    `full length at the ${long}, ${lost} at the ${short}${angle}`;
  return groupedBy(ends, howOf).map((own) => {
    const names = capital(series(own.map(({ which }) => `its ${which}`)));
    return `${names} ${own.length > 1 ? "are both" : "is"} mitred so: ${howOf(own[0] as (typeof ends)[number])}.`;
  });
}

/** The end of a part keeps its full length at the long point; on the opposite side it loses as much as the other part is wide. */
function endOf(work: Work, part: Part, origin: readonly Length[], normal: Direction) {
  const tilted = INDICES.filter((i) => normal[i] !== 0);
  const end = tilted.find((i) => i === endAxis(part, tilted, origin)) as AxisIndex;
  const side = tilted.find((i) => i !== end) as AxisIndex;
  const high = normal[end] > 0;
  const across = extent(part.body, side);
  const lost = absolute(multiply(across, divide(rational(normal[side]), rational(normal[end]))));
  return {
    high,
    which: `${faceOf(end, high)} ${sideWord(part, end)}`,
    // The long point lies where the plane goes through the end.
    long: faceOf(side, normal[side] < 0),
    short: faceOf(side, normal[side] > 0),
    lost: `${work.print(lost)} shorter`,
    angle: equal(lost, across) ? ", an angle of 45°" : "",
  };
}

/** The direction whose end the plane cuts: the length, unless the mitre runs along it. */
function endAxis(part: Part, tilted: readonly AxisIndex[], origin: readonly Length[]): AxisIndex {
  const long = indexOf(part.axes.length);
  if (tilted.includes(long)) return long;
  const atEnd = (i: AxisIndex): boolean =>
    equal(origin[i] as Length, part.body.low[i]) || equal(origin[i] as Length, part.body.high[i]);
  const wide = indexOf(part.axes.width);
  return tilted.includes(wide) && atEnd(wide) ? wide : (tilted[0] as AxisIndex);
}

/** A tenon that meets another in a leg: how much of the corner of its end is taken off. */
function tenonText({ print }: Work, part: Part, { origin, normal, for: joint }: PlaneFeature): string {
  const long = indexOf(part.axes.length);
  const side = INDICES.find((i) => normal[i] !== 0 && i !== long) as AxisIndex;
  const [end, face] = [faceOf(long, normal[long] > 0), faceOf(side, normal[side] > 0)];
  const tenon = part.features.find((each) => each.kind === "tenon" && each.for === joint);
  let off = "";
  if (tenon && "size" in tenon) {
    const [tip, cheek] = [farthest(tenon, long, normal[long] > 0), farthest(tenon, side, normal[side] > 0)];
    const slope = divide(rational(normal[side]), rational(normal[long]));
    // Where the plane meets the cheek that is made shorter.
    const at = subtract(origin[long], multiply(slope, subtract(cheek, origin[side])));
    off = `, ${print(absolute(subtract(tip, at)))} off its ${face} cheek`;
  }
  return `Cut the corner off the end of the tenon at the ${end}, at 45°${off}: it meets another there, and they stay a little apart.`;
}

type PlaneFeature = Extract<Feature, { readonly normal: Direction }>;

/** How far a box reaches along an axis. */
function farthest({ origin, along, across, into, size }: BoxFeature, axis: AxisIndex, high: boolean): Length {
  const by = [along, across, into].map((way, k) => multiply(size[k as 0 | 1 | 2], rational(Math.round(way[axis]))));
  const far = by.reduce(add, origin[axis]);
  return (high ? max : min)(origin[axis], far);
}
