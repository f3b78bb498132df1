import { doorExample } from "../door-example.ts";
import { rule } from "../finding.ts";

const slab = (sheet: string): string =>
  doorExample(
    ["leaf: { sold as: 3/4 MDF }", `leaf: { sold as: ${sheet} MDF }`],
    ["{ kind: cup hinge for an inset door }", "{ kind: cup hinge for an inset door, door thickness: 12 mm to 24 mm }"],
    ["hinges: hinge", "hinges: { hardware: cup, with: cup hinges }"],
  );

export const cupTooDeep = rule<{
  readonly part: string;
  readonly deep: string;
  readonly wood: string;
  readonly needs: string;
}>({
  name: "cup-too-deep",
  severity: "error",
  message: (a) => `the cups of the hinges are bored ${a.deep} deep into ${a.part}, which is ${a.wood} thick there`,
  label: () => "bored nearly through",
  help: (a) => `make it at least ${a.needs} thick, or take hinges with flatter cups (cup deep: …)`,
  explain: `The point of the bit goes deeper than the cup, and what is left under it has to carry the finish. Of a slab with applied strips only the slab
counts: the cup must not end in the glue between them.`,
  wrong: slab("1/2"),
  right: slab("3/4"),
  basis: "common practice, no source",
});
