import type { ChoiceDraft } from "../../parse/draft.ts";
import type { Combination } from "./combinations.ts";

/**
 * Under which options something appears, as short as it can be said: options of one choice that are enough, else of two, else the first
 * combination in which it does. Several options of a choice are joined by "or".
 */
export function conditionOf(
  appears: ReadonlySet<Combination>,
  all: readonly Combination[],
  choices: readonly ChoiceDraft[],
): ReadonlyMap<string, string> {
  const enough = (wanted: readonly (readonly [string, string])[]): boolean => {
    const meant = all.filter((each) => wanted.every(([name, option]) => each.get(name) === option));
    return meant.length > 0 && meant.every((each) => appears.has(each));
  };
  for (const { name, options } of choices) {
    const own = options.filter((option) => enough([[name, option.name]]));
    if (own.length > 0) return new Map([[name, own.map((option) => option.name).join(" or ")]]);
  }
  for (const [first, ...others] of choices.map((_, i) => choices.slice(i)))
    for (const second of others)
      for (const { name: one } of first?.options ?? []) {
        const own = second.options.filter(
          (two) =>
            first &&
            enough([
              [first.name, one],
              [second.name, two.name],
            ]),
        );
        if (first && own.length > 0)
          return new Map([
            [first.name, one],
            [second.name, own.map((two) => two.name).join(" or ")],
          ]);
      }
  return [...appears][0] ?? new Map();
}
