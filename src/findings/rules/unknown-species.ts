import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { orList } from "../suggest.ts";

export const unknownSpecies = rule<{ readonly wood: string; readonly near: readonly string[] }>({
  name: "unknown-species",
  severity: "warning",
  message: (a) => `no wood called \`${a.wood}\` is known here`,
  label: () => "what wood is this?",
  why: () => "its weight is taken to be that of a usual wood, and how much it moves with the seasons is not known",
  help: (a) => {
    const words = orList(a.near);
    return words === undefined ? undefined : `write ${words}`;
  },
  explain:
    "The species tells how heavy a piece is and how much its parts swell and shrink. A wood that is not in the table may be used; what depends on it is then left out or taken from a usual wood.",
  wrong: stepExample(["wood: spruce", "wood: spruse"]),
  right: stepExample(),
  basis: "the language",
});
