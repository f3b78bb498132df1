import { nailHoldsTooLittle } from "../../../findings/rules/nail-holds-too-little.ts";
import { type Length, toMillimetres } from "../../../units/length.ts";
import { add, compare, half, less, min, subtract } from "../../../units/rational.ts";
import { NAIL_STOPS, SOLD_LENGTHS } from "../../design/fastening/catalogue.ts";
import { depthAt } from "../../design/fastening/line.ts";
import { INDICES, shift } from "../../design/space.ts";
import type { Fastener } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";

/** Half of a nail is in the second part, or as much as there is room for. Those that only press until glue is hard are left out. */
export const nailHoldsTooLittleRule: Rule = (checked) => {
  const { design, fasteners, print } = checked;
  return design.joints.flatMap((joint): readonly Verdict[] => {
    const own = joint.glue
      ? []
      : fasteners.filter(({ joint: id }) => id === joint.id).flatMap((each) => heldOf(each, checked));
    // Of all nails of a joint, the one that holds least.
    const [worst] = own.toSorted((a, b) => compare(a.deep, b.deep));
    if (!worst) return [];
    const { fastener, deep, longer } = worst;
    const enough = half(fastener.length);
    const check = {
      ...{ rule: "nail-holds-too-little", subject: joint.id, unit: "mm", basis: "common practice, no source" },
      ...{ value: toMillimetres(deep), limit: toMillimetres(longer ? enough : min(enough, deep)) },
    };
    if (!longer || !less(deep, enough)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = nailHoldsTooLittle(joint.at, {
      ...{ kind: fastener.kind, length: print(fastener.length), deep: print(deep), longer: print(longer) },
      ...{ head: fastener.through.join(" and "), hold: fastener.into },
    });
    return [{ check: { ...check, verdict: "warns" }, finding }];
  });
};

interface Held {
  readonly fastener: Fastener;
  /** What of it is in the second part. */
  readonly deep: Length;
  /** The shortest longer one that does, or the longest that stays in the wood; null where there is none. */
  readonly longer: Length | null;
}

function heldOf(fastener: Fastener, { design }: Checked): readonly Held[] {
  const { kind, head, direction, length } = fastener;
  const axis = INDICES.find((i) => direction[i] !== 0);
  const [through, into] = [fastener.through[0], fastener.into].map((id) => design.parts.find((part) => part.id === id));
  if ((kind !== "nail" && kind !== "brad") || axis === undefined || !through || !into || fastener.through.length !== 1)
    return [];
  const sign = direction[axis] > 0 ? 1 : -1;
  const passed = depthAt(through.solid, head.at, axis, sign);
  const room = depthAt(into.solid, shift(head.at, axis, sign > 0 ? passed : { ...passed, n: -passed.n }), axis, sign);
  const deep = subtract(length, passed);
  const most = subtract(add(passed, room), NAIL_STOPS[design.units]);
  const longer = SOLD_LENGTHS[kind][design.units].filter((each) => less(length, each) && compare(each, most) <= 0);
  const does = longer.find((each) => compare(add(passed, passed), each) <= 0);
  return [{ fastener, deep, longer: does ?? longer.at(-1) ?? null }];
}
