import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { toNumber } from "../../units/rational.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";
import { nameSome } from "../name-some.ts";

/** The line that says it, of a part or of one that an assembly makes; each board loses something when it is jointed. */
function gluedUp({ parts, width, sold }: { parts: readonly string[]; width: Length; sold: Length }): string {
  const boards = `boards: ${Math.ceil((toNumber(width) / toNumber(sold)) * 1.1)}`;
  const names = (parts[0] ?? "").split(".");
  return names.length === 1 ? boards : `its parts: { ${names.slice(1).join(".")}: { ${boards} } }`;
}

export const widerThanAnyBoard = rule<{
  /** Paths of the parts, all of one stock. */
  readonly parts: readonly string[];
  readonly stock: string;
  /** The widest of them. */
  readonly width: Length;
  readonly sold: Length;
  /** Whether the width of the boards is assumed, since the plan does not say it. */
  readonly assumed: boolean;
  readonly units: PrintOptions["units"];
}>({
  name: "wider-than-any-board",
  severity: "error",
  message: (a) =>
    `${nameSome(a.parts)} ${a.parts.length === 1 ? "is" : "are up to"} ${sayLength(a.width, { units: a.units })} wide; boards of \`${a.stock}\` ${a.assumed ? "are taken to be" : "are"} ${sayLength(a.sold, { units: a.units })} wide`,
  label: (a) => `wider than ${sayLength(a.sold, { units: a.units })}`,
  help: (a) =>
    a.assumed
      ? `if yours are wider say so, such as \`widths: 5 to 8\`; else glue the part up (${gluedUp(a)}), or make it of another stock`
      : `glue it up from narrower boards (${gluedUp(a)}), or make it of another stock`,
  explain:
    "A part cannot be wider than the boards it is sawn from. Wide parts of solid wood are glued up from several boards; a stock of its own with `widths:` stands for such a panel or for boards that really are that wide.",
  wrong: stepExample(
    ["{ sold as: 2x4, wood: spruce }", "{ sold as: 8/4, wood: white oak, planed to: 1 1/2, widths: 1 to 1 1/2 }"],
    ["lying flat, left", "lying flat, boards: 2, deep: 3 1/2, left"],
    ["facing: left, left", "facing: left, boards: 2, width: 3 1/2, left"],
  ),
  right: stepExample(
    ["{ sold as: 2x4, wood: spruce }", "{ sold as: 8/4, wood: white oak, planed to: 1 1/2, widths: 4 to 8 }"],
    ["lying flat, left", "lying flat, deep: 3 1/2, left"],
    ["facing: left, left", "facing: left, width: 3 1/2, left"],
  ),
  basis: "geometry; assumed widths are common practice, no source",
});
