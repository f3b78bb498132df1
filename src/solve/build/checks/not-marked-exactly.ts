import { notMarkedExactly } from "../../../findings/rules/not-marked-exactly.ts";
import { toMillimetres } from "../../../units/length.ts";
import { add, less, ZERO } from "../../../units/rational.ts";
import { indexOf } from "../../design/space.ts";
import type { Joint, Part } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";

/** What rounding to the marks of the tape leaves open at the joints of each part. What lies on pins is open at its ends as it is. */
export const notMarkedExactlyRule: Rule = ({ design, print }) =>
  design.parts.map((part): Verdict => {
    const found = design.joints.find((joint) => isOpenAt(joint, part));
    const check = {
      rule: "not-marked-exactly",
      subject: part.id,
      value: found ? toMillimetres(found.gap) : 0,
      limit: toMillimetres(design.precision),
      unit: "mm",
      basis: "the plan's precision",
      verdict: "holds" as const,
    };
    return found ? { check, finding: told(part, found, print) } : { check };
  });

const isOpenAt = (joint: Joint, part: Part): boolean =>
  joint.roundedGap === true &&
  joint.kind !== "resting" &&
  joint.parts[0] === part.id &&
  sizeAcross(part, joint) !== "thickness";

/** The size of a part that runs towards a joint. One that lies on another with its face leaves nothing open by its own size. */
function sizeAcross(part: Part, { contact }: Joint): "length" | "width" | "thickness" {
  const normal = contact[0]?.normal ?? [0, 0, 0];
  const steepest = Math.max(...normal.map(Math.abs));
  const sizes = ["length", "width", "thickness"] as const;
  return sizes.find((size) => Math.abs(normal[indexOf(part.axes[size])]) === steepest) ?? "length";
}

function told(part: Part, joint: Joint, print: Parameters<Rule>[0]["print"]) {
  const { gap, parts } = joint;
  const across = sizeAcross(part, joint);
  const size = across === "width" ? "width" : "length";
  const over = part.leftOver[indexOf(part.axes[size])];
  const printed = part[size];
  return notMarkedExactly(part.at, {
    part: part.called ?? part.id,
    printed: print(printed),
    exact: print(add(printed, less(ZERO, over) ? over : gap)),
    gap: print(gap),
    other: parts[1],
  });
}
