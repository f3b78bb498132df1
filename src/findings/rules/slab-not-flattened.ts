import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const slab = (planed: string): string =>
  stepExample(
    ["stock:", `stock:\n  oak: { sold as: 6/4, wood: white oak, planed to: ${planed}, widths: 3 to 6, sold in: [96] }`],
    ["made of: lumber, as: lying flat, left: 0", "made of: oak, boards: 2, as: lying flat, deep: 3 1/2, left: 0"],
  );

export const slabNotFlattened = rule<{ readonly part: string; readonly left: string }>({
  name: "slab-not-flattened",
  severity: "warning",
  message: (a) => `${a.part} is glued up as thick as its boards, with ${a.left} left to flatten it`,
  label: () => "nothing left to flatten",
  why: () => "boards never lie quite flush in a glue-up: 1/16 in (1.5 mm) or more has to come off before it is flat",
  help: () => "make it thinner, or of the next thickness that is sold",
  explain:
    "A glued slab is flattened the day after, which costs 1/16 to 1/8 in. A slab as thick as its boards are sold comes out thinner than planned.",
  wrong: slab("1 1/2"),
  right: slab("1 1/4"),
  basis: "common practice, no source",
});
