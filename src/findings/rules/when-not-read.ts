import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { shorten } from "../shorten.ts";

export const whenNotRead = rule<{ readonly text: string }>({
  name: "when-not-read",
  severity: "error",
  message: (a) => `\`${shorten(a.text)}\` does not say when`,
  label: () => "not understood",
  help: () => "write it as in `when: wood is oak`",
  explain: `A part, group, assembly or joint may stand in the plan only under some option: \`when: wood is oak\`, \`when: wood is not oak\`, and such joined by \`and\` or \`or\`.`,
  wrong: stepExample(
    ["stock:", "choices:\n  wood: { options: [spruce, pine] }\nstock:"],
    ["joints:\n  - {", "joints:\n  - { when: pine,"],
  ),
  right: stepExample(
    ["stock:", "choices:\n  wood: { options: [spruce, pine] }\nstock:"],
    [
      "right-leg], with: screws }",
      "right-leg], with: screws }\n  - { when: wood is pine, join: tread, to: left-leg, with: glue }",
    ],
  ),
  basis: "the language",
});
