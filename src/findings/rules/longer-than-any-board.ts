import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

export const longerThanAnyBoard = rule<{
  /** Paths of the parts, all of one stock. */
  readonly parts: readonly string[];
  readonly stock: string;
  /** The longest of them. */
  readonly length: Length;
  /** What is left of the longest board when one end is trimmed. */
  readonly sold: Length;
  readonly assumed: boolean;
  readonly units: PrintOptions["units"];
}>({
  name: "longer-than-any-board",
  severity: "error",
  message: (a) =>
    `${nameSome(a.parts)} ${a.parts.length === 1 ? "is" : "are up to"} ${sayLength(a.length, { units: a.units })} long; the longest board of \`${a.stock}\` ${a.assumed ? "is taken to give" : "gives"} ${sayLength(a.sold, { units: a.units })}`,
  label: (a) => `longer than ${sayLength(a.sold, { units: a.units })}`,
  help: (a) =>
    a.assumed
      ? "say which lengths your shop sells, such as `sold in: [8 ft, 12 ft]`"
      : "join it from shorter pieces, or make it of a stock that is sold longer",
  explain:
    "A part cannot be longer than the boards it is sawn from. One end of each board is trimmed square first, which takes a little more.",
  wrong: stepExample(["sold as: 2x4", "sold as: 2x4, sold in: [20]"]),
  right: stepExample(["sold as: 2x4", "sold as: 2x4, sold in: [96]"]),
  basis: "geometry; the trimmed end is common practice, no source",
});
