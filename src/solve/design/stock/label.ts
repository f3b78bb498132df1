import type { StockDraft, Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/print-length.ts";
import type { StockMeasures } from "./evaluated.ts";
import { plainName } from "./species.ts";
import type { Wood } from "./wood.ts";

/** `2x4` is printed `2×4`; blanks are evened out. */
export const plainText = (text: string): string =>
  text
    .replace(/\s+/g, " ")
    .trim()
    .replace(/(?<=\d)\s?(?:x|by)\s?(?=\d)/giu, "×");

/** `planed to 3/4`, `planed to 1 1/4 × 1 1/4`. */
export const planedTo = (thickness: Length, { planedWide }: StockMeasures, units: Units): string => {
  const sizes = planedWide === null ? [thickness] : [thickness, planedWide];
  return `planed to ${sizes.map((length) => printLength(length, { units }).text).join(" × ")}`;
};

/**
 * The printed name of a stock: `3/4 birch plywood`, `2×4 spruce`; where it is planed from rough boards, wood first:
 * `white oak, 4/4 planed to 3/4`.
 */
export function stockLabel(draft: StockDraft, wood: Wood, planed: string | null): string {
  const text = draft.soldAs === undefined ? null : named(plainText(draft.soldAs.value));
  const called = wood.called === null ? null : named(wood.called);
  const said = text !== null && wood.called !== null && plainName(text).includes(wood.called);
  const name = draft.wood === undefined || said ? null : called;
  if (text === null) return name ?? draft.name;
  if (planed === null) return name === null ? text : woodIn(text, name);
  return name === null ? `${text}, ${planed}` : `${name}, ${text} ${planed}`;
}

/** "oak strip" of white oak is a "white oak strip"; "2×4" of spruce is a "2×4 spruce". */
function woodIn(text: string, name: string): string {
  const words = text.split(" ");
  const i = words.findIndex((word) => word.toLowerCase() === name.split(" ").at(-1)?.toLowerCase());
  return i < 0 ? `${text} ${name}` : words.with(i, name).join(" ");
}

/** Woods that are called by a country or a person have a capital there. */
const named = (text: string): string =>
  text.replace(
    /\b(?:european|american|african|norway|douglas|engelmann|oregon|honduras|japanese|siberian)\b/gu,
    (word) => `${word.charAt(0).toUpperCase()}${word.slice(1)}`,
  );

/** What rough boards are called as they are bought, before they are planed: `white oak, 4/4`. */
export const unplaned = (label: string): string => label.replace(/,? planed to .*$/u, "");

/** `1/8 glass`, `4 mm glass`, or the words of the shop. */
export const paneLabel = ({ soldAs }: StockDraft, thickness: Length, units: Units): string =>
  soldAs ? plainText(soldAs.value) : `${printLength(thickness, { units }).text}${units === "mm" ? " mm" : ""} glass`;
