import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

export const thickerThanItsStock = rule<{
  /** Paths of the parts, all of one stock. */
  readonly parts: readonly string[];
  readonly stock: string;
  /** The thickest of them. */
  readonly thickness: Length;
  readonly sold: Length;
  readonly units: PrintOptions["units"];
}>({
  name: "thicker-than-its-stock",
  severity: "error",
  message: (a) =>
    `${nameSome(a.parts)} ${a.parts.length === 1 ? "is" : "are up to"} ${sayLength(a.thickness, { units: a.units })} thick; \`${a.stock}\` measures ${sayLength(a.sold, { units: a.units })}`,
  label: (a) => `thicker than ${sayLength(a.sold, { units: a.units })}`,
  help: () => "make it of a thicker stock, or glue it up from two layers",
  explain: "A part is as thick as its stock, or thinner where it is planed.",
  wrong: stepExample(["under: tread }", "under: tread, thickness: 2 }"]),
  right: stepExample(),
  basis: "geometry",
});
