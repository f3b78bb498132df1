/** What a part is notched round: it comes down over posts that stand. */
import { less } from "../../units/index.ts";
import { INDICES, indexOf } from "../design/space.ts";
import type { Feature, Part } from "../design.ts";
import { type BoxFeature, spanOf } from "./steps/words/boxes.ts";

const isNotch = (feature: Feature): feature is BoxFeature => feature.kind === "notch" && "size" in feature;

/** The notch of a part that another goes right through, in the direction of its thickness; none where it goes through none. */
export function notchFor(part: Part, other: Part): BoxFeature | undefined {
  if (part.turned || other.turned) return undefined;
  const thick = indexOf(part.axes.thickness);
  const through =
    !less(part.body.low[thick], other.body.low[thick]) && !less(other.body.high[thick], part.body.high[thick]);
  return through
    ? part.features.filter(isNotch).find((notch) =>
        INDICES.every((axis) => {
          if (axis === thick) return true;
          const { low, high } = spanOf(notch, axis);
          return less(low, other.body.high[axis]) && less(other.body.low[axis], high);
        }),
      )
    : undefined;
}

/** Ids of those of a body that go through notches of a part, where two do at least: no figures fit the distances between them as they came out. */
export function notchedRound(part: Part, body: readonly Part[]): readonly string[] {
  const round = body.filter((other) => notchFor(part, other) !== undefined);
  return new Set(round.map((other) => notchFor(part, other))).size > 1 ? round.map(({ id }) => id) : [];
}
