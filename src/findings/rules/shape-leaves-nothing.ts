import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const shapeLeavesNothing = rule<{ readonly name: string }>({
  name: "shape-leaves-nothing",
  severity: "error",
  message: (a) => `nothing is left of ${a.name} after its cuts`,
  help: () => "check the measures of its shapes",
  explain: `The shapes and joints of a part take away wood. Here they take away all of it: a measure is too large, or a cut is on the wrong side.`,
  wrong: stepExample(["front: 0, top: 12 }", "front: 0, top: 12, notch: { at: left front, wide: 24, deep: 3 1/2 } }"]),
  right: stepExample(),
  basis: "the language",
});
