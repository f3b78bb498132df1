/** Which way a notched part lies: its notch goes round what it meets. */
import { less } from "../../../../units/rational.ts";
import { INDICES } from "../../../design/space.ts";
import type { Part } from "../../../design.ts";
import { spanOf } from "./boxes.ts";

/** ", its notch round it": where the other reaches into a notch of a part; empty where it does not. */
export function notchRound(part: Part, other: Part): string {
  if (part.turned || other.turned) return "";
  const round = part.features.filter(
    (feature) =>
      feature.kind === "notch" &&
      INDICES.every((axis) => {
        const { low, high } = spanOf(feature, axis);
        return less(other.body.low[axis], high) && less(low, other.body.high[axis]);
      }),
  );
  return round.length === 0 ? "" : `, its ${round.length === 1 ? "notch" : "notches"} round it`;
}
