/** What a cut is called where its kind alone does not say it: by its purpose, or because it is closed all round. */
import { equal } from "../../../../units/rational.ts";
import { INDICES } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { pluralOf, type Work } from "../draft.ts";
import { type BoxFeature, spanOf } from "./boxes.ts";
import { seatTexts } from "./leaf-seats.ts";

interface CutName {
  readonly one: string;
  readonly many: string;
  /** What is said after its places. */
  readonly fit: readonly string[];
}

/** What is cut for a leaf of a hinge. */
export const LEAF_SEAT = { one: "seat for a hinge leaf", many: "seats for hinge leaves" } as const;

export function nameOf(work: Work, part: Part, box: BoxFeature): CutName {
  const { kind } = box;
  const joint = work.design.joints.find(({ id }) => id === box.for);
  if (joint?.kind === "hinged") return { ...LEAF_SEAT, fit: seatTexts(work, part, box) };
  // It stops short of both sides of the face. A groove of what keeps a top ends where it may.
  if ((kind === "dado" || (kind === "groove" && joint?.method === "dado")) && isClosed(part, box))
    return { one: `stopped ${kind}`, many: `stopped ${kind}s`, fit: [] };
  return { one: kind, many: pluralOf(kind), fit: [] };
}

const isClosed = ({ blank }: Part, box: BoxFeature): boolean =>
  INDICES.filter((axis) => box.into[axis] === 0).every((axis) => {
    const { low, high } = spanOf(box, axis);
    return !equal(low, blank.low[axis]) && !equal(high, blank.high[axis]);
  });
