/** Battens under a board that lies flat: what is joined to nothing else, and runs along its span. Millimetres. */
import { type AxisIndex, axisAt } from "../../../design/space.ts";
import type { Design, Part } from "../../../design.ts";
import { secondMoment } from "./beam.ts";
import { bodyOf } from "./body.ts";
import type { Span } from "./span.ts";

/** How much of a span a batten covers at least to count. Common practice, no source. */
const COVERS = 0.8;

/** What they add to the stiffness of the board, N·mm²: each bends by itself, since its screws let the board move. */
export function battensUnder(part: Part, along: AxisIndex, { from, to }: Span, design: Design): number {
  const beside = along === 0 ? 1 : 0;
  return design.parts.reduce((so, each) => {
    const own = design.joints.filter(({ parts }) => parts.includes(each.id));
    const only = own.length > 0 && own.every(({ kind, parts }) => kind !== "resting" && parts.includes(part.id));
    const stiffness = design.stock.find(({ name }) => name === each.stock)?.stiffness;
    if (each.id === part.id || !only || !stiffness || each.axes.length !== axisAt(along)) return so;
    const [[start, end], [near, far], [low, high]] = [bodyOf(each, along), bodyOf(each, beside), bodyOf(each, 2)];
    const covers = Math.min(end, to) - Math.max(start, from) >= COVERS * (to - from);
    return covers ? so + 1000 * stiffness.along * secondMoment(far - near, high - low) : so;
  }, 0);
}
