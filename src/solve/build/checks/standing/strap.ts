/** Where a strap to the wall would hold, as a line of a plan. */
import type { Part } from "../../../design.ts";
import type { Checked } from "../check.ts";
import { isFlat } from "../wood/shelf.ts";
import { around } from "./weight-and-feet.ts";

/** What a strap is screwed to is at least as thick as this, and ends so near to the back; mm. */
const [THICK, NEAR] = [12, 13];

/** A rail, an apron or a post within this of the top, and so broad, holds a strap on its back, where nobody sees it; mm. */
const [HIGH, BROAD] = [150, 40];

/** On the back of a rail or post that is broad and high enough; else on top of what lies highest, an inch in from its back, where its screws keep clear of a rabbet; else high on what stands at the back. */
export function strapLine({ design }: Pick<Checked, "design">): string {
  const bounds = design.parts.map((part) => ({ part, ...around([part.solid]) }));
  const back = Math.max(...bounds.map(({ high }) => high[1]));
  const able = bounds.filter(
    ({ low, high }) =>
      back - high[1] <= NEAR && Math.min(...([0, 1, 2] as const).map((i) => high[i] - low[i])) >= THICK,
  );
  const top = Math.max(...bounds.map(({ high }) => high[2]));
  const hidden = able.filter(
    ({ part, low, high }) =>
      !isFlat(part) && top - high[2] <= HIGH && Math.min(high[0] - low[0], high[2] - low[2]) >= BROAD,
  );
  const [best] = (hidden.length > 0 ? hidden : able.length > 0 ? able : bounds).toSorted(
    (a, b) =>
      b.high[2] - a.high[2] || Number(isFlat(b.part)) - Number(isFlat(a.part)) || (a.part.id < b.part.id ? -1 : 1),
  );
  return best ? `fittings: - { fit: wall strap, to: ${best.part.id}, ${placeOn(best.part, design.units)} }` : "";
}

function placeOn(part: Part, units: "inch" | "mm"): string {
  const [near, low] = units === "inch" ? ["1", "2"] : ["25", "50"];
  return isFlat(part) ? `face: top, deep: ${part.id}.back - ${near}` : `face: back, up: ${part.id}.top - ${low}`;
}
