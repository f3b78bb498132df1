import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const planed = (to: string): string => stepExample(["{ sold as: 2x4,", `{ sold as: 2x4, planed to: ${to},`]);

export const nothingLeftToFlatten = rule<{
  readonly stock: string;
  readonly bought: string;
  readonly planed: string;
  readonly least: string;
  readonly thinner: string;
}>({
  name: "nothing-left-to-flatten",
  severity: "warning",
  message: (a) => `${a.stock} is bought ${a.bought} thick and planed to ${a.planed}: nothing is left to flatten`,
  label: (a) => `less than ${a.least} under what is bought`,
  why: (a) => `no board is flat, and at least ${a.least} has to come off before it is`,
  help: (a) => `plane it to ${a.thinner}, or buy the next thickness`,
  explain: `Solid wood comes off the planer thinner than it went on: a board that is cupped or twisted needs 1/16 to 1/8 in before both faces are flat, and a
glued slab as much again. If it shall stay as thick as it is bought, leave \`planed to\` out.`,
  wrong: planed("1 1/2"),
  right: planed("1 3/8"),
  basis: "common practice, no source",
});
