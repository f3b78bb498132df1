import type { Draft, Reference, SubjectDraft, WishDraft } from "../../../parse/draft.ts";
import type { Part } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import type { Note, Subject, Wish } from "../model/wish.ts";

/** Wishes and notes with the parts that they name; what names none is told by the directory. */
export function wishesOf(
  { order = [], notes = [] }: Draft,
  directory: Directory,
  parts: readonly Pick<Part, "id" | "stock">[],
): { readonly wishes?: readonly Wish[]; readonly notes?: readonly Note[] } {
  const named = (reference: Reference): readonly string[] => {
    const several = directory.knows(reference) ? [] : calledSo(reference.path.join("."), parts);
    return several.length > 0 ? several : (directory.find(reference) ?? []).map(({ id }) => id);
  };
  const partsOf = (references: readonly Reference[]): readonly string[] => [...new Set(references.flatMap(named))];
  const subject = ({ of, ...said }: SubjectDraft): Subject => ({ ...said, parts: of && partsOf([of]) });
  const wish = (draft: WishDraft): Wish => {
    switch (draft.kind) {
      case "before":
        return { ...draft, first: draft.first.map(subject), next: draft.next.map(subject) };
      case "first":
      case "last":
      case "one step":
        return { ...draft, what: draft.what.map(subject) };
      case "dry fit": {
        const { of, ...said } = draft;
        return { ...said, parts: partsOf(of) };
      }
      case "unit":
        return {
          ...{ at: draft.at, kind: "unit", parts: partsOf(draft.of) },
          said: draft.of.map(({ path }) => path.join(".")).join(" and "),
        };
      case "own step":
        return { ...draft, what: subject(draft.what) };
      case "title":
        return { ...draft, step: subject(draft.step) };
    }
  };
  return {
    ...(order.length > 0 && { wishes: order.map(wish) }),
    ...(notes.length > 0 && { notes: notes.map(({ about, ...said }) => ({ ...said, about: subject(about) })) }),
  };
}

/** `legs`: all that is made of a stock of that name, or whose names end in it: `front-left-leg`. */
function calledSo(name: string, parts: readonly Pick<Part, "id" | "stock">[]): readonly string[] {
  const words = [name, name.replace(/s$/, ""), name.replace(/ves$/, "f")];
  const ends = (id: string): boolean =>
    words.some((word) => id === word || id.endsWith(`.${word}`) || id.endsWith(`-${word}`));
  const own = parts.filter(({ id }) => ends(id.replace(/\.\d+$/, "")));
  const all = own.length > 0 ? own : parts.filter(({ stock }) => stock === name);
  return all.map(({ id }) => id);
}
