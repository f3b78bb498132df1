import type { PartDraft, PlaceDraft } from "../../../parse/draft.ts";
import { type AxisIndex, faceAxis, indexOf } from "../space.ts";

/** The direction that a statement of place fixes a face or the middle in, where it can be told without numbers. */
export function placedAxis(place: PlaceDraft): AxisIndex | null {
  switch (place.word) {
    case "face":
    case "against":
      return faceAxis(place.face);
    case "between":
    case "centred":
    case "middle":
      return place.axis === undefined ? null : indexOf(place.axis);
    default:
      return null;
  }
}

/**
 * `part` with everything that it does not say taken from `model`. What it says about a direction replaces the model's places in
 * that direction: a copy that gives its `back` does not keep the model's `front`. Extents stay, unless both faces are given anew.
 */
export function fillFrom(model: PartDraft, part: PartDraft): PartDraft {
  const keys = new Set(part.placing.map((p) => p.key));
  const placed = part.placing.map(placedAxis).filter((axis) => axis !== null);
  const fixed = new Set(placed.filter((axis, i) => placed.indexOf(axis) !== i));
  const kept = model.placing.filter((place) => {
    if (keys.has(place.key)) return false;
    if (place.word === "extent") return !fixed.has(indexOf(place.axis));
    const axis = placedAxis(place);
    return axis === null || !placed.includes(axis);
  });
  const { like: _, ...own } = part;
  const { path: _path, at: _at, mirrorOf: _mirrorOf, about: _about, called: _called, ...rest } = model;
  return {
    ...rest,
    ...own,
    placing: [...kept, ...part.placing],
    shapes: part.shapes.length > 0 ? part.shapes : model.shapes,
  };
}
