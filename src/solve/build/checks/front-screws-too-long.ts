import { frontScrewsTooLong } from "../../../findings/rules/front-screws-too-long.ts";
import { inches, millimetres, toMillimetres } from "../../../units/length.ts";
import { add, compare, less, subtract, ZERO } from "../../../units/rational.ts";
import { extent } from "../../design/space.ts";
import type { Fastener, Joint } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";

/** Screws from inside stop 1/8 in (3 mm) under the face of a front (common practice, no source). */
export const frontScrewsTooLongRule: Rule = (checked) => {
  const { design, fasteners } = checked;
  return design.joints
    .filter(({ setWith }) => setWith !== undefined)
    .flatMap((joint) => {
      const own = fasteners.filter((each) => each.joint === joint.id);
      const longest = own.toSorted((a, b) => compare(b.length, a.length))[0];
      return longest ? [judge(joint, longest, checked)] : [];
    });
};

function judge(joint: Joint, { length, through, into, direction }: Fastener, { design, print }: Checked): Verdict {
  const axis = direction.findIndex((each) => Math.abs(each) > 0.5) as 0 | 1 | 2;
  const wood = [...through, into].reduce((so, id) => {
    const part = design.parts.find((each) => each.id === id);
    return part ? add(so, extent(part.body, axis)) : so;
  }, ZERO);
  const left = design.units === "inch" ? inches(1, 8) : millimetres(3);
  const limit = subtract(wood, left);
  const check = {
    ...{ rule: "front-screws-too-long", subject: joint.id, unit: "mm", basis: "common practice, no source" },
    ...{ value: toMillimetres(length), limit: toMillimetres(limit) },
  };
  if (!less(limit, length)) return { check: { ...check, verdict: "holds" } };
  const finding = frontScrewsTooLong(joint.at, {
    ...{ front: into, screw: print(length), wood: print(wood), most: print(limit), left: print(left) },
  });
  return { check: { ...check, verdict: "warns" }, finding };
}
