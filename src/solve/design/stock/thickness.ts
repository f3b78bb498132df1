import type { Finding } from "../../../findings/finding.ts";
import { littleLeftToPlane } from "../../../findings/rules/little-left-to-plane.ts";
import { measuresMissing } from "../../../findings/rules/measures-missing.ts";
import { measuresOutsideRange } from "../../../findings/rules/measures-outside-range.ts";
import { nobodySellsThatThickness } from "../../../findings/rules/nobody-sells-that-thickness.ts";
import { planedThickerThanSold } from "../../../findings/rules/planed-thicker-than-sold.ts";
import { roughNeedsPlaning } from "../../../findings/rules/rough-needs-planing.ts";
import { unknownStockWords } from "../../../findings/rules/unknown-stock-words.ts";
import type { StockDraft, Units } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { equal, less, subtract } from "../../../units/rational.ts";
import type { StockMeasures } from "./evaluated.ts";
import { PLANING_ALLOWANCE } from "./rough.ts";
import type { SoldAs } from "./sold-as.ts";

/** What the catalogue says of the thickness as bought; null where it does not know. */
const soldThickness = (sold: SoldAs | null): Length | null =>
  sold === null ? null : sold.kind === "panel" ? (sold.size?.measures ?? null) : sold.thickness;

/**
 * How thick a stock is in the piece: what it is planed to, else what it measures, else what the catalogue says. Never its name.
 * Undefined, with findings, where none of the three helps.
 */
export function resolveThickness(
  draft: StockDraft,
  measures: StockMeasures,
  sold: SoldAs | null,
  units: Units,
): { thickness: Length | undefined; findings: readonly Finding[] } {
  const said = measures.planed ?? measures.thick;
  const { thickness, findings } = said === null ? fromCatalogue(draft, sold, units) : { thickness: said, findings: [] };
  if (thickness === undefined) return { thickness, findings };
  return { thickness, findings: doubts(draft, measures, thickness, sold, units) };
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

/** What is odd about a thickness, given all that the maker wrote. */
function doubts(
  draft: StockDraft,
  { planed, thick, between }: StockMeasures,
  thickness: Length,
  sold: SoldAs | null,
  units: Units,
): Finding[] {
  const findings: Finding[] = [];
  const bought = thick ?? soldThickness(sold);
  const at = draft.planedTo?.at ?? draft.measures?.at ?? draft.at;
  if (planed !== null && bought !== null && less(bought, planed))
    findings.push(planedThickerThanSold(at, { planed, sold: bought, way: "thick", units }));
  else if (planed !== null && bought !== null && sold?.kind === "rough") {
    const left = subtract(bought, planed);
    if (less(left, PLANING_ALLOWANCE[units]))
      findings.push(littleLeftToPlane(at, { planed, rough: bought, left, units }));
  }
  if (between !== null && (less(thickness, between.low) || less(between.high, thickness)))
    findings.push(measuresOutsideRange(draft.between?.at ?? at, { thickness, ...between, units }));
  const size = sold?.kind === "panel" ? sold.size : null;
  if (
    size !== null &&
    thick !== null &&
    planed === null &&
    equal(thickness, size.named) &&
    !equal(size.named, size.measures)
  )
    findings.push(
      nobodySellsThatThickness(at, { text: draft.soldAs?.value ?? "", named: size.named, usual: size.measures }),
    );
  return findings;
}
