import type { Finding } from "../../../findings/finding.ts";
import { measuresMissing } from "../../../findings/rules/measures-missing.ts";
import { measuresNotItsName } from "../../../findings/rules/measures-not-its-name.ts";
import { measuresOutsideRange } from "../../../findings/rules/measures-outside-range.ts";
import { planedThickerThanSold } from "../../../findings/rules/planed-thicker-than-sold.ts";
import { roughNeedsPlaning } from "../../../findings/rules/rough-needs-planing.ts";
import { unknownStockWords } from "../../../findings/rules/unknown-stock-words.ts";
import type { StockDraft, Units } from "../../../parse/draft.ts";
import { inches, type Length } from "../../../units/length.ts";
import { add, less } from "../../../units/rational.ts";
import type { Bought } from "../../design.ts";
import type { StockMeasures } from "./evaluated.ts";
import type { SoldAs } from "./sold-as.ts";

/** What the catalogue says of the thickness as bought; null where it does not know. */
const soldThickness = (sold: SoldAs | null): Length | null =>
  sold === null ? null : sold.kind === "panel" ? (sold.size?.measures ?? null) : sold.thickness;

/**
 * How thick a stock is in the piece: what the reader measured, else what it is planed to, else what it measures, else what the catalogue says. Never its name.
 * Undefined, with findings, where none of the four helps.
 */
export function resolveThickness(
  draft: StockDraft,
  measures: StockMeasures,
  sold: SoldAs | null,
  units: Units,
): { thickness: Length | undefined; bought: Bought | null; findings: readonly Finding[] } {
  const said = measures.measured ?? measures.planed ?? measures.thick;
  const { thickness, findings } = said === null ? fromCatalogue(draft, sold, units) : { thickness: said, findings: [] };
  const bought = boughtOf(draft, measures, sold);
  // What the reader measures, and the ends of a range, are taken as they are.
  const wrong = measures.measured === null && measures.thick && notItsName(draft, measures.thick, sold, units);
  if (wrong) return { thickness: undefined, bought, findings: [...findings, wrong] };
  if (thickness === undefined) return { thickness, bought, findings };
  return { thickness, bought, findings: doubts(draft, measures, thickness, bought, units) };
}

/** No sheet is thicker. Common practice, no source. */
const THICKEST = inches(2);

/** A sheet that is thicker than any, or twice or half of what its name says. */
function notItsName(draft: StockDraft, thickness: Length, sold: SoldAs | null, units: Units): Finding | null {
  if (sold?.kind !== "panel") return null;
  const { named } = sold;
  const far = named !== null && (!less(thickness, add(named, named)) || !less(named, add(thickness, thickness)));
  if (!far && !less(THICKEST, thickness)) return null;
  const words = draft.soldAs?.value ?? draft.name;
  return measuresNotItsName(draft.measures?.at ?? draft.at, { words, thickness, named, units });
}

function fromCatalogue(
  draft: StockDraft,
  sold: SoldAs | null,
  units: Units,
): { thickness: Length | undefined; findings: readonly Finding[] } {
  const { soldAs } = draft;
  const without = (finding: Finding) => ({ thickness: undefined, findings: [finding] });
  if (soldAs === undefined || (sold?.kind === "panel" && sold.named === null))
    return without(measuresMissing(soldAs?.at ?? draft.at, { stock: draft.name }));
  if (sold === null || sold.unknown.length > 0)
    return without(unknownStockWords(soldAs.at, { text: soldAs.value, words: sold?.unknown ?? [] }));
  if (sold.kind === "rough") {
    const { finished } = sold;
    if (finished === null) return without(roughNeedsPlaning(soldAs.at, { text: soldAs.value, units }));
    return { thickness: finished, findings: [] };
  }
  const thickness = soldThickness(sold);
  if (thickness === null) return without(unknownStockWords(soldAs.at, { text: soldAs.value, words: [] }));
  return { thickness, findings: [] };
}

/** How thick it is bought, where that is known. */
function boughtOf(draft: StockDraft, { measured, planed, thick }: StockMeasures, sold: SoldAs | null): Bought | null {
  const thickness = (planed === null ? measured : null) ?? thick ?? soldThickness(sold);
  if (thickness === null) return null;
  const size = sold?.kind === "panel" ? sold.size : null;
  return {
    thickness,
    at: draft.planedTo?.at ?? draft.measures?.at ?? draft.at,
    words: draft.soldAs?.value ?? draft.name,
    rough: sold?.kind === "rough",
    planed: planed !== null,
    named: size === null || thick === null || measured !== null ? null : { name: size.named, usual: size.measures },
  };
}

/** What is odd about a thickness, given all that the maker wrote. */
function doubts(
  draft: StockDraft,
  { planed, between }: StockMeasures,
  thickness: Length,
  bought: Bought | null,
  units: Units,
): Finding[] {
  const findings: Finding[] = [];
  const at = draft.planedTo?.at ?? draft.measures?.at ?? draft.at;
  if (planed !== null && bought !== null && less(bought.thickness, planed))
    findings.push(planedThickerThanSold(at, { planed, sold: bought.thickness, way: "thick", units }));
  if (between !== null && (less(thickness, between.low) || less(between.high, thickness)))
    findings.push(measuresOutsideRange(draft.between?.at ?? at, { thickness, ...between, units }));
  return findings;
}
