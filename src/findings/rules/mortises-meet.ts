import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const mortisesMeet = rule<{
  readonly part: string;
  readonly wood: string;
  /** What is missing. */
  readonly short: string;
}>({
  name: "mortises-meet",
  severity: "error",
  message: (a) =>
    /^0 /u.test(a.wood)
      ? `two mortises in ${a.part} run into each other`
      : `two mortises in ${a.part} come within ${a.wood} of each other`,
  help: (a) =>
    `shorten one of the tenons by ${a.short} (\`long\`), or move them apart (\`in from\`, \`thick\`); or make them so long that they meet, with \`ends: mitred\``,
  explain: `Mortises that meet cut each other's walls away, and the second tenon then has nothing to hold it. At least 1 mm of wood has to stay between them; 1/16 in is better.`,
  wrong: stepExample(
    [
      "  right-leg:",
      "  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }\n  second: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 1 17/32, bottom: 2 }\n  right-leg:",
    ],
    [
      "joints:",
      "joints:\n  - { join: rail, to: [left-leg, right-leg], with: mortise and tenon, tenon: { thick: 1 1/2, shoulder: 0 } }\n  - { join: second, to: [left-leg, right-leg], with: mortise and tenon, tenon: { thick: 1 1/2, shoulder: 0 } }",
    ],
  ),
  right: stepExample(
    [
      "  right-leg:",
      "  rail: { made of: lumber, as: on edge, between: [left-leg, right-leg], front: 0, bottom: 2 }\n  right-leg:",
    ],
    ["joints:", "joints:\n  - { join: rail, to: [left-leg, right-leg], with: mortise and tenon }"],
  ),
  basis: "common practice, no source",
});
