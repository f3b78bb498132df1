import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const likeOfGroup = rule<{ readonly name: string }>({
  name: "like-of-group",
  severity: "error",
  message: (a) => `${a.name} is a group, and only a part can be copied with like`,
  help: (a) => `write mirror of: ${a.name} with about:, or copy its parts one by one`,
  explain: `A group can be reflected as a whole (\`mirror of\`), since its parts then keep their places to each other. A copy of a group would stand in the same place.`,
  wrong: stepExample([
    "  right-leg: { like: left-leg",
    "  feet:\n    foot: { like: left-leg, left: 3 }\n  right-leg: { like: feet",
  ]),
  right: stepExample(),
  basis: "the language",
});
