import { tenonsDoNotMeet } from "../../../findings/rules/tenons-do-not-meet.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, less, multiply, rational, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Box, Direction, Point } from "../../design.ts";
import { featureBox } from "../shapes/feature-box.ts";
import { boxFeature, type CutPlane, planeCut } from "../shapes/workpiece.ts";
import { type AxisIndex, axisOf, extent, INDICES, triple, withAxis } from "../space.ts";
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
 * that more than 1 mm stays between them. What would lose all of its end is made shorter from the start, so that what is measured from
 * that end holds before it is cut and after. A tenon that meets no other, nor its mortise another mortise, is told of.
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
      const [short, other] = [shortened(a, b, bench, context), shortened(b, a, bench, context)];
      cutBack(short, b, bench, context);
      cutBack(other, a, bench, context);
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

/** The edge of a tenon where the other arrives. */
const entry = ({ box }: Tenon, { axis, sign }: Tenon): Length => (sign > 0 ? box.low[axis] : box.high[axis]);

/** As long as its end reaches when the corner is off it, on the cheek that loses nothing else. */
function shortened(a: Tenon, b: Tenon, bench: Bench, context: JoineryContext): Tenon {
  const { box, axis, sign, joining } = a;
  const { id } = joining.join;
  const feature = bench.piece(id).features.find((each) => each.kind === "tenon" && each.for === joining.id);
  const shoulder = sign > 0 ? box.low[axis] : box.high[axis];
  const far = (at: Length): Length => multiply(subtract(at, shoulder), rational(sign));
  const reach = subtract(add(far(entry(b, a)), extent(box, b.axis)), backOf(context));
  const long = roundTo(reach, context.precision, "down");
  if (!feature || !("size" in feature) || !less(long, extent(box, axis)) || !less(ZERO, long)) return a;
  const end = add(shoulder, multiply(long, rational(sign)));
  const after: Box =
    sign > 0 ? { ...box, high: withAxis(box.high, axis, end) } : { ...box, low: withAxis(box.low, axis, end) };
  const along = axisOf(feature.along);
  bench.changeTongue(id, feature, [box, after], boxFeature("tenon", joining.id, after, { axis, sign }, along));
  return { ...a, box: after };
}

/** Cuts the corner off tenon `a` that lies beyond the plane through the edge where the two first meet. */
function cutBack(a: Tenon, b: Tenon, bench: Bench, context: JoineryContext): void {
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
