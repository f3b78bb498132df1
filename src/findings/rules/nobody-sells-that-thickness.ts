import { type Length, sayLength } from "../../units/index.ts";
import { stepExample } from "../example.ts";
import { rule } from "../finding.ts";

const LID =
  "  lid: { made of: panel, as: lying flat, grain: across, left: 4, right: 16, front: 0, back: 3 1/2, under: tread }";
const withPanel = (panel: string): string =>
  stepExample(
    ["stock:", `stock:\n  panel: { ${panel} }`],
    ["  right-leg:", `${LID}\n  right-leg:`],
    ["joints:", "joints:\n  - { join: lid, to: tread, with: glue }"],
  );

export const nobodySellsThatThickness = rule<{
  readonly text: string;
  readonly named: Length;
  readonly usual: Length;
}>({
  name: "nobody-sells-that-thickness",
  severity: "warning",
  message: (a) => `\`${a.text}\` is only called ${sayLength(a.named, { units: "inch" })}; it does not measure that`,
  label: () => "the name, not the measure",
  why: (a) => `most sheets of that name measure about ${sayLength(a.usual, { units: "inch" })}`,
  help: () => "measure the sheet at six places, 1 in from the edges, and write the average",
  explain:
    "Plywood is named, not measured: a 3/4 in sheet is commonly 23/32 in thick, and no two shops sell the same. A plan drawn for the name comes out wrong by the difference at every joint.",
  wrong: withPanel("sold as: 3/4 birch plywood, measures: 3/4"),
  right: withPanel("sold as: 3/4 birch plywood, measures: 23/32"),
  basis: "common practice, no source; PS 1 allows a sheet to be 1/32 in under its name",
});
