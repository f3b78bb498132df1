import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const reservedName = rule<{ readonly name: string }>({
  name: "reserved-name",
  severity: "error",
  message: (a) => `a part cannot be called \`${a.name}\``,
  label: () => "means a place or a size",
  help: (a) => `write \`${a.name}-panel\`, or another name that says what it is`,
  explain:
    "`left right front back bottom top`, `across deep up`, `thickness width length`, `outside` and `floor` have a meaning in formulas, as in `leg.left`. A part of that name could not be told from it. A face may name what stands directly in `piece`, as in `top: { kind: top, … }`, but nothing in a group: `cabinet.top` is where the cabinet ends.",
  wrong: stepExample(["  left-leg: {", "  width: { like: left-leg, right: 12 }\n  left-leg: {"]),
  right: stepExample(),
  basis: "the language",
});
