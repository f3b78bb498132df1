import { choiceUnknown } from "../../findings/rules/choice-unknown.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import type { Span } from "../../findings/span.ts";
import { nearest } from "../../findings/suggest.ts";
import type { ChoiceDraft, OptionDraft } from "../draft.ts";
import { byForm, list, made } from "../kinds/combine.ts";
import { type Named, named } from "../kinds/named.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { text } from "../kinds/simple.ts";
import { LIMITS } from "../limits.ts";
import { normaliseName } from "../names.ts";

const listed = made(list(text(60), "a list of options"), (all): readonly OptionDraft[] =>
  all.map((words) => ({ name: normaliseName(words), words })),
);
/** Any name: an option is never named in a formula. */
const described = made(
  named(text(200), "option", (name) => name.length > 0),
  (all): readonly OptionDraft[] => all.map(({ name, value }) => ({ name, words: value })),
);

const choice = settings("a choice", {
  ask: may(text(300), "The question that the reader answers.", "question"),
  options: need(
    byForm({ list: listed, map: described }),
    "What may be chosen, by name, with words for each if you like.",
  ),
  default: may(text(60), "The option that is taken when nothing is said; the first if this is missing."),
  mirror: may(text(60), "The option under which the whole piece is mirrored from left to right."),
});

type Read = NonNullable<ReturnType<typeof choice.read>>;

/** What a reader may choose. */
export const choices = made(named(choice, "choice"), (all, _node, where): readonly ChoiceDraft[] => {
  const within = <T>(at: Span, things: readonly T[], limit: (typeof LIMITS)["choices" | "options"]): readonly T[] => {
    if (things.length > limit.limit) where.findings.push(tooMuch(at, { count: things.length, ...limit }));
    return things.slice(0, limit.limit);
  };
  return within(where.at, all, LIMITS.choices).map(({ name, at, value: { said } }: Named<Read>) => {
    const options = within<OptionDraft>(said.options.at, said.options.value, LIMITS.options);
    const known = options.map((option: OptionDraft) => option.name);
    for (const field of [said.default, said.mirror])
      if (field !== undefined && !known.includes(normaliseName(field.value)))
        where.findings.push(
          choiceUnknown(field.at, { name: field.value, of: name, near: nearest(field.value, known), known }),
        );
    return {
      name,
      at,
      ...(said.ask && { ask: said.ask }),
      options,
      default: said.default ? normaliseName(said.default.value) : (known[0] ?? ""),
      ...(said.mirror && { mirror: normaliseName(said.mirror.value) }),
    };
  });
});
