import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const namesNoStep = rule<{ readonly said: string }>({
  name: "names-no-step",
  severity: "warning",
  message: ({ said }) => `no step of the plan is about \`${shorten(said)}\``,
  label: () => "nothing of the kind is done",
  help: () => "name a part, or work that the plan has: legs, mortises, tapers in legs, glue up seat, finish seat",
  explain:
    "A wish or note is about the step in which a part is joined, or about work on parts: glue up, cut, plane, drill, join, fit, finish, or what is cut, such as mortises, tapers or holes. Where no step does that work, there is no place for it.",
  wrong: stepExample(["joints:", "notes:\n  - { at: tapers, say: Cut a spare leg. }\njoints:"]),
  right: stepExample(["joints:", "notes:\n  - { at: left-leg, say: Cut a spare leg. }\njoints:"]),
  basis: "the language",
});
