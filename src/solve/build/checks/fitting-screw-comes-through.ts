import { fittingScrewComesThrough } from "../../../findings/rules/fitting-screw-comes-through.ts";
import { millimetres, toMillimetres } from "../../../units/length.ts";
import { less, subtract } from "../../../units/rational.ts";
import { extent, INDICES } from "../../design/space.ts";
import type { Rule, Verdict } from "./check.ts";

/** Wood in front of a screw's point. Common practice, no source. */
const UNDER = millimetres(2);

/** The pilot hole of hardware ends before the far side: a hole as deep as its wood is thick would come through. */
export const fittingScrewComesThroughRule: Rule = ({ design, print }) => {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  return design.fittings.flatMap((fitting): readonly Verdict[] =>
    [
      ...new Map(fitting.holes.filter(({ kind }) => kind === "pilot").map((hole) => [hole.part, hole])).values(),
    ].flatMap((hole): readonly Verdict[] => {
      const part = parts.get(hole.part);
      const axis = INDICES.find((i) => Math.abs(hole.direction[i]) > 0.5);
      const deep = hole.stages.at(-1)?.depth;
      if (!part || axis === undefined || !deep || part.turned) return [];
      const wood = extent(part.body, axis);
      const left = subtract(wood, deep);
      const check = {
        rule: "fitting-screw-comes-through",
        subject: `${fitting.id} in ${part.id}`,
        value: toMillimetres(left),
        limit: toMillimetres(UNDER),
        unit: "mm",
        basis: "common practice, no source",
      };
      if (!less(left, UNDER)) return [{ check: { ...check, verdict: "holds" } }];
      const told = { item: fitting.hardware[0]?.item.kind ?? "", part: part.id, wood: print(wood) };
      const shorter = print(subtract(UNDER, left));
      const finding = fittingScrewComesThrough(fitting.at, { ...told, deep: print(deep), shorter });
      return [{ check: { ...check, verdict: "warns" }, finding }];
    }),
  );
};
