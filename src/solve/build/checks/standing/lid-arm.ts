/** The arm of a lid support, between the middles of its two halves. Millimetres. */
import { minus, norm } from "../../../../geometry/vec.ts";
import { toMillimetres } from "../../../../units/length.ts";
import type { BuiltMotion } from "../../../build.ts";
import type { Hardware } from "../../../design.ts";
import { posed } from "./opened.ts";
import { pinOf } from "./pin.ts";
import type { Place } from "./weight-and-feet.ts";

/** A lid that stands upright does not fall by itself, and its support may stop it there. */
const UPRIGHT = 90;

export interface Apart {
  /** How near to each other its halves come, and how far from each other; at how many degrees that is. */
  readonly near: number;
  readonly far: number;
  readonly at: number;
}

/** Seen along the pin: beside the plate the arm has its own thickness. Both halves lie so much nearer to the hinge than drawn. */
export function apartOf(body: Hardware, plate: Hardware, motion: BuiltMotion, nearer = 0): Apart {
  const { at: hinge, across: level } = pinOf(motion);
  const moved = ({ at }: Hardware): Place => {
    const [x, y, z] = [toMillimetres(at[0]), toMillimetres(at[1]), toMillimetres(at[2])];
    const by = nearer * Math.sign(hinge[level] - (level === 0 ? x : y));
    return level === 0 ? [x + by, hinge[1], z] : [hinge[0], y + by, z];
  };
  const [from, to] = [moved(body), moved(plate)];
  return motion.poses
    .filter(({ at }) => at <= UPRIGHT)
    .reduce<Apart>(
      (so, pose): Apart => {
        const by = norm(minus(from, posed(to, pose)));
        return {
          near: Math.min(so.near, by),
          ...(by > so.far ? { far: by, at: pose.at } : { far: so.far, at: so.at }),
        };
      },
      { near: Number.POSITIVE_INFINITY, far: 0, at: 0 },
    );
}
