/** Work that lies, and falls to the side to which it reaches out. */
import type { Length } from "../../../units/length.ts";
import { equal, max, negate, toNumber } from "../../../units/rational.ts";
import { axisOf, INDICES } from "../../design/space.ts";
import type { Box, Direction } from "../../design.ts";
import { bottomOf, boxOf, lowestOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { centreOf, standingOn } from "./resting.ts";

/** What lies on an end of it only falls to the side that reaches out, where it is propped. */
export function tippingTexts(work: Work, ids: readonly string[], up: Direction): readonly string[] {
  if (ids.length < 3 || standingOn(work, ids, up) !== null) return [];
  const far = farthest(work, ids, up);
  const under = far.length > 0 ? `set props under the far end of ${definite(work, far)}` : "prop it";
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
