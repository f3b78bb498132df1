import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const gluedUp = rule<{
  readonly part: string;
  readonly stock: string;
  readonly boards: number;
  readonly width: Length;
  readonly sold: Length;
  /** Whether the width of the boards is assumed, since the plan does not say it. */
  readonly assumed: boolean;
  readonly units: PrintOptions["units"];
}>({
  name: "glued-up",
  severity: "advice",
  message: (a) =>
    `${a.part} is ${sayLength(a.width, { units: a.units })} wide and is glued up from ${a.boards} boards: those of \`${a.stock}\` ${a.assumed ? "are taken to be" : "are"} ${sayLength(a.sold, { units: a.units })} wide`,
  label: (a) => `glued up from ${a.boards} boards`,
  help: (a) => {
    const names = a.part.split(".");
    const own = `boards: ${a.boards}`;
    const said = names.length === 1 ? `\`${own}\`` : `\`its parts: { ${names.slice(1).join(".")}: { ${own} } }\``;
    return `say ${said} if that is as you want it${a.assumed ? "; or how wide your boards are, such as `widths: 5 to 8` in their stock" : ""}`;
  },
  explain: `A part cannot be wider than the boards it is sawn from. Where the plan does not say of how many boards a wide part of solid wood is glued up, it is as many as its width takes, a tenth
more for what each loses when its edges are jointed.`,
  wrong: stepExample(
    ["{ sold as: 2x4, wood: spruce }", "{ sold as: 8/4, wood: white oak, planed to: 1 1/2, widths: 2 to 3 }"],
    ["lying flat, left", "lying flat, deep: 3 1/2, left"],
    ["facing: left, left", "facing: left, width: 3 1/2, left"],
  ),
  right: stepExample(
    ["{ sold as: 2x4, wood: spruce }", "{ sold as: 8/4, wood: white oak, planed to: 1 1/2, widths: 4 to 8 }"],
    ["lying flat, left", "lying flat, deep: 3 1/2, left"],
    ["facing: left, left", "facing: left, width: 3 1/2, left"],
  ),
  basis: "common practice, no source",
});
