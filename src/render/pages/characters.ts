/** Texts of the plan that the typeface cannot print. */
import type { Finding } from "../../findings/finding.ts";
import { characterNotInType } from "../../findings/rules/character-not-in-type.ts";
import { shorten } from "../../findings/shorten.ts";
import type { Span } from "../../findings/span.ts";
import type { Build } from "../../solve/build.ts";
import { missingCharacters } from "../typeset/measure.ts";

/** The words about the whole piece are not followed to their lines. */
const START: Span = { start: 0, end: 0, line: 1, column: 1 };

/** A warning for each text, with the characters that are missing. */
export function unprintable({ design, parts }: Build, buyer = ""): Finding[] {
  const {
    title,
    subtitle,
    by,
    summary,
    edition,
    stock,
    choices = [],
    credits = [],
    rights = "",
    support = "",
  } = design;
  const texts: (readonly [string, string, Span])[] = [
    ["the title", title, START],
    ["the subtitle", subtitle, START],
    ["the name of the maker", by, START],
    ["the summary", summary, START],
    ["the edition", edition, START],
    ["the credits", credits.join(" "), START],
    ["the rights", rights, START],
    ["the support", support, START],
    ["the name after --for", buyer, START],
    ...choices.flatMap(({ name, ask, options }) =>
      [name, ask, ...options.map(({ words }) => words)].map(
        (text) => [`the choice \`${shorten(name)}\``, text, START] as const,
      ),
    ),
    ...stock.map(({ name, label, at }) => [`the stock \`${shorten(name)}\``, label, at] as const),
    ...parts.map(({ id, name, at }) => [`the part \`${shorten(id)}\``, name, at] as const),
  ];
  return texts.flatMap(([what, text, at]) => {
    const characters = missingCharacters(text);
    return characters.length === 0 ? [] : [characterNotInType(at, { what, characters })];
  });
}
