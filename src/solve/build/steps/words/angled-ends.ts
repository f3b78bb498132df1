import { arcTangent } from "../../../../geometry/index.ts";
import { faceOf, indexOf, otherAxes, thirdAxis } from "../../../design/space.ts";
import type { Feature, Part } from "../../../design.ts";
import { series } from "../draft.ts";

type Plane = Extract<Feature, { readonly normal: unknown }>;

/** An end that is not square: how far it leans, in degrees, across each face, and where its long point is. */
interface AngledEnd {
  readonly end: string;
  readonly angles: readonly { readonly degrees: string; readonly across: string; readonly long: string }[];
}

/** In the coordinates of the part on the bench. */
export function angledEnd(part: Part, { normal }: Plane): AngledEnd {
  const long = indexOf(part.axes.length);
  const others = otherAxes(long);
  // An end on a plane that lies nearly along the board is cut across its width.
  const axis =
    Math.abs(normal[long]) > 0.05 * Math.max(...others.map((i) => Math.abs(normal[i])))
      ? long
      : indexOf(part.axes.width);
  const angles = otherAxes(axis)
    .filter((i) => normal[i] !== 0)
    .map((i) => ({
      degrees: degreesOf(Math.abs(normal[i] / normal[axis])),
      across: faceOf(thirdAxis(axis, i), thirdAxis(axis, i) !== 1),
      long: faceOf(i, normal[i] < 0),
    }));
  return { end: faceOf(axis, normal[axis] > 0), angles };
}

/** To a tenth, which is finer than any protractor. */
export const degreesOf = (slope: number): string => `${Math.round((arcTangent(slope) * 1800) / Math.PI) / 10}°`;

export function angledEndTexts(part: Part, name: string, planes: readonly Plane[]): readonly string[] {
  return planes.map((plane) => {
    const { end, angles } = angledEnd(part, plane);
    const cuts = series(angles.map(({ degrees, across }) => `${degrees} from square across its ${across}`));
    const long = series(angles.map((angle) => `the ${angle.long}`));
    return `Cut the ${end} end of the ${name} off at ${cuts}, so that its long point is at ${long}.`;
  });
}

/** "ends cut at 35.4° and 54.6°, measured to the long points" */
export function angledEndsNote(part: Part): string | null {
  const planes = part.features.filter((feature): feature is Plane => feature.kind === "angled end");
  if (planes.length === 0) return null;
  const told = planes.map((plane) =>
    angledEnd(part, plane)
      .angles.map(({ degrees }) => degrees)
      .join(" and "),
  );
  const cuts = [...new Set(told)].join("; ");
  return `${planes.length === 1 ? "one end" : "both ends"} cut at ${cuts}, length to the long ${planes.length === 1 ? "point" : "points"}`;
}
