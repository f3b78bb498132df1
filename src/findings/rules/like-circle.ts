import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const likeCircle = rule<{ readonly names: readonly string[] }>({
  name: "like-circle",
  severity: "error",
  message: (a) => `these are copied from each other: ${a.names.join(" → ")}`,
  help: (a) => `describe ${a.names[0]} in full`,
  explain: `One of the parts has to say for itself what it is. The others can then be \`like\` it or the \`mirror of\` it.`,
  wrong: stepExample([
    "{ made of: lumber, as: upright, facing: left, left: 0, front: 0, bottom: 0, under: tread }",
    "{ like: right-leg, left: 0 }",
  ]),
  right: stepExample(),
  basis: "the language",
});
