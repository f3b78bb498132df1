import type { Face, PartDraft, RepeatDraft, ShapeDraft } from "../draft.ts";
import type { Kind, Where } from "../kinds/kind.ts";
import { axis, pair, reference } from "../kinds/places.ts";
import { may, type Settings, settings } from "../kinds/settings.ts";
import { formula, text, word } from "../kinds/simple.ts";
import { placesOf, placing } from "./placing.ts";
import { shapes } from "./shapes.ts";
import { slant, slantOf } from "./slant.ts";

const sides: Kind<Face> = word(["left", "right", "front", "back"]);

const keys = {
  "made of": may(text(100), "The stock that it is cut from, by its name under `stock`."),
  like: may(reference, "Another part whose settings it takes over, but for those it says itself."),
  "mirror of": may(reference, "A part or group that this one is the mirror image of."),
  about: may(axis, "The direction that the mirror turns round: across swaps left and right."),
  as: may(word(["lying flat", "on edge", "upright"]), "How the board is turned: thickness, width or length up."),
  facing: may(sides, "Where its broad side looks."),
  grain: may(axis, "The direction of the grain."),
  ...placing,
  ...slant,
  count: may(formula, "How many of it there are, in a row."),
  spread: may(pair, "What the row lies between: deep between front-rail and back-rail."),
  gaps: may(word(["inside", "both ends"]), "Where the equal gaps are: between the parts, or also at both ends."),
  gap: may(formula, "A gap of fixed size; the row is centred."),
  every: may(formula, "From centre to centre."),
  called: may(text(60), "The name that the plan prints."),
  "good face": may(text(60), "The face that is to be seen.", "show face"),
  ...shapes,
};

/** What the language can say of a part, and this version does not read. */
const later = [
  ...["in from each end", "from one strip"],
  ...["alike", "cut", "when", "edge banding", "bands", "finish", "note", "boards", "join"],
];

export const part = settings("a part", keys, later);
export type PartSettings = Settings<typeof keys>;

/** A part without `made of` has to take it over from another. */
export function partDraft(
  { said }: PartSettings,
  path: readonly string[],
  name: PartDraft["at"],
  where: Where,
): PartDraft {
  const { as, facing, grain, called, like, about } = said;
  const repeat = repeatDraft(said);
  return {
    kind: "part",
    path,
    at: name,
    ...(said["made of"] && { madeOf: said["made of"] }),
    ...(like && { like: like.value }),
    ...(said["mirror of"] && { mirrorOf: said["mirror of"].value }),
    ...(about && { about }),
    ...(as && { attitude: as }),
    ...(facing && { facing }),
    ...(grain && { grain }),
    placing: placesOf(said),
    ...(repeat && { repeat }),
    shapes: shapesOf(said),
    ...slantOf(said, where),
    ...(called && { called }),
    ...(said["good face"] && { goodFace: said["good face"] }),
  };
}

function repeatDraft(said: PartSettings["said"]): RepeatDraft | undefined {
  const { count, spread, gaps, gap, every } = said;
  if (count === undefined) return undefined;
  return {
    at: count.at,
    count: count.value,
    ...(spread && { spread: { ...spread.value, at: spread.at } }),
    ...(gaps && { gaps }),
    ...(gap && { gap: gap.value }),
    ...(every && { every: every.value }),
  };
}

const shapesOf = (said: PartSettings["said"]): readonly ShapeDraft[] =>
  Object.keys(shapes).flatMap((key) => said[key as keyof typeof shapes]?.value ?? []);
