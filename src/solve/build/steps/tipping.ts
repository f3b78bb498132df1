/** Work that lies, and falls to the side to which it reaches out. */
import type { Length } from "../../../units/length.ts";
import { equal, max, negate, subtract, toNumber } from "../../../units/rational.ts";
import { axisOf, INDICES } from "../../design/space.ts";
import type { Box, Direction } from "../../design.ts";
import { bottomOf, boxOf, lowestOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { centreOf, standingOn } from "./resting.ts";

/** What lies on an end of it only falls to the side that reaches out, where it is propped. `raised`: the work stands on blocks. */
export function tippingTexts(work: Work, ids: readonly string[], up: Direction, raised: boolean): readonly string[] {
  if (ids.length < 2 || standingOn(work, ids, up) !== null) return [];
  const far = farthest(work, ids, up);
  const high = far.map((id) => subtract(bottomOf(boxOf(work.part(id)), up), lowestOf(work, ids, up)));
  // Of what ends at several heights each has its own.
  const props = high.every((each) => equal(each, high[0] as Length))
    ? `props ${high.map(work.print)[0]} ${raised ? "higher than those under the work" : "high"}`
    : "props";
  const under = far.length > 0 ? `set ${props} under the far end of ${definite(work, far)}` : "prop it";
  return [`It does not lie by itself yet: ${under}, or let a second person hold it, until more is on it.`];
}

/** Ids of what ends farthest on the side to which the weight lies beyond what rests on the bench. */
function farthest(work: Work, ids: readonly string[], up: Direction): readonly string[] {
  const axis = axisOf(up);
  const bodies = ids.map((id) => ({ id, body: boxOf(work.part(id)) }));
  const lowest = lowestOf(work, ids, up);
  const feet = bodies.filter(({ body }) => equal(bottomOf(body, up), lowest));
  const weight = centreOf(work, ids);
  const far = INDICES.filter((i) => i !== axis).flatMap((i) =>
    ([1, -1] as const).flatMap((side) => {
      const reach = (body: Box): Length => (side > 0 ? body.high[i] : negate(body.low[i]));
      const out = weight[i] * side - toNumber(feet.map(({ body }) => reach(body)).reduce(max));
      const end = bodies.map(({ body }) => reach(body)).reduce(max);
      return out > 0 ? [{ out, ids: bodies.filter(({ body }) => equal(reach(body), end)).map(({ id }) => id) }] : [];
    }),
  );
  return far.reduce((so, each) => (each.out > so.out ? each : so), { out: 0, ids: [] as string[] }).ids;
}
