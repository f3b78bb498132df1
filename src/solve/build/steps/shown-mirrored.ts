/** Whether what is together in a step is the mirror image of what was in an earlier one, where words do not show it. */
import { toNumber } from "../../../units/rational.ts";
import { featureBox, isSquare } from "../../design/shapes/feature-box.ts";
import { type AxisIndex, INDICES } from "../../design/space.ts";
import type { Box } from "../../design.ts";
import { boxOf } from "./box-of.ts";
import type { StepDraft, Work } from "./draft.ts";
import type { Mirror } from "./likeness.ts";

/** Coordinates are rounded to this before they are compared: 0.1 mm, in units of 1/16 µm. */
const NEAR = 1600;
/** What a rule has marks for lies on no border of that. */
const ASIDE = 0.137;

const SWAPPED: readonly (readonly [AxisIndex, Exclude<Mirror, null>])[] = [
  [0, ["left", "right"]],
  [1, ["front", "back"]],
];

/** The sides that change places; null where it is the same, or another thing. `pairs`: the mark that is told in place of each, by that: each must be where the mirror shows it. */
export function shownMirrored(
  work: Work,
  before: StepDraft,
  now: StepDraft,
  pairs: ReadonlyMap<string, string>,
): Mirror {
  const [one, other] = [idsOf(before), idsOf(now)];
  // What is worked on by itself is turned as it is handiest.
  if (one.length !== other.length || ![before, now].every(puts)) return null;
  const comes = new Set([...before.shows.fresh, ...now.shows.fresh]);
  const told = new Set(pairs.values());
  const named = (id: string): string => {
    const { mark } = work.line(id);
    const as = one.includes(id) ? pairs.get(mark) : told.has(mark) ? mark : undefined;
    return `${comes.has(id) ? "new" : ""} ${as ?? ""}`;
  };
  const plain = described(work, other, null, named);
  if (described(work, one, null, named) === plain) return null;
  return SWAPPED.find(([axis]) => described(work, one, axis, named) === plain)?.[1] ?? null;
}

const puts = ({ actions }: StepDraft): boolean => actions.some((action) => action.do === "add");

const idsOf = ({ shows: { fresh, present } }: StepDraft): readonly string[] => [...new Set([...fresh, ...present])];

/**
 * All boxes of the parts and of what is cut into them, from a corner of the whole; `mirrored`: that axis turned about; `named`: what
 * is told of each.
 */
function described(
  work: Work,
  ids: readonly string[],
  mirrored: AxisIndex | null,
  named: (id: string) => string,
): string {
  const parts = ids.map(work.part);
  const bodies = parts.map(boxOf);
  const corner = (i: AxisIndex): number =>
    i === mirrored
      ? Math.max(...bodies.map(({ high }) => toNumber(high[i])))
      : Math.min(...bodies.map(({ low }) => toNumber(low[i])));
  const from = INDICES.map(corner);
  const told = ({ low, high }: Box): string =>
    INDICES.flatMap((i) => {
      const ends = [low, high].map((end) => toNumber(end[i]) - (from[i] as number));
      return i === mirrored ? ends.map((end) => -end).toReversed() : ends;
    })
      .map((value) => Math.round(value / NEAR + ASIDE))
      .join();
  return parts
    .map((part, k) => {
      const cuts = part.features.flatMap((each) =>
        "size" in each && isSquare(each) ? [`${each.kind} ${told(featureBox(each))}`] : [],
      );
      return [named(part.id), told(bodies[k] as Box), ...cuts.toSorted()].join(";");
    })
    .toSorted()
    .join("|");
}
