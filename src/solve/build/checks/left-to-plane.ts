import { littleLeftToPlane } from "../../../findings/rules/little-left-to-plane.ts";
import { nothingLeftToFlatten } from "../../../findings/rules/nothing-left-to-flatten.ts";
import { inches, millimetres, toMillimetres } from "../../../units/length.ts";
import { less, subtract } from "../../../units/rational.ts";
import { PLANING_ALLOWANCE } from "../../design/stock/rough.ts";
import type { Rule, Verdict } from "./check.ts";

/** Less than this cannot be flattened at all. Common practice, no source. */
const LEAST = { inch: inches(1, 16), mm: millimetres(3, 2) } as const;

/** Boards that are planed leave enough to come off: 1/16 in at least, of rough boards 1/8 in. */
export const leftToPlaneRule: Rule = ({ design, print }) =>
  design.stock.flatMap((stock): readonly Verdict[] => {
    const { bought, thickness } = stock;
    if (stock.form !== "board" || !bought?.planed) return [];
    const { units } = design;
    const left = subtract(bought.thickness, thickness);
    const nothing = less(left, LEAST[units]);
    const limit = bought.rough && !nothing ? PLANING_ALLOWANCE[units] : LEAST[units];
    const check = {
      rule: bought.rough && !nothing ? "little-left-to-plane" : "nothing-left-to-flatten",
      subject: stock.name,
      value: toMillimetres(left),
      limit: toMillimetres(limit),
      unit: "mm",
      basis: "common practice, no source",
    };
    if (!less(left, limit)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = nothing
      ? nothingLeftToFlatten(bought.at, {
          stock: stock.name,
          bought: print(bought.thickness),
          planed: print(thickness),
          least: print(LEAST[units]),
          thinner: print(subtract(bought.thickness, PLANING_ALLOWANCE[units])),
        })
      : littleLeftToPlane(bought.at, { planed: thickness, rough: bought.thickness, left, units });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
