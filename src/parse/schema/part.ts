import type { Face, PartDraft, RepeatDraft, ShapeDraft } from "../draft.ts";
import type { Kind, Where } from "../kinds/kind.ts";
import { axis, pair, reference } from "../kinds/places.ts";
import { may, type Settings, settings } from "../kinds/settings.ts";
import { formula, text, word } from "../kinds/simple.ts";
import { making } from "./making.ts";
import { placesOf, placing } from "./placing.ts";
import { shapes } from "./shapes.ts";
import { slant, slantOf } from "./slant.ts";
import { carries } from "./use.ts";

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
  rounded: may(
    word(["down", "up", "nearest"]),
    "Which way its size goes to the next mark: down, or to the nearest where it is said outright, if nothing is said.",
  ),
  ...slant,
  count: may(formula, "How many of it there are, in a row."),
  spread: may(pair, "What the row lies between: deep between front-rail and back-rail."),
  gaps: may(word(["inside", "both ends"]), "Where the equal gaps are: between the parts, or also at both ends."),
  gap: may(formula, "A gap of fixed size; the row is centred."),
  every: may(formula, "From centre to centre."),
  called: may(text(60), "The name that the plan prints."),
  carries: may(carries, "What lies on it: books, jars, shoes, clothes, nothing, or a mass such as 40 lb."),
  ...making,
  ...shapes,
};

/** What the language can say of a part, and this version does not read. */
const later = [...["in from each end", "when", "finish", "note", "join"]];

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
    ...(said.rounded && { rounded: said.rounded }),
    placing: placesOf(said),
    ...(repeat && { repeat }),
    shapes: shapesOf(said),
    ...slantOf(said, where),
    ...(called && { called }),
    ...(said.carries && { carries: said.carries }),
    ...makingOf(said),
  };
}

const makingOf = (said: PartSettings["said"]) => ({
  ...(said["good face"] && { goodFace: said["good face"] }),
  ...(said.boards && { boards: said.boards }),
  ...(said.layers && { layers: said.layers }),
  ...(said["edge banding"] && { banding: said["edge banding"].value }),
  ...(said["from one strip"] && { strip: said["from one strip"] }),
  ...(said.alike && { alike: said.alike.value }),
  ...(said.cut && { cut: said.cut.value }),
});

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
