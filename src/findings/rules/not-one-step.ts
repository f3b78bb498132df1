import { shelfExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";
import { shorten } from "../shorten.ts";

interface Args {
  /** What the plan wishes to be one, as it says it. */
  readonly what: readonly string[];
  /** The title of the step that comes between; or what dries between. */
  readonly between: string;
  readonly because: "step" | "wait";
  /** The parts in hand between. */
  readonly parts: readonly string[];
}

export const notOneStep = rule<Args>({
  name: "not-one-step",
  severity: "error",
  message: ({ what, between, because, parts }) => {
    const all = what.map((each) => shorten(each));
    const those = `${all.slice(0, -1).join(", ")} and ${all.at(-1)} cannot be one step`;
    return because === "step"
      ? `${those}: between them comes “${between}”, with ${nameSome(parts)}`
      : `${those}: with ${nameSome(parts)} there is a wait between them (${between})`;
  },
  label: () => "this wish cannot be carried out",
  help: ({ because }) =>
    because === "step" ? "name what comes between as well, or leave the wish out" : "leave the wish out",
  explain:
    "Steps become one where they can follow each other without anything between: no other work that one of them waits for, and nothing that has to dry. The finding names what is in the way.",
  wrong: shelfExample(["joints:", "order:\n  - { in one step: [saw shelf, tread] }\njoints:"]),
  right: shelfExample(["joints:", "order:\n  - { in one step: [saw shelf, saw tread] }\njoints:"]),
  basis: "the order of work",
});
