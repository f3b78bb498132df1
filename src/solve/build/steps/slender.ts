/** Work of which two heavy ends hang together by one slender part: who turns it at one end bends the joints at the other. */
import { less, max, multiply, rational, toNumber } from "../../../units/rational.ts";
import { indexOf, middle } from "../../design/space.ts";
import type { Joint } from "../../design.ts";
import { components, LOOSE, linksOf } from "../order/links.ts";
import { called, type Work } from "./draft.ts";

/** So many times as long as it is wide is slender, and so much at its end is heavy, kg. Common practice, no source. */
const SLENDER = rational(12);
const HEAVY = 3;

/** The caution for who turns such work over; nothing where it is stiff. */
export function slenderCautions(work: Work, ids: readonly string[]): readonly string[] {
  const slender = ids.find((id) => {
    const { length, width, thickness } = work.part(id);
    return less(multiply(max(width, thickness), SLENDER), length) && isBetween(work, ids, id);
  });
  return slender === undefined
    ? []
    : [
        `The work hangs together by the ${called(work, slender)} alone: turn it with a second person, one at either end, so that nothing bends its joints.`,
      ];
}

/** Whether what is joined to its one end and to its other holds together by nothing else. */
function isBetween({ design, mass, part }: Work, ids: readonly string[], id: string): boolean {
  const there = new Set(ids);
  const parts = design.parts.filter((each) => there.has(each.id) && each.id !== id);
  const joints = design.joints.filter(
    ({ kind, parts: own }) => !LOOSE.includes(kind) && own.every((each) => there.has(each)),
  );
  const bodies = components(
    parts.map((_, i) => i),
    linksOf({ parts, joints }),
  );
  const { body, axes } = part(id);
  const along = indexOf(axes.length);
  const half = toNumber(middle(body, along));
  const isHigh = ({ contact }: Joint): boolean =>
    contact.reduce((so, { centre, area }) => so + (centre[along] - half) * area, 0) > 0;
  const ends = bodies.flatMap((places) => {
    const own = new Set(places.map((i) => parts[i]?.id ?? ""));
    const met = joints.filter((joint) => joint.parts.includes(id) && joint.parts.some((each) => own.has(each)));
    const sides = new Set(met.map(isHigh));
    return sides.size === 1 && [...own].reduce((so, each) => so + mass(each), 0) > HEAVY ? [...sides] : [];
  });
  return new Set(ends).size === 2;
}
