import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const measuresNotItsName = rule<{
  /** What it is sold as. */
  readonly words: string;
  readonly thickness: Length;
  /** The thickness in its name; null where the name has none. */
  readonly named: Length | null;
  readonly units: PrintOptions["units"];
}>({
  name: "measures-not-its-name",
  severity: "error",
  message: (a) =>
    `\`${a.words}\` is written to be ${sayLength(a.thickness, { units: a.units })} thick${a.named ? `, and its name says ${sayLength(a.named, { units: a.units })}` : ""}`,
  label: (a) => (a.named ? "far from its name" : "no sheet is so thick"),
  help: (a) => {
    const said = sayLength(a.thickness, { units: a.units }).replace(/ (?:in|mm)$/, "");
    const [own, other] = a.units === "inch" ? ["inches", "mm"] : ["millimetres", "in"];
    return `write what it measures in ${own}, or the unit with it: \`measures: ${said} ${other}\``;
  },
  explain:
    "A sheet measures a little less than its name says, never half of it or twice as much, and none is thicker than 2 in or 51 mm. A number without a unit is in the plan's `units`.",
  wrong: stepExample(["stock:", "stock:\n  panel: { sold as: 1/4 birch plywood, measures: 5 }"]),
  right: stepExample(["stock:", "stock:\n  panel: { sold as: 1/4 birch plywood, measures: 5 mm }"]),
  basis: "common practice, no source",
});
