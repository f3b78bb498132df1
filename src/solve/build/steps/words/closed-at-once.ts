/** Several joints of one step that close in one push: glue first, then the push, the clamps last. */
import { type Sentence, tells, without } from "../sentence.ts";

const glues = (told: Sentence): boolean => tells(told, "glues") !== null;

export const clampedAt = (told: readonly Sentence[]): number => told.findIndex((each) => tells(each, "clamps"));

/** Clamps come when all is together. */
export function unclamped(told: Sentence): readonly Sentence[] {
  const clamps = tells(told, "clamps");
  if (clamps === null) return [told];
  return clamps.later === null ? [] : [without(told, "clamps", clamps.later)];
}

/** The sentences of each method, in the order in which they are told. */
export function closedAtOnce(methods: readonly (readonly Sentence[])[]): readonly Sentence[] {
  const last = methods.findLastIndex((texts) => clampedAt(texts) >= 0);
  const glued = methods.filter((texts) => texts.some(glues));
  if (glued.length < 2 || !methods.some((texts, i) => i < last && clampedAt(texts) >= 0)) return methods.flat();
  const told = methods.flatMap((texts, i) =>
    texts.flatMap((each) => tells(each, "apart") ?? [each]).flatMap((each) => (i < last ? unclamped(each) : [each])),
  );
  return [...told.filter(glues), ...told.filter((each) => !glues(each))];
}

/** Where the clamps go is told before anything is driven: behind the first sentence that sets them, or at the end. */
export function withClampPlaces(told: readonly Sentence[], places: readonly string[]): readonly Sentence[] {
  const driven = told.findIndex((each) => tells(each, "drives"));
  const at = clampedAt(told);
  return at < 0 || driven < at ? [...told, ...places] : [...told.slice(0, at + 1), ...places, ...told.slice(at + 1)];
}
