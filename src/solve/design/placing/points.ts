import type { PointDraft } from "../../../parse/draft.ts";
import { add, half, type Rational } from "../../../units/rational.ts";
import type { Point } from "../../design.ts";
import { evaluateLength, type Scope } from "../sizes/evaluate.ts";
import { faceAxis, faceOf, triple } from "../space.ts";
import { faceOfThing, type Reach } from "./read-placing.ts";

/** Where a named point or place is, before any turning of the part named; null when something in it could not be found. */
export function pointOf(draft: PointDraft, scope: Scope, reach: Reach): Point | null {
  const at =
    draft.kind === "place"
      ? draft.place.map((formula) => evaluateLength(formula, scope))
      : triple((axis) => {
          const face = draft.faces.find((each) => faceAxis(each) === axis);
          if (face) return faceOfThing(draft.of, face, reach);
          const [low, high] = [false, true].map((side) => faceOfThing(draft.of, faceOf(axis, side), reach));
          return low && high ? half(add(low, high)) : null;
        });
  const [x, y, z] = at as readonly [Rational | null, Rational | null, Rational | null];
  return x && y && z ? [x, y, z] : null;
}
