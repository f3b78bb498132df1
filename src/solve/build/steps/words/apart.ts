/** How far apart stand what is driven without holes that would show it. */
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { compare, equal, less, subtract, ZERO } from "../../../../units/rational.ts";
import { roundTo } from "../../../../units/round.ts";
import { INDICES } from "../../../design/space.ts";
import type { Fastener, FastenerKind } from "../../../design.ts";
import type { Work } from "../draft.ts";

const PLAIN: ReadonlySet<FastenerKind> = new Set(["nail", "brad", "staple"]);

/** At the end of a measure. */
const UNIT = /[ \u202f](?:in|mm)$/u;

/** ", about 4 1/2 in apart" or ", 4 to 5 in apart"; nothing of what has holes, or of one in each joint. */
export function apartText({ design, plan, print }: Work, list: readonly Fastener[]): string {
  const bored = new Set(plan.holes.flatMap(({ for: id }) => id ?? []));
  if (!list.every(({ id, kind }) => PLAIN.has(kind) && !bored.has(id))) return "";
  const step = design.units === "inch" ? inches(1, 2) : millimetres(10);
  const joints = [...new Set(list.map(({ joint }) => joint))];
  const gaps = joints
    .flatMap((joint) => gapsOf(list.filter((each) => each.joint === joint)))
    .map((gap) => roundTo(gap, step))
    .filter((gap) => less(ZERO, gap))
    .toSorted(compare);
  const [least, most] = [gaps[0], gaps.at(-1)];
  if (!least || !most) return "";
  return equal(least, most)
    ? `, about ${print(least)} apart`
    : `, ${print(least).replace(UNIT, "")} to ${print(most)} apart`;
}

/** From one to the next along the way in which they spread farthest. */
function gapsOf(list: readonly Fastener[]): readonly Length[] {
  const spans = INDICES.map((i) => {
    const at = list.map(({ head }) => head.at[i]).toSorted(compare);
    return { at, long: subtract(at.at(-1) as Length, at[0] as Length) };
  });
  const { at } = spans.reduce((best, each) => (compare(each.long, best.long) > 0 ? each : best));
  return at.slice(1).map((place, i) => subtract(place, at[i] as Length));
}
