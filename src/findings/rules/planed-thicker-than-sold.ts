import { type Length, type PrintOptions, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

export const planedThickerThanSold = rule<{
  readonly planed: Length;
  readonly sold: Length;
  readonly way: "thick" | "wide";
  readonly units: PrintOptions["units"];
}>({
  name: "planed-thicker-than-sold",
  severity: "error",
  message: (a) =>
    `planed to ${sayLength(a.planed, { units: a.units })} ${a.way}, but sold ${sayLength(a.sold, { units: a.units })} ${a.way}`,
  label: (a) => `more than the ${sayLength(a.sold, { units: a.units })} there is`,
  help: () => "plane it to less, or buy it thicker or wider",
  explain: "Planing takes wood off. What a board is planed to must be less than what it measures when it is bought.",
  wrong: stepExample(["wood: spruce }", "wood: spruce, planed to: { thick: 1 3/4, wide: 3 1/2 } }"]),
  right: stepExample(["wood: spruce }", "wood: spruce, planed to: { thick: 1 3/8, wide: 3 1/2 } }"]),
  basis: "the language",
});
