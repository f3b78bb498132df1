import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const withWood = (wood: string): string =>
  stepExample(["stock:", "choices:\n  wood: { options: [spruce, pine] }\nstock:"], ["wood: spruce", `wood: ${wood}`]);

export const choiceChangesNothing = rule<{ readonly name: string }>({
  name: "choice-changes-nothing",
  severity: "advice",
  message: (a) => `the plan is the same whatever is chosen for \`${a.name}\``,
  label: () => "changes nothing",
  help: (a) => `use it, as in \`when: ${a.name} is …\` or \`{ by: ${a.name}, … }\`, or take it out`,
  explain: `A reader who may choose expects a difference. All options of this choice give the same piece: nothing in the plan depends on it, or what does is the same for each.`,
  wrong: withWood("spruce"),
  right: withWood("{ by: wood, spruce: spruce, pine: pine }"),
  basis: "the language",
});
