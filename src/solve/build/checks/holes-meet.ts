import { holesMeet as holesMeetFinding } from "../../../findings/rules/holes-meet.ts";
import { holesMeet } from "../order/bores.ts";
import type { Rule, Verdict } from "./check.ts";
import { holesIn } from "./rooms.ts";

/** Two holes of a part meet only if they are for the same thing. */
export const holesMeetRule: Rule = ({ design, holes }) =>
  design.parts.flatMap((part): readonly Verdict[] => {
    const own = holesIn(part, holes);
    const pairs = own.flatMap((a, i) => own.slice(i + 1).map((b) => [a, b] as const));
    const met = pairs.filter(([a, b]) => (a.for === null || a.for !== b.for) && holesMeet(a, b));
    const check = {
      rule: "holes-meet",
      subject: part.id,
      value: met.length,
      limit: 0,
      unit: "pairs",
      basis: "geometry",
    };
    if (met.length === 0) return pairs.length > 0 ? [{ check: { ...check, verdict: "holds" } }] : [];
    return [{ check: { ...check, verdict: "fails" }, finding: holesMeetFinding(part.at, { part: part.id }) }];
  });
