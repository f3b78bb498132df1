import { chestExample } from "../chest-example.ts";
import { rule } from "../finding.ts";

const nailed = (length: string): string =>
  chestExample([
    "floor-panel, to: [fore, rear], with: screws, from: fore",
    `floor-panel, to: [fore, rear], with: nails, from: fore, nail: { length: ${length} }`,
  ]);

export const nailHoldsTooLittle = rule<{
  readonly kind: string;
  readonly length: string;
  readonly head: string;
  readonly hold: string;
  readonly deep: string;
  readonly longer: string;
}>({
  name: "nail-holds-too-little",
  severity: "warning",
  message: (a) => `of a ${a.kind} ${a.length} long only ${a.deep} goes into ${a.hold}: the rest is in ${a.head}`,
  label: (a) => `${a.deep} hold it`,
  help: (a) => `take longer ones: ${a.kind}: { length: ${a.longer} }`,
  explain: `A nail holds by what of it is in the second part. At least half of it belongs there, better twice as much as is in the first. Where the second part is too thin for that,
the longest nail that stays in it is taken. Joints that are glued are held by their glue, and their nails only press until it is hard.`,
  wrong: nailed("1"),
  right: nailed("1 1/2"),
  basis: "common practice, no source",
});
