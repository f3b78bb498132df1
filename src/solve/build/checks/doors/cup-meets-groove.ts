import { cupMeetsGroove } from "../../../../findings/rules/cup-meets-groove.ts";
import { type Length, millimetres, toMillimetres } from "../../../../units/length.ts";
import { add, half, less, max, min, subtract } from "../../../../units/rational.ts";
import { INDICES } from "../../../design/space.ts";
import type { Feature } from "../../../design.ts";
import type { Rule, Verdict } from "../check.ts";
import { doorsOf } from "./doors.ts";
import { atLeast } from "./enough.ts";

/** Left between a cup and the groove for the panel. 3 mm are better. */
const LEAST = millimetres(1);

/** stile − groove − (cup from edge + cup), as it comes out on the part. */
export const cupMeetsGrooveRule: Rule = (checked) =>
  doorsOf(checked).flatMap((door): readonly Verdict[] => {
    const { hung, wide, free, motion } = door;
    const grooves = hung.features.filter(isGroove);
    const cups = checked.holes.filter(({ part, kind }) => part === hung.id && kind === "cup");
    const [first] = cups;
    if (!first || grooves.length === 0) return [];
    const radius = half(first.stages.map(({ diameter }) => diameter).reduce(max));
    // Nearest to the free edge of its part, and the bottom of the groove there.
    const inner = free > 0 ? add(first.at[wide], radius) : subtract(first.at[wide], radius);
    const bottoms = grooves.flatMap((groove) => bottomOf(groove, wide, free));
    if (bottoms.length === 0) return [];
    const left = bottoms.map((at) => (free > 0 ? subtract(at, inner) : subtract(inner, at))).reduce(min);
    const check = {
      ...{ rule: "cup-meets-groove", subject: motion.name, value: toMillimetres(left), limit: toMillimetres(LEAST) },
      ...{
        unit: "mm",
        basis: "arithmetic: stile − groove − (cup from edge + cup); 1 mm, better 3: common practice, no source",
      },
    };
    if (!less(left, LEAST)) return [{ check: { ...check, verdict: "holds" } }];
    const { design, print } = checked;
    const finding = cupMeetsGroove(hung.at, {
      ...{ stile: hung.id, wide: print(hung.width), left: left.n > 0n ? print(left) : null },
      ...{ least: print(LEAST), wider: atLeast(add(hung.width, subtract(LEAST, left)), design.units) },
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });

type Groove = Extract<Feature, { readonly size: unknown }>;
const isGroove = (feature: Feature): feature is Groove => feature.kind === "groove" && "size" in feature;

/** Where a groove in the inner edge of a stile ends. */
function bottomOf({ origin, into, size }: Groove, wide: 0 | 1 | 2, free: 1 | -1): readonly Length[] {
  const axis = INDICES.find((i) => Math.abs(into[i]) > 0.5);
  if (axis !== wide || Math.sign(into[wide]) === free) return [];
  return [free > 0 ? subtract(origin[wide], size[2]) : add(origin[wide], size[2])];
}
