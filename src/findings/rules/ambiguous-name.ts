import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const ambiguousName = rule<{ readonly name: string; readonly candidates: readonly string[] }>({
  name: "ambiguous-name",
  severity: "error",
  message: (a) => `${a.name} fits more than one: ${a.candidates.join(", ")}`,
  label: () => "which one?",
  help: (a) => `write the longer name, for instance ${a.candidates[0]}`,
  explain: `A short name works where it is the only one that fits. Nothing is picked silently, since the nearest is not always the one that was meant.`,
  wrong: stepExample(
    [
      "  left-leg: {",
      "  near:\n    leg: { made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }\n  far:\n    leg: { made of: lumber, as: upright, facing: left, right: long, front: 0, bottom: 0, under: tread }\n  left-leg: {",
    ],
    ["to: [left-leg, right-leg]", "to: leg"],
  ),
  right: stepExample(),
  basis: "the language",
});
