import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const mirrorWithoutDirection = rule<Record<string, never>>({
  name: "mirror-without-direction",
  severity: "error",
  message: () => "a mirror of something needs to know which way it turns",
  help: () => "add about: across",
  explain: `\`about: across\` swaps left and right, \`about: deep\` front and back, \`about: up\` bottom and top. The reflection is taken about the middle of the outside.`,
  wrong: stepExample(["right-leg: { like: left-leg, right: long }", "right-leg: { mirror of: left-leg }"]),
  right: stepExample([
    "right-leg: { like: left-leg, right: long }",
    "right-leg: { mirror of: left-leg, about: across }",
  ]),
  basis: "the language",
});
