/** What the reader chose, and what else there was to choose from. */
import type { Choice, Design } from "../../solve/design.ts";
import type { Rich } from "../typeset/lines.ts";

const named = ({ name }: Choice): string => name.replaceAll("-", " ");
const chosen = ({ option, options }: Choice): string => options.find(({ name }) => name === option)?.words ?? option;

/** "Chosen for this copy: oak (wood); plywood (back)."; the empty text where nothing can be chosen. */
export function madeFor({ choices = [] }: Design): string {
  const all = choices.map((choice) => `${chosen(choice)} (${named(choice)})`);
  return all.length === 0 ? "" : `Chosen for this copy: ${all.join("; ")}.`;
}

/** A line for each choice that has other options. */
export const otherwise = ({ choices = [] }: Design): readonly Rich[] =>
  choices.flatMap((choice): readonly Rich[] => {
    const others = choice.options.filter(({ name }) => name !== choice.option).map(({ words }) => words);
    if (others.length === 0) return [];
    const head = choice.ask === "" ? `${named(choice).replace(/^./u, (first) => first.toUpperCase())}:` : choice.ask;
    return [
      [
        { text: `${head} `, font: "bold" },
        { text: `${chosen(choice)}. It could also be: ${others.join("; ")}.`, font: "regular" },
      ],
    ];
  });
