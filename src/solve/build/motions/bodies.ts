/** What may strike or be struck, and where it is on its way. In doubles: this only judges. */
import { cylinder, type Solid, type Vec } from "../../../geometry/index.ts";
import { times } from "../../../geometry/vec.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Fastener, Hardware, Part } from "../../design.ts";
import { solidOfHull } from "../order/pegs.ts";

/** A part with the heads that stand out of it, or a piece of hardware. */
export interface Body {
  readonly id: string;
  readonly solids: readonly Solid[];
}

export function bodiesOf(
  parts: readonly Part[],
  hardware: readonly Hardware[],
  fasteners: readonly Fastener[],
): readonly Body[] {
  return [
    ...parts.map(({ id, solid }) => ({ id, solids: [solid, ...headsOf(id, fasteners)] })),
    ...hardware.map(({ id, solid }) => ({ id, solids: [solid] })),
  ];
}

const headsOf = (part: string, fasteners: readonly Fastener[]): readonly Solid[] =>
  fasteners.flatMap(({ head, direction, through }) => {
    const high = toNumber(head.height);
    if (head.seat !== "proud" || through[0] !== part || high <= 0) return [];
    const at = head.at.map(toNumber) as unknown as Vec;
    return [solidOfHull(cylinder(at, times(direction, -1), toNumber(head.diameter) / 2, high))];
  });
