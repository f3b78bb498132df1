import { doorExample, framed } from "../door-example.ts";
import { rule } from "../finding.ts";

export const glassHoldsNothing = rule<{
  readonly part: string;
  /** Null where it is cut or bored. */
  readonly method: string | null;
  readonly glue: boolean;
}>({
  name: "glass-holds-nothing",
  severity: "error",
  message: (a) =>
    a.method === null
      ? `${a.part} is glass, and something is cut into it`
      : `${a.part} is glass, and is joined with ${a.method}${a.glue ? " and glue" : ""}`,
  label: () => "nothing goes into glass",
  help: () => "lay it in a rabbet (`with: glazed`) and fix beads over its edges, or let it into a groove without glue",
  explain: `A pane is bought as large as it is, and nothing is cut, driven or glued into it. It lies in a rabbet with a little play all round, and
beads that are fixed to the frame hold it there. A framed door does all of that by itself where its \`panel\` is of glass.`,
  wrong: doorExample(["leaf: { sold as: 3/4 MDF }", "leaf: { material: glass, measures: 3/4 }"]),
  right: doorExample(["stock:\n", "stock:\n  pane: { material: glass, measures: 1/8 }\n"], ...framed(""), [
    "panel: floor",
    "panel: pane",
  ]),
  basis: "common practice, no source",
});
