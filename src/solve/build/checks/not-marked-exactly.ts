import { notMarkedExactly } from "../../../findings/rules/not-marked-exactly.ts";
import { toMillimetres } from "../../../units/length.ts";
import { absolute, equal, half, less, subtract } from "../../../units/rational.ts";
import type { Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";

/** Sizes that fall between two marks of the tape: what rounding leaves is told, at most half a step where a size is to the nearest. */
export const notMarkedExactlyRule: Rule = ({ design, cutList, print }) => {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  return cutList.flatMap((line): readonly Verdict[] => {
    const part = parts.get(line.parts[0] as string) as Part;
    const off = (["width", "length"] as const).filter((size) => !equal(part[size], line[size]));
    const size = off[0];
    const left = size ? absolute(subtract(part[size], line[size])) : null;
    const check = {
      rule: "not-marked-exactly",
      subject: part.id,
      value: left ? toMillimetres(left) : 0,
      limit: toMillimetres(half(design.precision)),
      unit: "mm",
      basis: "the plan's precision",
    };
    if (!size || !left) return [{ check: { ...check, verdict: "holds" } }];
    const finding = notMarkedExactly(part.at, {
      part: line.name,
      size,
      exact: print(part[size]),
      printed: print(line[size]),
    });
    return [{ check: { ...check, verdict: less(half(design.precision), left) ? "warns" : "holds" }, finding }];
  });
};
