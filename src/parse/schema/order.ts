/** The maker's wishes about the order of work, and words of the maker's own for the reader. */
import type { NoteDraft, SubjectDraft, WishDraft } from "../draft.ts";
import { list, made, oneOrList } from "../kinds/combine.ts";
import { type Kind, tellWrong } from "../kinds/kind.ts";
import { references } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { text } from "../kinds/simple.ts";
import { subject } from "./subject.ts";

const subjects: Kind<readonly SubjectDraft[]> = oneOrList(subject);

const wish = settings("a wish", {
  this: may(subjects, "What comes before or after something: a part, or work on it."),
  before: may(subjects, "What `this` comes before."),
  after: may(subjects, "What `this` comes after."),
  first: may(subjects, "What is done as early as it can be."),
  last: may(subjects, "What is done as late as it can be."),
  "dry fit": may(references, "Parts or a group that are put together without glue first."),
  check: may(text(100), "What is looked at in the dry fit: diagonals."),
  "build as one": may(references, "Parts or a group that are put together by themselves before they go to the rest."),
  "in one step": may(list(subject), "Steps that become one: [tapers in legs, chamfers in legs]."),
  "in its own step": may(subject, "A part, or work, that gets a step of its own where others share one with it."),
  step: may(subject, "The step that gets a title of your own."),
  "call it": may(text(100), "That title, also of the one step that several become."),
});

type Said = Parameters<Parameters<typeof made<NonNullable<ReturnType<typeof wish.read>>, WishDraft>>[1]>[0];

function wishOf({ at, said }: Said): WishDraft | undefined {
  const here = { at };
  if (said.this && said.before) return { ...here, kind: "before", first: said.this.value, next: said.before.value };
  if (said.this && said.after) return { ...here, kind: "before", first: said.after.value, next: said.this.value };
  if (said.first) return { ...here, kind: "first", what: said.first.value };
  if (said.last) return { ...here, kind: "last", what: said.last.value };
  if (said["dry fit"])
    return { ...here, kind: "dry fit", of: said["dry fit"].value, ...(said.check && { check: said.check.value }) };
  if (said["build as one"]) return { ...here, kind: "unit", of: said["build as one"].value };
  const several = said["in one step"]?.value;
  if (several && several.length > 1)
    return { ...here, kind: "one step", what: several, ...(said["call it"] && { title: said["call it"].value }) };
  if (said["in its own step"]) return { ...here, kind: "own step", what: said["in its own step"].value };
  if (said.step && said["call it"])
    return { ...here, kind: "title", step: said.step.value, title: said["call it"].value };
  return undefined;
}

const ONE =
  "`this` with `before` or `after`, `first`, `last`, `dry fit`, `build as one`, `in one step` with two or more, `in its own step`, or `step` with `call it`";

export const order: Kind<readonly WishDraft[]> = list(
  made(wish, (value, node, where) => wishOf(value) ?? tellWrong(where, node, ONE)),
  "a list of wishes, each beginning with a dash",
);

const note = settings("a note", {
  at: need(subject, "The part, or the work on it, in whose step it is printed."),
  say: may(text(500), "What the reader should know, in your words."),
  tip: may(text(500), "What makes it easier."),
  caution: may(text(500), "What can go wrong or hurt."),
});

export const notes: Kind<readonly NoteDraft[]> = list(
  made(note, ({ said }, node, where): NoteDraft | undefined => {
    const { at, say, tip, caution } = said;
    if (!say && !tip && !caution) return tellWrong(where, node, "`say`, `tip` or `caution`");
    const words = {
      ...(say && { say: say.value }),
      ...(tip && { tip: tip.value }),
      ...(caution && { caution: caution.value }),
    };
    return { about: at.value, ...words };
  }),
  "a list of notes, each beginning with a dash",
);
