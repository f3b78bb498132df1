import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { WAYS } from "../ways.ts";

export const circle = rule<{
  readonly names: readonly string[];
  /** The direction in which they do, where it is one. */
  readonly axis?: "across" | "deep" | "up" | null;
  /** Words such as `on` and `under` by which things in it take their place from each other, each with what says it. */
  readonly links: readonly { readonly word: string; readonly of: string }[];
}>({
  name: "circle",
  severity: "error",
  message: (a) => `these need each other: ${[...a.names, a.names[0]].join(" → ")}${a.axis ? `, ${WAYS[a.axis]}` : ""}`,
  label: () => "the circle begins here",
  help: (a) => {
    const said = [...new Set(a.links.map(({ word, of }) => `\`${word}\` of ${of}`))];
    if (said.length > 1)
      return `leave one of these out: ${said.slice(0, -1).join(", ")} or ${said.at(-1)}; of two that stand on one another, one says so`;
    if (said.length === 1) return `leave out the ${said[0]}, or give one of them its own measure`;
    return `give one of them its own measure, for instance ${a.names[0]}: 24`;
  },
  explain: `A size or position is worked out from others. Here the chain comes back to where it began, so there is nothing to start from.

Write one of them as a plain measure, or work it out from something outside the circle.`,
  wrong: stepExample(["long: 24", "long: half + half\n  half: long / 2"]),
  right: stepExample(),
  basis: "the language",
});
