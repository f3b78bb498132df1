/** Strips and rails that are glued along a board that lies flat, and bend with it. Millimetres. */
import { UNITS_PER_MM } from "../../../../units/length.ts";
import { type AxisIndex, axisAt } from "../../../design/space.ts";
import type { Design, Joint, Part } from "../../../design.ts";
import type { Rectangle } from "./beam.ts";
import { bodyOf } from "./body.ts";
import type { Span } from "./span.ts";

/** At its ends a beam hardly bends: a strip may end a little before the supports. Common practice, no source. */
const COVERS = 0.9;

export function edgesOf(
  part: Part,
  along: AxisIndex,
  span: Span,
  { joints, parts, stock }: Design,
): readonly Rectangle[] {
  const reach = span.to - span.from;
  return joints.flatMap((joint): readonly Rectangle[] => {
    if (!joint.glue || joint.kind !== "fixed" || !joint.parts.includes(part.id)) return [];
    const [a, b] = joint.parts;
    const strip = parts.find(({ id }) => id === (a === part.id ? b : a));
    const stiffness = stock.find(({ name }) => name === strip?.stock)?.stiffness;
    if (!strip || !stiffness || strip.axes.length !== axisAt(along)) return [];
    if (touching(joint, along, span) < COVERS * reach) return [];
    const [[near, far], [low, high]] = [bodyOf(strip, along === 0 ? 1 : 0), bodyOf(strip, 2)];
    return [{ broad: far - near, low, high, modulus: 1000 * stiffness.along }];
  });
}

/** How much of a span a joint touches along. */
function touching({ contact }: Joint, along: AxisIndex, { from, to }: Span): number {
  const pieces = contact
    .flatMap(({ polygons }) => polygons)
    .map((polygon): readonly [number, number] => {
      const places = polygon.map((point) => point[along] / UNITS_PER_MM);
      return [Math.max(from, Math.min(...places)), Math.min(to, Math.max(...places))];
    })
    .toSorted(([a], [b]) => a - b);
  let [reached, so] = [from, 0];
  for (const [low, high] of pieces) {
    so += Math.max(0, high - Math.max(low, reached));
    reached = Math.max(reached, high);
  }
  return so;
}
