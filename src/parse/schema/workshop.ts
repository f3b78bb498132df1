/** `workshop.yaml`: what there is in a workshop, whatever is built in it. */
import { planVersion } from "../../findings/rules/plan-version.ts";
import { byForm, list, made } from "../kinds/combine.ts";
import { type JsonSchema, type Kind, tell, tellWrong } from "../kinds/kind.ts";
import { named } from "../kinds/named.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, plainNumber, text, word } from "../kinds/simple.ts";
import { toolsOwned } from "./accept.ts";
import { lengthsSold, sheetSize, sheetsSold } from "./sold.ts";

const version: Kind<1> = {
  words: "1",
  json: { const: 1 },
  read(node, where) {
    if (node.kind !== "text") return tellWrong(where, node, "1");
    return node.text.trim() === "1" ? 1 : tell(where, node, planVersion(node.at, { found: node.text }));
  },
};

const MOST = 1000;
const pieces: Kind<number> = {
  words: `a whole number from 1 to ${MOST}`,
  json: { type: "integer", minimum: 1, maximum: MOST },
  read(node, where) {
    const count = plainNumber.read(node, where);
    if (count === undefined) return undefined;
    return Number.isInteger(count) && count >= 1 && count <= MOST ? count : tellWrong(where, node, pieces.words);
  },
};

const wood = settings("wood on hand", {
  of: need(text(100), "What it was sold as: 3/4 birch plywood, 2x4 spruce, white oak 5/4; or the plan's name for it."),
  wide: may(formula, "Its width; without it, as wide as that stock is sold.", "width"),
  long: need(formula, "Its length, along the grain.", "length"),
  count: may(pieces, "How many there are of this size: 1 if nothing is said."),
});

const bySize = settings("a price", {
  each: may(plainNumber, "The price of one."),
  sheets: may(sheetsSold, "The sizes that sheets come in, each with its price."),
  "sold in": may(lengthsSold, "The lengths that boards come in, each with its price.", "lengths"),
});
const price = byForm({
  text: made(plainNumber, (value, node) => ({ each: { value, at: node.at } })),
  map: made(bySize, ({ said }) => ({
    ...(said.each && { each: said.each }),
    ...(said.sheets && { sheets: said.sheets.value }),
    ...(said["sold in"] && { lengths: said["sold in"].value }),
  })),
});

/** Things that shops sell have names of any kind. */
const anything = (name: string): boolean => name.length > 0;

/** The whole file. */
export const workshop = settings("a workshop", {
  workshop: need(version, "The version of the language."),
  units: may(
    word(["inch", "mm"], { in: "inch", inches: "inch", metric: "mm" }),
    "The units of bare numbers: inches if nothing is said.",
  ),
  kerf: may(formula, "What the saw takes away; it counts before the plan's."),
  "squaring cut": may(
    formula,
    "What comes off one long and one short edge of a sheet first: 1/8 in or 3 mm if nothing is said.",
    "squaring",
  ),
  "fits the car": may(sheetSize, "The largest piece that you can bring home: 4 x 6 ft."),
  paper: may(word(["letter", "a4"]), "What your printer holds."),
  "wood on hand": may(
    list(wood, "a list of pieces, each beginning with a dash"),
    "Sheets, boards and offcuts that are used before anything is bought.",
  ),
  "supplies on hand": may(
    named(plainNumber, "thing", anything),
    "Screws, fasteners, glue and banding that there are, by the names that plans print, in pieces, bottles, feet or metres.",
  ),
  prices: may(named(price, "thing", anything), "What things cost, by what they are sold as."),
  "tools owned": may(toolsOwned, "The bits that there are, besides those that the plan knows of.", "tools"),
  "longest clamp": may(formula, "How far the longest clamp opens."),
});

/** The JSON Schema of `workshop.yaml`, for editors. */
export const workshopSchema = (): JsonSchema => ({
  $schema: "http://json-schema.org/draft-07/schema#",
  title: "Boardwright workshop",
  ...workshop.json,
  $defs: { measure: { type: ["string", "number"], description: "A measure such as 34 1/2.", maxLength: 500 } },
});
