import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { compare } from "../../units/rational.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

const withLid = (size: string): string =>
  stepExample(
    ["width: 24", "width: 49"],
    ["stock:", "stock:\n  panel: { sold as: 3/4 birch plywood }"],
    [
      "  right-leg:",
      `  lid: { made of: panel, as: lying flat, ${size}, front: 0, back: 3 1/2, on: tread }\n  right-leg:`,
    ],
    ["height: 12 }", "height: 12 23/32 }"],
    ["joints:", "joints:\n  - { join: lid, to: tread, with: glue }"],
  );

export const largerThanAnySheet = rule<{
  /** Paths of the parts, all of one stock. */
  readonly parts: readonly string[];
  readonly stock: string;
  /** The largest of them, as it would lie: over the sheet and along its grain. */
  readonly width: Length;
  readonly length: Length;
  /** What is left of a sheet when two edges are squared. */
  readonly soldWidth: Length;
  readonly soldLength: Length;
  readonly units: PrintOptions["units"];
}>({
  name: "larger-than-any-sheet",
  severity: "error",
  message: (a) =>
    `${nameSome(a.parts)} ${a.parts.length === 1 ? "is" : "are up to"} ${sayLength(a.width, { units: a.units })} × ${sayLength(a.length, { units: a.units })}; a sheet of \`${a.stock}\` gives ${sayLength(a.soldWidth, { units: a.units })} × ${sayLength(a.soldLength, { units: a.units })}`,
  label: (a) =>
    `a sheet gives ${sayLength(a.soldWidth, { units: a.units })} × ${sayLength(a.soldLength, { units: a.units })}`,
  help: (a) => {
    const turned = compare(a.width, a.soldLength) <= 0 && compare(a.length, a.soldWidth) <= 0;
    return `make it smaller, ${turned ? "turn its grain (grain: …), " : ""}join it from two pieces, or say which sheet you can get, such as \`sheet: 60 x 120\``;
  },
  explain:
    "A part has to lie on the sheet with its grain along the sheet's. One long and one short edge of each sheet are squared first, so that no part needs the whole sheet.",
  wrong: withLid("grain: deep, left: 0, right: 49"),
  right: withLid("grain: across, left: 0, right: 49"),
  basis: "geometry; the squaring cut is common practice, no source",
});
