import { cupTooDeep } from "../../../../findings/rules/cup-too-deep.ts";
import { millimetres, toMillimetres } from "../../../../units/length.ts";
import { add, less, max, subtract } from "../../../../units/rational.ts";
import { extent } from "../../../design/space.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf } from "./doors.ts";
import { atLeast } from "./enough.ts";

/** Left under a cup, so that the point of the bit does not come through. Common practice, no source. */
const LEAST = millimetres(3, 2);

/** What a cup is bored in is thicker than the cup is deep. */
export const cupTooDeepRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const { hung, thick, motion, joint } = door;
    const cups = checked.holes.filter(({ part, kind }) => part === hung.id && kind === "cup");
    if (cups.length === 0) return [];
    const deep = cups.flatMap(({ stages }) => stages.map(({ depth }) => depth)).reduce(max);
    const wood = extent(hung.body, thick);
    const left = subtract(wood, deep);
    const check = {
      ...{ rule: "cup-too-deep", subject: motion.name, value: toMillimetres(left), limit: toMillimetres(LEAST) },
      ...{ unit: "mm", basis: "common practice, no source" },
    };
    if (!less(left, LEAST)) return [{ check: { ...check, verdict: "holds" } }];
    const { design, print } = checked;
    const told = {
      part: hung.id,
      deep: print(deep),
      wood: print(wood),
      needs: atLeast(add(deep, LEAST), design.units),
    };
    return [{ check: { ...check, verdict: "fails" }, finding: cupTooDeep(joint.at, told) }];
  });
