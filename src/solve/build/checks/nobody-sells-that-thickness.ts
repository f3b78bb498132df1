import { nobodySellsThatThickness } from "../../../findings/rules/nobody-sells-that-thickness.ts";
import { toMillimetres } from "../../../units/length.ts";
import { equal, less } from "../../../units/rational.ts";
import type { Rule, Verdict } from "./check.ts";

/** A sheet does not measure what it is called where such sheets never do; a plan that says between what it measures knows that. */
export const nobodySellsThatThicknessRule: Rule = ({ design }) =>
  design.stock.flatMap((stock): readonly Verdict[] => {
    const { bought } = stock;
    if (!bought?.named || bought.planed) return [];
    const { name, usual } = bought.named;
    const check = {
      rule: "nobody-sells-that-thickness",
      subject: stock.name,
      value: toMillimetres(bought.thickness),
      limit: toMillimetres(usual),
      unit: "mm",
      basis: "common practice, no source; PS 1 allows a sheet to be 1/32 in under its name",
    };
    const known = stock.between !== undefined && !less(usual, stock.between.low);
    if (known || !equal(stock.thickness, name) || equal(name, usual))
      return [{ check: { ...check, verdict: "holds" } }];
    const finding = nobodySellsThatThickness(bought.at, { text: bought.words, named: name, usual });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
