import { wetLumber } from "../../../findings/rules/wet-lumber.ts";
import { millimetres, toMillimetres } from "../../../units/length.ts";
import { changeOfWidth } from "../../design/use/change-of-width.ts";
import { USUAL_SITE } from "../../design/use/site.ts";
import type { Rule, Verdict } from "./check.ts";

/** Wood is bought no wetter than it will be in the dampest season: otherwise it shrinks in the piece. Only where its moisture is said. */
export const wetLumberRule: Rule = ({ design, print }) => {
  const site = design.site ?? USUAL_SITE;
  return design.stock.flatMap((stock): readonly Verdict[] => {
    const { moisture, movement, name } = stock;
    if (moisture === undefined || movement === undefined) return [];
    const check = {
      rule: "wet-lumber",
      subject: name,
      value: moisture,
      limit: site.dampest,
      unit: "%",
      basis: site.basis,
    };
    if (moisture <= site.dampest) return [{ check: { ...check, verdict: "holds" } }];
    const widths = design.parts.filter((part) => part.stock === name).map((part) => toMillimetres(part.width));
    const width = Math.max(0, ...widths);
    const lost = -changeOfWidth(movement, moisture, site.driest) * width;
    const tell = (mm: number): string => print(millimetres(Math.round(mm * 1000), 1000));
    const finding = wetLumber(stock.at, {
      stock: name,
      moisture,
      dampest: site.dampest,
      driest: site.driest,
      place: site.name,
      width: tell(width),
      shrinks: tell(lost),
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};
