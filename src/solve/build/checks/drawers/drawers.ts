/** Drawers as the checks see them: what slides out, and the slides that carry it. */
import { toNumber } from "../../../../units/rational.ts";
import type { BuiltMotion } from "../../../build.ts";
import { type AxisIndex, INDICES } from "../../../design/space.ts";
import type { Hardware, Joint, Part } from "../../../design.ts";
import type { Checked } from "../check.ts";

export interface Drawer {
  readonly motion: BuiltMotion;
  readonly parts: readonly Part[];
  readonly slides: readonly SlideOf[];
  /** The direction that it slides along, and the way out. */
  readonly axis: AxisIndex;
  readonly out: 1 | -1;
}

/** A slide with the parts that it is between. */
export interface SlideOf {
  readonly joint: Joint;
  readonly onCase: Hardware;
  readonly onDrawer: Hardware;
  readonly side: Part;
  readonly wall: Part;
}

export function drawersOf({ design, hardware, motions }: Checked): readonly Drawer[] {
  return motions.flatMap((motion): readonly Drawer[] => {
    const last = motion.poses.at(-1);
    if (motion.kind !== "slide" || !last) return [];
    const axis = INDICES.find((i) => Math.abs(last.shift[i]) > 0);
    if (axis === undefined) return [];
    const part = (id: string): Part | undefined => design.parts.find((each) => each.id === id);
    const slides = design.joints.flatMap((joint): readonly SlideOf[] => {
      if (!motion.joints.includes(joint.id)) return [];
      const own = hardware.filter((each) => each.joint === joint.id);
      const [onCase, onDrawer] = [own.find((each) => !each.halfOf), own.find((each) => each.halfOf)];
      const [side, wall] = joint.parts.map(part);
      return onCase && onDrawer && side && wall ? [{ joint, onCase, onDrawer, side, wall }] : [];
    });
    const parts = motion.moves.flatMap((id) => part(id) ?? []);
    return [{ motion, parts, slides, axis, out: last.shift[axis] > 0 ? 1 : -1 }];
  });
}

/** What stands still. */
export const stillBeside = ({ motion }: Drawer, { design }: Checked): readonly Part[] =>
  design.parts.filter(({ id }) => !motion.moves.includes(id));

/** Of a part as it stands. Units of length. */
export const spanAlong = (part: Part, axis: AxisIndex): readonly [number, number] => [
  toNumber(part.body.low[axis]),
  toNumber(part.body.high[axis]),
];
