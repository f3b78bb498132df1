import { notMarkedExactly } from "../../../findings/rules/not-marked-exactly.ts";
import { toMillimetres } from "../../../units/length.ts";
import { add, less, ZERO } from "../../../units/rational.ts";
import { indexOf } from "../../design/space.ts";
import type { Joint, Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";

/** What rounding to the marks of the tape leaves open at the joints of each part. What lies on pins is open at its ends as it is. */
export const notMarkedExactlyRule: Rule = ({ design, print }) =>
  design.parts.map((part): Verdict => {
    const open = design.joints.find(
      (joint) => joint.roundedGap && joint.kind !== "resting" && joint.parts[0] === part.id,
    );
    const check = {
      rule: "not-marked-exactly",
      subject: part.id,
      value: open ? toMillimetres(open.gap) : 0,
      limit: toMillimetres(design.precision),
      unit: "mm",
      basis: "the plan's precision",
      verdict: "holds" as const,
    };
    return open ? { check, finding: told(part, open, print) } : { check };
  });

function told(part: Part, { gap, parts }: Joint, print: Parameters<Rule>[0]["print"]) {
  const size = (["length", "width"] as const).find((each) => less(ZERO, part.leftOver[indexOf(part.axes[each])]));
  const printed = part[size ?? "length"];
  const left = size ? part.leftOver[indexOf(part.axes[size])] : gap;
  return notMarkedExactly(part.at, {
    part: part.called ?? part.id,
    printed: print(printed),
    exact: print(add(printed, left)),
    gap: print(gap),
    other: parts[1],
  });
}
