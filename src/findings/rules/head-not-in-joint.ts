import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const headNotInJoint = rule<{ readonly name: string }>({
  name: "head-not-in-joint",
  severity: "error",
  message: (a) => `${a.name} is not a part of this joint`,
  help: () => "name a part of the joint",
  explain: `\`from:\` says which of the joined parts the head of the screw or nail is on. It has to name one that stands after \`join:\` or \`to:\`.`,
  wrong: stepExample([
    "to: [left-leg, right-leg], with: screws",
    "to: left-leg, from: right-leg, with: screws }\n  - { join: tread, to: right-leg, with: screws",
  ]),
  right: stepExample(),
  basis: "the language",
});
