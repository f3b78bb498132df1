import { legNotBraced } from "../../../findings/rules/leg-not-braced.ts";
import { TOLERANCE, UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import { INDICES } from "../../design/space.ts";
import type { Design, Joint, Part } from "../../design.ts";
import { LOOSE } from "../order/links.ts";
import type { Rule, Verdict } from "./check.ts";

/** Nothing of the leg goes into the other part: its end only lies against it. */
const BUTTED: readonly Joint["method"][] = ["dowels", "screws", "pocket screws", "nails", "brads", "glue", "biscuits"];
/** So many times as long as wide is a leg, not a panel or a block; and so high, mm. */
const [SLENDER, HIGH] = [4, 250];

/** A leg that stands free has more than a butted end to hold it. */
export const legNotBracedRule: Rule = ({ design }) => {
  const hangs = design.fittings.some(({ hardware }) => hardware[0]?.item.kind === "wall screw");
  const floor = Math.min(...design.parts.map(({ solid }) => solid.low[2]));
  return design.parts.flatMap((part): readonly Verdict[] => {
    if (!isLeg(part, floor)) return [];
    const joints = design.joints.filter(({ kind, parts }) => !LOOSE.includes(kind) && parts.includes(part.id));
    const mates = new Set(joints.flatMap(({ parts }) => parts.filter((id) => id !== part.id)));
    const [joint] = joints;
    if (!joint) return [];
    const free = mates.size === 1 && joints.every((each) => BUTTED.includes(each.method) && atHead(each, part, design));
    const check = {
      ...{ rule: "leg-not-braced", subject: part.id, value: free ? 0 : 1, limit: 1, unit: "braces" },
      basis: "common practice, no source",
    };
    if (!free) return hangs || isOfACase(part, joints, design) ? [] : [{ check: { ...check, verdict: "holds" } }];
    const [mate = ""] = mates;
    const told = { leg: part.id, mate, method: joint.method, seat: design.seats !== undefined };
    return [{ check: { ...check, verdict: "warns" }, finding: legNotBraced(part.at, told) }];
  });
};

function isLeg({ body, solid }: Part, floor: number): boolean {
  const [, wide = 0, long = 0] = INDICES.map((i) => toNumber(body.high[i]) - toNumber(body.low[i])).toSorted(
    (a, b) => a - b,
  );
  const high = solid.high[2] - solid.low[2];
  return solid.low[2] < floor + TOLERANCE && high >= HIGH * UNITS_PER_MM && long >= SLENDER * wide;
}

/** The stile of a frame before a case, or the wall of a case: fast along something that is nearly as high. Such a thing is no leg. */
function isOfACase(part: Part, joints: readonly Joint[], { parts }: Design): boolean {
  const half = (part.solid.high[2] - part.solid.low[2]) / 2;
  const fast = joints.filter(({ kind }) => kind !== "floating").flatMap((joint) => joint.parts);
  return parts.some(
    ({ id, solid }) =>
      id !== part.id &&
      fast.includes(id) &&
      Math.min(solid.high[2], part.solid.high[2]) - Math.max(solid.low[2], part.solid.low[2]) > half,
  );
}

/** What it is joined to lies over its head, and does not reach down beside it. */
function atHead({ parts }: Joint, part: Part, design: Design): boolean {
  const mate = design.parts.find(({ id }) => id !== part.id && parts.includes(id));
  return mate !== undefined && mate.solid.low[2] > part.solid.high[2] - (part.solid.high[2] - part.solid.low[2]) / 10;
}
