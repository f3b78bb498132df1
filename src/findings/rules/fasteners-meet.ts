import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const fastenersMeet = rule<{
  /** What each is, and the part that it is driven through. */
  readonly one: { readonly kind: string; readonly part: string };
  readonly other: { readonly kind: string; readonly part: string } | { readonly hole: string };
  /** How many pairs of these two parts. */
  readonly count: number;
  readonly inPart: string;
}>({
  name: "fasteners-meet",
  severity: "warning",
  message: ({ one, other, count, inPart }) =>
    `${count === 1 ? "" : `${count} times `}a ${one.kind} through ${one.part} and ${"hole" in other ? other.hole : `a ${other.kind} through ${other.part}`} meet in ${inPart}`,
  help: ({ one }) =>
    `give the joint of ${one.part} another \`count\`, or \`in from ends\`, so that they go past each other with wood between`,
  explain: `A nail that strikes another bends, or comes out beside the wood; one that runs into a hole holds nothing there, and a screw that is turned in later stops on it; dowels that nearly meet leave a wall that breaks. Where two joints come together in one part, their fasteners lie at different heights or places.`,
  wrong: stepExample(
    [
      "joints:",
      "  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], deep: middle, top: 10 1/2 }\njoints:",
    ],
    [
      "with: screws }",
      "with: nails, nail: { length: 4 }, count: 1 }\n  - { join: [left-leg, right-leg], to: rail, with: nails, nail: { length: 4 }, count: 1 }",
    ],
  ),
  right: stepExample(),
  basis: "common practice, no source",
});
