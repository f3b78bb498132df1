import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

/** A rail with tenons in its legs, and a shelf let into them from another side. */
const rails = (deep: string): string =>
  stepExample(
    [
      "  right-leg:",
      "  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }\n  right-leg:",
    ],
    ["joints:", "joints:\n  - { join: rail, to: [left-leg, right-leg], with: mortise and tenon }"],
    ["left-leg: {", `left-leg: { groove: { in: back, near: left, in from: 5/8, wide: 1/4, deep: ${deep} },`],
  );

export const thinWall = rule<{
  readonly part: string;
  /** Of the other cut: "dado". */
  readonly cut: string;
  readonly wood: string;
  /** The wood that should stand. */
  readonly least: string;
  /** The parts that go into the two. */
  readonly tenon: string;
  readonly other: string;
}>({
  name: "thin-wall",
  severity: "warning",
  message: (a) =>
    /^0 /u.test(a.wood)
      ? `in ${a.part} the ${a.cut} for ${a.other} runs into the mortise for ${a.tenon}`
      : `in ${a.part} only ${a.wood} of wood stands between the mortise for ${a.tenon} and the ${a.cut} for ${a.other}`,
  label: (a) => `less than ${a.least} of wood`,
  help: (a) =>
    `move ${a.tenon} or ${a.other}, make the ${a.cut} less deep, or the tenon shorter or thinner (\`long\`, \`thick\`, \`in from\`), until ${a.least} stands`,
  explain: `Wood that is left as thin as a veneer between two cuts breaks out when the second is made, and holds nothing when it does not. At least 1/8 in (3 mm) has to stand between a mortise
and a dado, groove or notch that is cut from another side.`,
  wrong: rails("2 7/16"),
  right: rails("1/2"),
  basis: "common practice, no source",
});
