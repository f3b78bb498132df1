import { nobodySellsThatThickness } from "../../../findings/rules/nobody-sells-that-thickness.ts";
import { toMillimetres } from "../../../units/length.ts";
import { equal } from "../../../units/rational.ts";
import type { Rule, Verdict } from "./check.ts";

/** A sheet does not measure what it is called where such sheets never do. */
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
    if (!equal(stock.thickness, name) || equal(name, usual)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = nobodySellsThatThickness(bought.at, { text: bought.words, named: name, usual });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
