import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const gap = (wide: string): string =>
  doorExample(
    ["butt hinge, leaf: 1/2", "butt hinge, leaf: 1/2, fit: mortised"],
    ["    pull: knob\n", `    pull: knob\n    gap: ${wide}\n`],
  );

export const hingeNotLetIn = rule<{
  readonly door: string;
  readonly closed: string;
  readonly gap: string;
  readonly narrower: string;
}>({
  name: "hinge-not-let-in",
  severity: "error",
  message: (a) =>
    `the hinges of ${a.door} are to be mortised, and shut they are ${a.closed} thick where the gap is ${a.gap}: there is nothing to let in`,
  label: () => "no mortise",
  help: (a) =>
    `make the gap narrower (gap: ${a.narrower}), or let the leaves fold into it (fit: in the gap, in the settings of the hinge)`,
  explain: `A leaf is let in by half of what both leaves are thicker than the gap. Where the gap is as wide as they are together, they fold into it and no
mortise is cut. A door whose hinges say \`fit: mortised\` gets a gap of half of what they close to, where none is said.`,
  wrong: gap("1/8"),
  right: gap("1/16"),
  basis: "instructions of hinge makers, and arithmetic: (closed thickness − gap) / 2",
});
