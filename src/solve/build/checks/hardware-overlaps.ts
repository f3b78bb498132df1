import { hardwareOverlaps } from "../../../findings/rules/hardware-overlaps.ts";
import type { Span } from "../../../findings/span.ts";
import { overlapDepth } from "../../../geometry/index.ts";
import { millimetres, TOLERANCE, toMillimetres } from "../../../units/length.ts";
import { rational } from "../../../units/rational.ts";
import type { Hardware, Part } from "../../design.ts";
import type { Checked, Rule, Verdict } from "./check.ts";

/** What is fixed to a part is neither in another part nor in other hardware; and no hinge is in a part. What slides has checks of its own. */
export const hardwareOverlapsRule: Rule = (checked) => {
  const { design, hardware } = checked;
  const known = new Set<string>();
  const fixed = design.fittings.map((fitting): Verdict => {
    for (const { id } of fitting.hardware) known.add(id);
    // Of two that meet, the later one tells.
    const others = [...design.parts, ...hardware.filter(({ id, joint }) => joint !== null || known.has(id))];
    return verdict(checked, fitting, fitting.hardware, others);
  });
  const hinges = design.joints.flatMap((joint): readonly Verdict[] => {
    const own = joint.kind === "hinged" ? hardware.filter((each) => each.joint === joint.id) : [];
    return own.length === 0 ? [] : [verdict(checked, joint, own, design.parts)];
  });
  return [...fixed, ...hinges];
};

function verdict(
  { print }: Checked,
  subject: { readonly id: string; readonly at: Span },
  hardware: readonly Hardware[],
  others: readonly (Part | Hardware)[],
): Verdict {
  const pairs = hardware.flatMap((own) =>
    others
      .filter(({ id }) => id !== own.id)
      .map((other) => ({ own, other, depth: overlapDepth(own.solid, other.solid) })),
  );
  const [deepest] = pairs.toSorted((a, b) => b.depth - a.depth);
  const depth = rational(Math.max(0, Math.round(deepest?.depth ?? 0)));
  const check = {
    ...{ rule: "hardware-overlaps", subject: subject.id, basis: "geometry" },
    ...{ value: toMillimetres(depth), limit: toMillimetres(millimetres(1, 100)), unit: "mm" },
  };
  if (!deepest || deepest.depth <= TOLERANCE) return { check: { ...check, verdict: "holds" } };
  const { own, other } = deepest;
  const named = "item" in other ? `the ${other.item.kind} on ${other.carriedBy}` : other.id;
  const args = { item: own.item.kind, part: own.carriedBy, other: named, by: print(depth) };
  return { check: { ...check, verdict: "fails" }, finding: hardwareOverlaps(subject.at, args) };
}
