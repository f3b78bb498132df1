/** The sizes that sheets and boards are sold in, and what each costs. */
import type { LengthSold, SheetDraft, SheetSold } from "../draft.ts";
import { byForm, list, made } from "../kinds/combine.ts";
import type { Kind } from "../kinds/kind.ts";
import { parted, tellPiece } from "../kinds/places.ts";
import { may, need, settings } from "../kinds/settings.ts";
import { formula, formulaIn, plainNumber } from "../kinds/simple.ts";
import { slice } from "../yaml/nodes.ts";

const sheet = settings("a sheet", {
  wide: need(formula, "The width of a sheet.", "width"),
  long: need(formula, "The length of a sheet, along the grain of its faces.", "length"),
});

/** `4 x 8 ft`: what stands behind the last number counts for both. */
const UNIT = /(?:ft|feet|foot|in|inch|inches|mm|cm|m)\.?$/iu;

const short: Kind<SheetDraft> = {
  words: "a size, such as 4 x 8 ft",
  json: { type: "string" },
  read(node, where) {
    if (node.kind !== "text") return undefined;
    const whole = slice(node, 0);
    const sides = parted(whole, /\s*(?:x|×|\bby\b)\s*/iu);
    if (sides === undefined) return tellPiece(where, whole, short.words);
    const [first, second] = sides;
    const unit = UNIT.exec(second.text)?.[0];
    const named =
      unit === undefined || /[\p{L}'"]/u.test(first.text) ? first : { ...first, text: `${first.text} ${unit}` };
    const [wide, long] = [formulaIn(named, where), formulaIn(second, where)];
    return wide === undefined || long === undefined ? undefined : { wide, long, at: node.at };
  },
};

/** `4 x 8 ft`, or `{ wide: 48, long: 96 }`. */
export const sheetSize: Kind<SheetDraft> = byForm({
  text: short,
  map: made(sheet, ({ at, said }): SheetDraft => ({ wide: said.wide.value, long: said.long.value, at })),
});

const priced = settings("a size of sheet", {
  size: need(sheetSize, "The size: 4 x 8 ft."),
  price: may(plainNumber, "What one costs."),
});

export const sheetsSold: Kind<readonly SheetSold[]> = list(
  made(priced, ({ said }): SheetSold => ({ ...said.size.value, ...(said.price && { price: said.price.value }) })),
  "a list of sizes, each { size: 4 x 8 ft, price: 62 }",
);

const board = settings("a length of board", {
  long: need(formula, "The length: 8 ft.", "length"),
  price: may(plainNumber, "What one costs."),
});

export const lengthsSold: Kind<readonly LengthSold[]> = list(
  byForm({
    text: made(formula, (long): LengthSold => ({ long })),
    map: made(
      board,
      ({ said }): LengthSold => ({ long: said.long.value, ...(said.price && { price: said.price.value }) }),
    ),
  }),
  "a list of lengths",
);
