import type { Finding } from "../../../findings/finding.ts";
import { rangeBackwards } from "../../../findings/rules/range-backwards.ts";
import { stockSizeNotPositive } from "../../../findings/rules/stock-size-not-positive.ts";
import type { Formula, StockDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { compare, less, sign } from "../../../units/rational.ts";

/** Works a formula out as a length. Null where that cannot be done; whoever gave the function has then told the maker. */
export type Evaluate = (formula: Formula, wanted: "length") => Length | null;

interface Range {
  readonly low: Length;
  readonly high: Length;
}

export interface PricedLength {
  readonly long: Length;
  readonly price: number | null;
}
export interface PricedSheet extends PricedLength {
  readonly wide: Length;
}

/** The measures that the maker wrote for a stock, worked out and above zero; null where none was written. */
export interface StockMeasures {
  /** The reader's own. */
  readonly measured: Length | null;
  readonly planed: Length | null;
  readonly planedWide: Length | null;
  readonly thick: Length | null;
  readonly wide: Length | null;
  readonly between: Range | null;
  readonly widths: Range | null;
  /** Shortest first. */
  readonly soldIn: readonly PricedLength[] | null;
  readonly sheet: { readonly wide: Length; readonly long: Length } | null;
  /** Several sizes, as written. */
  readonly sheets: readonly PricedSheet[] | null;
}

/** Works out every formula of a stock, and says which of them make no sense. Undefined where one of them is of no use. */
export function evaluateStock(
  draft: StockDraft,
  evaluate: Evaluate,
): { measures: StockMeasures | undefined; findings: readonly Finding[] } {
  const findings: Finding[] = [];
  let good = true;
  const size = (what: string, formula: Formula | undefined): Length | null => {
    if (formula === undefined) return null;
    const value = evaluate(formula, "length");
    if (value !== null && sign(value) > 0) return value;
    if (value !== null) findings.push(stockSizeNotPositive(formula.at, { what }));
    good = false;
    return null;
  };
  const range = (key: string, written: StockDraft["between"]): Range | null => {
    if (written === undefined) return null;
    const [low, high] = [size(`\`${key}\``, written.low), size(`\`${key}\``, written.high)];
    if (low === null || high === null) return null;
    if (!less(high, low)) return { low, high };
    findings.push(rangeBackwards(written.at, { key }));
    good = false;
    return null;
  };
  const sheetWide = size("the width of the sheet", draft.sheet?.wide);
  const sheetLong = size("the length of the sheet", draft.sheet?.long);
  const soldIn = (draft.soldIn ?? []).flatMap(({ long, price = null }): PricedLength[] => {
    const length = size("`sold in`", long);
    return length === null ? [] : [{ long: length, price }];
  });
  const sheets = (draft.sheets ?? []).flatMap(({ wide, long, price = null }): PricedSheet[] => {
    const sides = [size("the width of the sheet", wide), size("the length of the sheet", long)] as const;
    return sides[0] === null || sides[1] === null ? [] : [{ wide: sides[0], long: sides[1], price }];
  });
  const measures: StockMeasures = {
    measured: size("what was measured", draft.measured),
    planed: size("`planed to`", draft.planedTo),
    planedWide: size("the width it is planed to", draft.planedWide),
    thick: size("`measures`", draft.measures?.thick),
    wide: size("the width it measures", draft.measures?.wide),
    between: range("between", draft.between),
    widths: range("widths", draft.widths),
    soldIn: soldIn.length === 0 ? null : soldIn.toSorted((a, b) => compare(a.long, b.long)),
    sheet: sheetWide === null || sheetLong === null ? null : { wide: sheetWide, long: sheetLong },
    sheets: sheets.length === 0 ? null : sheets,
  };
  return { measures: good ? measures : undefined, findings };
}
