/** Where what opens stands when it is open. */
import { circlePoint } from "../../../../geometry/angle.ts";
import type { BuiltMotion } from "../../../build.ts";
import type { Pose } from "../../../design.ts";
import { type Heavy, millimetresOf, type Place } from "./weight-and-feet.ts";

const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const combined = (...terms: readonly (readonly [Place, number])[]): Place => {
  const along = (i: 0 | 1 | 2): number => terms.reduce((so, [of, by]) => so + of[i] * by, 0);
  return [along(0), along(1), along(2)];
};

/** A place on its way: turned about the line of the pose, then shifted. Millimetres. */
export function posed(at: Place, { rotate, shift }: Pose): Place {
  const origin = millimetresOf(rotate.about[0]);
  const [, way] = rotate.about;
  const size = Math.sqrt(dot(way, way)) || 1;
  const axis: Place = [way[0] / size, way[1] / size, way[2] / size];
  const from = combined([at, 1], [origin, -1]);
  const [cos, sin] = circlePoint(rotate.degrees, 360);
  const side: Place = [
    axis[1] * from[2] - axis[2] * from[1],
    axis[2] * from[0] - axis[0] * from[2],
    axis[0] * from[1] - axis[1] * from[0],
  ];
  const turned = combined([from, cos], [side, sin], [axis, dot(axis, from) * (1 - cos)]);
  return combined([turned, 1], [origin, 1], [millimetresOf(shift), 1]);
}

/** The pose in which something is farthest to the front. */
export function openPose({ poses }: BuiltMotion, at: Place): Pose | undefined {
  return poses.reduce<Pose | undefined>(
    (best, pose) => (best === undefined || posed(at, pose)[1] < posed(at, best)[1] ? pose : best),
    undefined,
  );
}

/** Weights with everything opened to the front. */
export const opened = (all: readonly Heavy[], motions: readonly BuiltMotion[]): readonly Heavy[] =>
  all.map((each) => {
    const motion = motions.find(({ moves }) => moves.includes(each.id));
    const pose = motion && openPose(motion, each.at);
    return pose ? { ...each, at: posed(each.at, pose) } : each;
  });
