/** Hardware and its motion, mirrored, or brought with a joint that is not square to the room. */
import { mirror, type Placement, placed, placedSolid, turnedVec, type Vec } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Fitting, Hardware, Motion, Pose } from "../../design.ts";
import { swapHands } from "../hands.ts";
import { mirrorPoint } from "../space.ts";

export const mirrorHardware = (hardware: Hardware, about: Length): Hardware => ({
  ...hardware,
  id: swapHands(hardware.id),
  joint: hardware.joint === null ? null : swapHands(hardware.joint),
  carriedBy: swapHands(hardware.carriedBy),
  at: mirrorPoint(hardware.at, 0, about),
  solid: mirror(hardware.solid, 0, about),
  ...(hardware.halfOf !== undefined && { halfOf: swapHands(hardware.halfOf) }),
});

/** A turn seen in a mirror goes the other way round the mirrored line. */
export function mirrorMotion(motion: Motion, about: Length): Motion {
  const twice = 2 * toNumber(about);
  const way = ([x, y, z]: Vec): Vec => [-x, y, z];
  return {
    ...motion,
    poses: motion.poses.map(
      ({ at, shift, rotate: { about: line, degrees } }): Pose => ({
        at,
        shift: way(shift),
        rotate: { about: [[twice - line[0][0], line[0][1], line[0][2]], way(line[1])], degrees: -degrees },
      }),
    ),
  };
}

export const mirrorFitting = (fitting: Fitting, about: Length, holes: Fitting["holes"]): Fitting => ({
  ...fitting,
  id: swapHands(fitting.id),
  part: swapHands(fitting.part),
  face: swapHands(fitting.face) as Fitting["face"],
  through: fitting.through.map(swapHands),
  hardware: fitting.hardware.map((each) => mirrorHardware(each, about)),
  holes,
});

export const placedHardware = (hardware: Hardware, placement: Placement): Hardware => ({
  ...hardware,
  at: placed(placement, hardware.at),
  solid: placedSolid(hardware.solid, placement),
});

export function placedMotion(motion: Motion, placement: Placement): Motion {
  const moved = (at: Vec): Vec => {
    const turned = turnedVec(placement, at);
    return [0, 1, 2].map((i) => (turned[i] as number) + toNumber(placement.shift[i as 0 | 1 | 2])) as unknown as Vec;
  };
  return {
    ...motion,
    poses: motion.poses.map(({ at, shift, rotate: { about, degrees } }) => ({
      at,
      shift: turnedVec(placement, shift),
      rotate: { about: [moved(about[0]), turnedVec(placement, about[1])], degrees },
    })),
  };
}
