import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const jointWithItself = rule<{ readonly name: string }>({
  name: "joint-with-itself",
  severity: "error",
  message: (a) => `${a.name} is joined to nothing but itself`,
  help: () => "name another part after to:",
  explain: `A joint needs two different parts: one after \`join:\`, another after \`to:\`.`,
  wrong: stepExample(["to: [left-leg, right-leg]", "to: tread"]),
  right: stepExample(),
  basis: "the language",
});
