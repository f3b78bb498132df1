import type { Axis, FittingDraft, Formula } from "../draft.ts";
import { list, made } from "../kinds/combine.ts";
import { AXES, axis, face, reference, references } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, text, yesNo } from "../kinds/simple.ts";

const fitting = settings("a fitting", {
  fit: need(text(100), "Which of the plan's hardware it is, or its kind.", "fix"),
  to: need(references, "The part or parts that it is fixed to.", "on"),
  against: may(reference, "The part that it works against: the door that a catch holds.", "with"),
  face: may(face, "The face that it goes on."),
  across: may(formula, "Where its middle is from left to right: door.right - 1."),
  deep: may(formula, "Where its middle is from front to back."),
  up: may(formula, "Where its middle is in height: door.bottom + 3."),
  along: may(axis, "Which way its long side goes: along the longer direction of the face if nothing is said."),
  through: may(references, "Parts that its screw passes before it reaches this one."),
  count: may(formula, "How many, in a row along the face; of wall screws one for each stud, if nothing is said."),
  sunk: may(yesNo, "Whether the head of a wall screw lies sunk in the wood: no if nothing is said."),
});

const fittingDraft = made(fitting, ({ at, said }): FittingDraft => {
  const place: [Axis, Formula][] = AXES.flatMap((axis): [Axis, Formula][] => {
    const field = said[axis];
    return field ? [[axis, field.value]] : [];
  });
  return {
    ...{ at, fit: said.fit, to: said.to.value, place: Object.fromEntries(place) },
    ...(said.against && { against: said.against.value }),
    ...(said.face && { face: said.face }),
    ...(said.along && { along: said.along }),
    ...(said.through && { through: said.through.value }),
    ...(said.count && { count: said.count.value }),
    ...(said.sunk && { sunk: said.sunk }),
  };
});

/** Knobs, catches, feet: what is fixed to a part. */
export const fittings = list(fittingDraft, "a list of fittings, each beginning with a dash");
