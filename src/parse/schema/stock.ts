import type { StockDraft } from "../draft.ts";
import { byForm, made } from "../kinds/combine.ts";
import { type Named, named } from "../kinds/named.ts";
import { range } from "../kinds/places.ts";
import { percent } from "../kinds/quantities.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, plainNumber, text, word } from "../kinds/simple.ts";
import { lengthsSold, sheetSize, sheetsSold } from "./sold.ts";

const section = settings("a measure of stock", {
  thick: need(formula, "The thickness.", "thickness"),
  wide: may(formula, "The width, where it is always the same.", "width"),
});
/** A thickness, or a thickness and a width. */
const measured = byForm({
  text: made(formula, (thick, node) => ({ at: node.at, thick, wide: undefined })),
  map: made(section, ({ at, said }) => ({ at, thick: said.thick.value, wide: said.wide?.value })),
});

const material = settings(
  "a stock",
  {
    "sold as": may(text(100), "What is bought, in the words of the shop: 2x4, 4/4, 3/4 birch plywood."),
    wood: may(text(100), "The species: white oak.", "species"),
    material: may(word(["glass"]), "What it is, where it is no wood: glass, of which panes are bought cut to size."),
    measures: may(measured, "The thickness as measured, or thickness and width; never taken from the name."),
    "planed to": may(
      measured,
      "The thickness after planing, or thickness and width. Stocks that are bought alike but for this are sawn from the same boards.",
      "sawn and planed to",
    ),
    between: may(range, "The range of thickness that the plan has to survive: 11/16 and 3/4."),
    widths: may(range, "The widths that boards come in: 5 to 8."),
    "sold in": may(lengthsSold, "The lengths that boards come in, each alone or with its price.", "lengths"),
    sheet: may(sheetSize, "The size of a sheet."),
    sheets: may(sheetsSold, "The sizes that sheets come in, each with its price."),
    "good faces": may(plainNumber, "How many faces are fit to be seen: 0, 1 or 2."),
    moisture: may(percent, "The moisture of the wood when it is bought: 19 %. 8 % if nothing is said."),
    price: may(plainNumber, "The price of one sheet, board, pane, board foot or cubic metre."),
    waste: may(
      percent,
      "How much more is bought than the parts have, for knots and ends: 30 % of rough boards if nothing is said, else what the layouts need.",
    ),
  },
  ["colour", "color"],
);

type Material = NonNullable<ReturnType<typeof material.read>>;

function toDraft({ name, at, value }: Named<Material>): StockDraft {
  const { said } = value;
  const { measures, between, widths, sheet, sheets } = said;
  const planed = said["planed to"]?.value;
  const { thick, wide } = measures?.value ?? {};
  return {
    name,
    at,
    ...(said["sold as"] && { soldAs: said["sold as"] }),
    ...(said.wood && { wood: said.wood }),
    ...(said.material && { material: said.material }),
    ...(measures && thick && { measures: { at: measures.at, thick, ...(wide && { wide }) } }),
    ...(planed && { planedTo: planed.thick, ...(planed.wide && { planedWide: planed.wide }) }),
    ...(between && { between: { ...between.value, at: between.at } }),
    ...(widths && { widths: { ...widths.value, at: widths.at } }),
    ...(said["sold in"] && { soldIn: said["sold in"].value }),
    ...(sheet && { sheet: sheet.value }),
    ...(sheets && { sheets: sheets.value }),
    ...(said["good faces"] && { goodFaces: said["good faces"] }),
    ...(said.moisture && { moisture: said.moisture }),
    ...(said.price && { price: said.price }),
    ...(said.waste && { waste: said.waste }),
  };
}

/** Stock is never named in a formula, so `2x4` may be a name. */
const anyName = (name: string): boolean => name.length > 0;

export const stock = made(named(material, "stock", anyName), (entries) => entries.map(toDraft));
