import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const outsideMissing = rule<{ readonly word: string }>({
  name: "outside-missing",
  severity: "error",
  message: (a) => `the outside has no ${a.word}`,
  help: (a) => `add ${a.word}: to outside`,
  explain: `\`outside\` gives width, depth and height over everything. A formula asks for one of them, so it has to be written.`,
  wrong: stepExample(
    ["outside: { width: 24, depth: 3 1/2, height: 12 }", "outside: { depth: 3 1/2, height: 12 }"],
    ["right: long, front: 0, top: 12", "right: outside.right, front: 0, top: 12"],
  ),
  right: stepExample(),
  basis: "the language",
});
