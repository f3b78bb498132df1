import { hardwareOffItsPart } from "../../../findings/rules/hardware-off-its-part.ts";
import { distance } from "../../../geometry/index.ts";
import { millimetres, TOLERANCE, toMillimetres } from "../../../units/length.ts";
import { rational } from "../../../units/rational.ts";
import type { Rule, Verdict } from "./check.ts";

/** What is fixed to a part touches it. What is screwed through a part is wholly inside, and has no body of its own to look at. */
export const hardwareOffItsPartRule: Rule = ({ design, print }) => {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  return design.fittings.flatMap(({ id, at, hardware }): readonly Verdict[] => {
    const away = hardware.flatMap((each) => {
      const part = parts.get(each.carriedBy);
      return part && each.solid.pieces.length > 0 ? [{ each, part, by: distance(each.solid, part.solid) }] : [];
    });
    const [farthest] = away.toSorted((a, b) => b.by - a.by);
    if (!farthest) return [];
    const { each, part } = farthest;
    const by = rational(Math.round(farthest.by));
    const check = {
      ...{ rule: "hardware-off-its-part", subject: id, basis: "geometry" },
      ...{ value: toMillimetres(by), limit: toMillimetres(millimetres(1, 100)), unit: "mm" },
    };
    if (farthest.by <= TOLERANCE) return [{ check: { ...check, verdict: "holds" } }];
    const finding = hardwareOffItsPart(at, { item: each.item.kind, part: part.id, by: print(by) });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
};
