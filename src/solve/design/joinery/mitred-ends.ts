import { tenonsDoNotMeet } from "../../../findings/rules/tenons-do-not-meet.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, less, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import type { Box, Direction, Point } from "../../design.ts";
import { featureBox } from "../shapes/feature-box.ts";
import { type CutPlane, planeCut } from "../shapes/workpiece.ts";
import { type AxisIndex, INDICES, triple } from "../space.ts";
import { boxRegion } from "./corner.ts";
import type { Bench, JoineryContext, Joining } from "./work.ts";

/** A tenon in its leg: the joint, its wood, and the way it goes in. */
interface Tenon {
  readonly joining: Joining;
  readonly box: Box;
  readonly axis: AxisIndex;
  readonly sign: 1 | -1;
}

/**
 * Tenons whose ends are to be mitred, where two of them come near each other in one leg: both lose the corner beyond a plane at 45°, so
 * that more than 1 mm stays between them. A tenon that meets no other, nor its mortise another mortise, is told of.
 */
export function mitreEnds(joinings: readonly Joining[], bench: Bench, context: JoineryContext): void {
  const wanted = joinings.filter(({ draft }) => draft.tenon?.ends?.value === "mitred");
  const tenons = wanted.flatMap((joining) => tenonOf(joining, bench) ?? []);
  const met = new Set<Joining>();
  for (const [i, a] of tenons.entries())
    for (const b of tenons.slice(i + 1)) {
      if (a.joining.to !== b.joining.to || a.axis === b.axis || !near(a.box, b.box, MORTISES)) continue;
      met.add(a.joining).add(b.joining);
      if (!near(a.box, b.box, KEEP)) continue;
      cutBack(a, b, bench, context);
      cutBack(b, a, bench, context);
    }
  const lonely = new Set(
    wanted.filter(({ draft }) => !wanted.some((other) => other.draft === draft && met.has(other))),
  );
  for (const draft of new Set([...lonely].map((joining) => joining.draft)))
    context.report(
      tenonsDoNotMeet(draft.tenon?.ends?.at ?? draft.at, {
        part: [...lonely].find((joining) => joining.draft === draft)?.join.id ?? "",
      }),
    );
}

function tenonOf(joining: Joining, bench: Bench): Tenon | null {
  const feature = bench
    .piece(joining.join.id)
    .features.find((each) => each.kind === "tenon" && each.for === joining.id);
  if (!feature || !("size" in feature) || joining.touch.kind !== "faces") return null;
  const { axis, sign } = joining.touch;
  return { joining, axis, sign, box: featureBox(feature) };
}

const KEEP = millimetres(1);

/** Tenons so near that their mortises, each a little deeper, have too little wood between them: that is told of the leg. */
const MORTISES = millimetres(42, 10);

const near = (a: Box, b: Box, by: Length): boolean =>
  INDICES.every((i) => less(a.low[i], add(b.high[i], by)) && less(b.low[i], add(a.high[i], by)));

/** Each end stands back this far along its own length: 1/32 in or 0.75 mm on either side leave more than 1 mm between them. */
const backOf = ({ units }: JoineryContext): Length => (units === "inch" ? inches(1, 32) : millimetres(3, 4));

/** Cuts the corner off tenon `a` that lies beyond the plane through the edge where the two first meet. */
function cutBack(a: Tenon, b: Tenon, bench: Bench, context: JoineryContext): void {
  // The edge of each where the other arrives.
  const entry = ({ box }: Tenon, { axis, sign }: Tenon): Length => (sign > 0 ? box.low[axis] : box.high[axis]);
  const back = multiply(backOf(context), rational(-a.sign));
  const at: Point = triple((i) => (i === a.axis ? add(entry(b, a), back) : i === b.axis ? entry(a, b) : a.box.low[i]));
  // Nothing of a short tenon lies beyond.
  const end = a.sign > 0 ? a.box.high[a.axis] : a.box.low[a.axis];
  if (!less(ZERO, multiply(subtract(end, at[a.axis]), rational(a.sign)))) return;
  const normal = triple((i) => (i === a.axis ? rational(a.sign) : i === b.axis ? rational(-b.sign) : ZERO));
  const plane = planeCut(at, normal);
  const [x, y, z] = plane.normal;
  const beyond: CutPlane = { point: plane.point, normal: [-x, -y, -z] };
  bench.cut(
    a.joining.join.id,
    { kind: "region", planes: [...boxRegion(a.box), beyond] },
    {
      kind: "mitre",
      for: a.joining.id,
      origin: plane.point,
      normal: plane.normal.map(Number) as unknown as Direction,
    },
  );
}
