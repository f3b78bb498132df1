import { oneGoodFaceSeenFromBoth } from "../../../findings/rules/one-good-face-seen-from-both.ts";
import type { Rule, Verdict } from "./check.ts";

/** A part whose faces are both to be seen wants a sheet with two good faces. */
export const oneGoodFaceRule: Rule = ({ design }) => {
  const stocks = new Map(design.stock.map((stock) => [stock.name, stock]));
  return design.parts.flatMap((part): readonly Verdict[] => {
    const good = stocks.get(part.stock)?.goodFaces;
    if (part.goodFace !== "both" || good === undefined) return [];
    const check = {
      rule: "one-good-face-seen-from-both",
      subject: part.id,
      value: good,
      limit: 2,
      unit: "faces",
      basis: "common practice, no source",
    };
    if (good >= 2) return [{ check: { ...check, verdict: "holds" } }];
    const finding = oneGoodFaceSeenFromBoth(part.at, { part: part.id, good, stock: part.stock });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};
