import { slabNotFlattened } from "../../../findings/rules/slab-not-flattened.ts";
import { inches, toMillimetres } from "../../../units/length.ts";
import { less, multiply, rational, subtract } from "../../../units/rational.ts";
import { isGluedUp, makingOf } from "../../design/making/plain.ts";
import { sawnThickness } from "../cut-list/blanks.ts";
import type { Rule, Verdict } from "./check.ts";

/** What flattening a glued slab costs at least. Common practice, no source. */
const FLATTENING = inches(1, 16);

/** A slab is thinner than its boards, or it does not come out flat. */
export const slabNotFlattenedRule: Rule = ({ design, print }) => {
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  return design.parts.flatMap((part): readonly Verdict[] => {
    const stock = stocks.get(part.stock);
    if (!stock || stock.form === "sheet" || !isGluedUp(part)) return [];
    const boards = multiply(sawnThickness(design, stock), rational(makingOf(part).layers));
    const left = subtract(boards, part.thickness);
    const check = {
      rule: "slab-not-flattened",
      subject: part.id,
      value: toMillimetres(left),
      limit: toMillimetres(FLATTENING),
      unit: "mm",
      basis: "common practice, no source",
    };
    if (!less(left, FLATTENING)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = slabNotFlattened(part.at, { part: part.id, left: print(left) });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};
