import { pinsMeetInDivider } from "../../../findings/rules/pins-meet-in-divider.ts";
import { dot, minus } from "../../../geometry/vec.ts";
import { inches, type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { rational, toNumber } from "../../../units/rational.ts";
import type { Hole } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";
import { holesIn } from "./rooms.ts";

/** Holes of pins from both sides of a divider leave 1/8 in between their bottoms, or stand two diameters apart (common practice, no source). */
export const pinsMeetInDividerRule: Rule = ({ design, holes, print }) =>
  design.parts.flatMap((part): readonly Verdict[] => {
    const pins = holesIn(part, holes).filter(({ kind }) => kind === "pin");
    const woods = pins.flatMap((a, i) => pins.slice(i + 1).flatMap((b) => woodBetween(a, b) ?? []));
    if (woods.length === 0) return [];
    const [least, limit] = [Math.min(...woods), toNumber(LEAST)];
    const check = {
      ...{
        rule: "pins-meet-in-divider",
        subject: part.id,
        value: least / UNITS_PER_MM,
        limit: limit / UNITS_PER_MM,
        unit: "mm",
      },
      basis: "common practice, no source",
    };
    if (least >= limit) return [{ check: { ...check, verdict: "holds" } }];
    const wood: Length = rational(Math.round(Math.max(0, least)));
    const finding = pinsMeetInDivider(part.at, { part: part.id, wood: print(wood), least: print(LEAST) });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });

const LEAST = inches(1, 8);

/** Wood between the bottoms of two holes that come from opposite sides, nearly opposite each other; null for any others. */
function woodBetween(a: Hole, b: Hole): number | null {
  if (dot(a.direction, b.direction) > -0.99) return null;
  const at = ({ at: [x, y, z] }: Hole) => [toNumber(x), toNumber(y), toNumber(z)] as const;
  const way = minus(at(b), at(a));
  const through = dot(way, a.direction);
  const aside = Math.sqrt(Math.max(0, dot(way, way) - through * through));
  const wide = Math.max(...[a, b].map(({ stages }) => toNumber(stages[0]?.diameter ?? rational(0))));
  const deep = [a, b].reduce((so, { stages }) => so + toNumber(stages.at(-1)?.depth ?? rational(0)), 0);
  return aside < 2 * wide ? through - deep : null;
}
