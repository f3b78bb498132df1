import type { Formula, PlaceDraft } from "../../../parse/draft.ts";
import type { Entry } from "../expand/entry.ts";
import type { About, Link } from "../sizes/cells.ts";
import { type AxisIndex, axisAt, faceAxis } from "../space.ts";

/** Whose place it is in a direction, in the maker's words, and what the maker says there that rests on something else. */
export function placeOf({ id, path, at, draft }: Entry, axis: AxisIndex): About {
  const thing = draft.made ? draft.made.join(".") : path.length > 1 ? path.slice(0, -1).join(".") : id;
  const said = draft.placing.filter((place) => isIn(place, axis));
  const links = said.flatMap((place): readonly Link[] =>
    place.word === "against" && !place.offset ? [{ word: place.key, of: thing, at: place.at }] : [],
  );
  // What an assembly writes itself stands where the assembly or one of its settings does.
  const formulas = said.flatMap((place): readonly Link[] =>
    draft.made && place.word === "face" && place.value.at.start !== at.start && rests(place.value)
      ? [{ word: place.key, of: thing, at: place.value.at }]
      : [],
  );
  return { thing: draft.made ? thing : id, axis: axisAt(axis), links, formulas };
}

const isIn = (place: PlaceDraft, axis: AxisIndex): boolean =>
  (place.word === "face" || place.word === "against") && faceAxis(place.face) === axis;

/** Whether a formula names something. */
const rests = (formula: Formula): boolean => {
  switch (formula.kind) {
    case "name":
      return true;
    case "negate":
      return rests(formula.of);
    case "operation":
      return rests(formula.left) || rests(formula.right);
    case "call":
      return formula.of.some(rests);
    default:
      return false;
  }
};
