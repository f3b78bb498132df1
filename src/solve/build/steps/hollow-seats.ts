/** An edge that is sawn hollow gives the jaw of a clamp no seat. Common practice, no source. */
import { add, less, multiply, rational } from "../../../units/rational.ts";
import { axisOf, faceAxis, isHigh, otherAxes } from "../../design/space.ts";
import type { Face, Part } from "../../design.ts";
import type { ClampAt, ClampEnd } from "./clamp-ends.ts";
import { listed, series, type Work } from "./draft.ts";
import { groupedBy } from "./wishes/own-key.ts";

interface Clamp {
  readonly place: Pick<ClampAt, "axis" | "at">;
  readonly ends: readonly ClampEnd[];
}

export function hollowTexts(work: Work, clamps: readonly Clamp[]): readonly string[] {
  const hollow = clamps.flatMap(({ place, ends }) =>
    ends.filter(({ part, side }) => isHollow(work.part(part), side, place)),
  );
  return groupedBy(hollow, ({ part, side }) => `${side} ${work.line(part).mark}`).map((own) => {
    const ids = [...new Set(own.map(({ part }) => part))];
    const [is, it] = ids.length === 1 ? ["is", "it"] : ["are", "them"];
    return `On ${series([...new Set(own.map(({ side }) => `the ${side}`))])} ${listed(work, ids)} ${is} hollow where clamps press, and no jaw has a seat there: lay what was sawn out of ${it} back in, on strips of card, or put blocks between that are sawn to the same curve.`;
  });
}

/** Whether an arch is cut into that side where a clamp presses. */
function isHollow({ features, turned }: Part, side: Face, { axis, at }: Clamp["place"]): boolean {
  if (turned) return false;
  return features.some((feature) => {
    if (feature.kind !== "arch") return false;
    const { origin, along, size, into } = feature;
    if (axisOf(into) !== faceAxis(side) || into[faceAxis(side)] > 0 === isHigh(side)) return false;
    const run = axisOf(along);
    const here = at[otherAxes(axis).indexOf(run)];
    const end = add(origin[run], multiply(size[0], rational(along[run])));
    return here !== undefined && less(here, origin[run]) !== less(here, end);
  });
}
