import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const notASizeOf = rule<{ readonly name: string; readonly word: string }>({
  name: "not-a-size-of",
  severity: "error",
  message: (a) => `${a.name} has no ${a.word} that could be used here`,
  help: (a) => `add a position or an extent, such as ${a.name}.top or ${a.name}.across`,
  explain: `Of a part one may ask the six positions \`left right front back bottom top\`, the extents \`across deep up\` and its board sizes \`thickness width length\`. Of the outside: the six positions and \`width depth height\`.`,
  wrong: stepExample(["right: long, front", "right: left-leg, front"]),
  right: stepExample(),
  basis: "the language",
});
