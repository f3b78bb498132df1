import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const hung = (count: string): string => doorExample(["hinges: hinge", `hinges: { hardware: hinge, count: ${count} }`]);

export const tooFewHinges = rule<{
  readonly door: string;
  readonly high: string;
  readonly weighs: string;
  readonly count: number;
  readonly wanted: number;
}>({
  name: "too-few-hinges",
  severity: "warning",
  message: (a) =>
    `${a.door} is ${a.high} high, weighs ${a.weighs}, and hangs on ${a.count === 1 ? "one hinge" : `${a.count} hinges`}; such a door takes ${a.wanted}`,
  label: (a) => (a.count === 1 ? "one hinge" : `${a.count} hinges`),
  help: (a) => `write \`count: ${a.wanted}\`, or leave it out: as many are then taken as it wants`,
  explain: `A tall door bends between its hinges, and a heavy one draws their screws. Two carry a door up to 40 in and 15 lb; each further 20 in or 15 lb,
whichever asks for more, takes one more.`,
  wrong: hung("1"),
  right: hung("2"),
  basis: "a hinge maker's chart, interpreted",
});
