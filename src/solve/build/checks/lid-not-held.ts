import { lidNotHeld } from "../../../findings/rules/lid-not-held.ts";
import { numberOf } from "../../design/hardware/items.ts";
import type { Rule, Verdict } from "./check.ts";
import { lidsOf } from "./standing/lids.ts";
import { massText } from "./standing/weight-and-feet.ts";

/** Supports that hold at every angle carry the whole lid. */
export const lidNotHeldRule: Rule = (checked) =>
  lidsOf(checked).flatMap(({ parts, kg, supports }): readonly Verdict[] => {
    const [first] = parts;
    if (!first) return [];
    const good = supports.filter(({ item }) => item.words.get("holds") === "every angle");
    const carries = good.reduce((so, { item }) => so + numberOf(item, "carries"), 0);
    const check = {
      ...{ rule: "lid-not-held", subject: first.id, value: carries, limit: kg, unit: "kg" },
      basis: "a notice of the United States product safety commission, 1 April 1982; scope: ASTM F834",
    };
    if (good.length > 0 && carries >= kg) return [{ check: { ...check, verdict: "holds" } }];
    const each = carries / Math.max(good.length, 1);
    const finding = lidNotHeld(first.at, {
      lid: first.id,
      weighs: massText(kg, checked.design.units),
      carries: massText(carries, checked.design.units),
      because: supports.length === 0 ? "none" : good.length === 0 ? "open" : "weak",
      count: each > 0 ? Math.ceil(kg / each) : 1,
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
