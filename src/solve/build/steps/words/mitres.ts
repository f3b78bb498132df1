import type { Length } from "../../../../units/length.ts";
import { absolute, divide, equal, multiply, rational } from "../../../../units/rational.ts";
import { type AxisIndex, extent, faceOf, INDICES, indexOf } from "../../../design/space.ts";
import type { Direction, Feature, Part } from "../../../design.ts";
import type { Work } from "../draft.ts";
import { sideWord } from "./measured.ts";

/** Mitred ends of parts, and mitred ends of tenons: where the saw starts, and where it comes out. */
export function mitreTexts(work: Work, part: Part, mitres: readonly Feature[]): readonly string[] {
  return mitres.flatMap((mitre) => {
    if (!("normal" in mitre)) return [];
    return part.features.some((other) => other.kind === "tenon" && other.for === mitre.for)
      ? [tenonText(part, mitre.normal)]
      : [endText(work, part, mitre.origin, mitre.normal)];
  });
}

/** The end of a part keeps its full length at the long point; on the opposite side it loses as much as the other part is wide. */
function endText(work: Work, part: Part, origin: readonly Length[], normal: Direction): string {
  const tilted = INDICES.filter((i) => normal[i] !== 0);
  const end = tilted.find((i) => i === endAxis(part, tilted, origin)) as AxisIndex;
  const side = tilted.find((i) => i !== end) as AxisIndex;
  const high = normal[end] > 0;
  const across = extent(part.body, side);
  const lost = absolute(multiply(across, divide(rational(normal[side]), rational(normal[end]))));
  // The long point lies where the plane goes through the end.
  const longSide = faceOf(side, normal[side] < 0);
  const angle = equal(lost, across) ? ", an angle of 45°" : "";
  return `Mitre the ${faceOf(end, high)} ${sideWord(part, end)}: it keeps its full length at the ${longSide}, and is ${work.print(lost)} shorter at the ${faceOf(side, normal[side] > 0)}${angle}.`;
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

/** A tenon that meets another in a leg. */
function tenonText(part: Part, normal: Direction): string {
  const long = INDICES.find((i) => normal[i] !== 0 && i === indexOf(part.axes.length)) ?? 0;
  const side = INDICES.find((i) => normal[i] !== 0 && i !== long) as AxisIndex;
  return `Mitre the end of the tenon at the ${faceOf(long, normal[long] > 0)}, 45°, so that it is shorter at the ${faceOf(side, normal[side] > 0)}: it meets another there, and they stay a little apart.`;
}
