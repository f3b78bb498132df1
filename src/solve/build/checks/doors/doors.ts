/** Doors as the checks see them: what swings, its hinges, and what it hangs on. */
import type { Length } from "../../../../units/length.ts";
import { max, min, subtract, ZERO } from "../../../../units/rational.ts";
import type { BuiltMotion } from "../../../build.ts";
import { acrossGap } from "../../../design/joinery/touch.ts";
import { type AxisIndex, INDICES, indexOf, triple } from "../../../design/space.ts";
import type { Box, Hardware, Item, Joint, Part } from "../../../design.ts";
import type { Checked } from "../check.ts";
import { posed } from "../standing/opened.ts";
import { around, type Bounds, millimetresOf } from "../standing/weight-and-feet.ts";

export interface Door {
  readonly motion: BuiltMotion;
  readonly parts: readonly Part[];
  /** The part that its hinges are screwed to, and the joint that they make. */
  readonly hung: Part;
  readonly joint: Joint;
  /** Its hinges, each once. */
  readonly hinges: readonly Hardware[];
  readonly item: Item;
  /** Across its thickness, along the pin, and from the hinged edge to the free one. */
  readonly thick: AxisIndex;
  readonly along: AxisIndex;
  readonly wide: AxisIndex;
  /** The way that it opens, along its thickness; and from the hinged edge to the free one. */
  readonly opens: 1 | -1;
  readonly free: 1 | -1;
  /** Between what it hangs on, not in front of it. */
  readonly inset: boolean;
  /** All of its wood, applied strips included. */
  readonly body: Box;
  /** The same in millimetres. */
  readonly bounds: Bounds;
}

/** What tells of doors. */
export type Hung = Pick<Checked, "design" | "hardware" | "motions">;

/** Doors in the order of the motions; a flap that opens upwards is a lid, and none. */
export function doorsOf({ design, hardware, motions }: Hung): readonly Door[] {
  return motions.flatMap((motion): readonly Door[] => {
    if (motion.kind !== "swing") return [];
    const parts = design.parts.filter(({ id }) => motion.moves.includes(id));
    const joint = design.joints.find(({ id, kind }) => kind === "hinged" && motion.joints.includes(id));
    const [hung, hold] = (joint?.parts ?? []).map((id) => design.parts.find((part) => part.id === id));
    const hinges = hardware.filter((each) => each.joint === joint?.id && !each.halfOf);
    const [first] = hinges;
    if (!joint || !hung || !hold || !first || hung.turned || hold.turned) return [];
    const thick = indexOf(hung.axes.thickness);
    const [, line] = motion.poses[0]?.rotate.about ?? [];
    const along = INDICES.find((i) => Math.abs(line?.[i] ?? 0) > 0.5);
    const touch = acrossGap(hung.body, hold.body);
    if (along === undefined || along === thick || touch.kind !== "faces") return [];
    const wide = (3 - along - thick) as AxisIndex;
    const bounds = around(parts.map(({ solid }) => solid));
    const pin = millimetresOf(motion.poses[0]?.rotate.about[0] ?? [0, 0, 0])[wide];
    const free = pin * 2 < bounds.low[wide] + bounds.high[wide] ? 1 : -1;
    const edge = triple((i) =>
      i === wide ? (free > 0 ? bounds.high : bounds.low)[i] : (bounds.low[i] + bounds.high[i]) / 2,
    );
    const later = motion.poses.find(({ at }) => at >= SOME) ?? motion.poses.at(-1);
    const opens = later && posed(edge, later)[thick] < edge[thick] ? -1 : 1;
    const end = (pick: "low" | "high") =>
      triple((i): Length => parts.map(({ body }) => body[pick][i]).reduce(pick === "low" ? min : max));
    const body = { low: end("low"), high: end("high") };
    const shape = { thick, along, wide, opens, free, body, bounds } as const;
    return [{ motion, parts, hung, joint, hinges, item: first.item, ...shape, inset: touch.axis !== thick }];
  });
}

/** Degrees after which it is plain which way a door opens. */
const SOME = 20;

/** As a hinge sees it: what is applied in front counts, beads on its back do not. */
export const thicknessOf = ({ body, hung, thick, opens }: Door): Length =>
  opens > 0 ? subtract(body.high[thick], hung.body.low[thick]) : subtract(hung.body.high[thick], body.low[thick]);

/** How far the face of an inset door lies behind the edge of what it hangs on, where its hinges begin; nothing where it stands out before that. */
export function setBackOf({ joint, body, thick, opens }: Door, { design }: Pick<Checked, "design">): Length {
  const hold = design.parts.find(({ id }) => id === joint.parts[1]);
  if (!hold) return ZERO;
  const by =
    opens > 0 ? subtract(hold.body.high[thick], body.high[thick]) : subtract(body.low[thick], hold.body.low[thick]);
  return max(by, ZERO);
}

/** Hinges that turn about a pin: nothing in them holds a door shut, or stops it. */
export const isOnPins = ({ joint: { method } }: Door): boolean =>
  method === "butt hinges" || method === "continuous hinge";

/** Parts and hardware that do not move with a door. */
export const beside = ({ motion }: Door, { design, hardware }: Hung): readonly (Part | Hardware)[] =>
  [...design.parts, ...hardware].filter(({ id, solid }) => !motion.moves.includes(id) && solid.pieces.length > 0);

/** The doors of which the hinges are written in the same place, this one among them: the two of a pair. */
export const writtenWith = ({ joint: { at } }: Door, doors: readonly Door[]): readonly Door[] =>
  doors.filter(({ joint }) => joint.at.file === at.file && joint.at.start === at.start && joint.at.end === at.end);
