import type { Draft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { add, half, sign, subtract } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import type { Entry } from "../expand/entry.ts";
import { type AxisIndex, indexOf } from "../space.ts";
import type { Frame, Stance } from "./attitude.ts";
import type { Span } from "./span.ts";
import { rolesOf, type Statement } from "./statement.ts";

/** Where a part lies as it is cut, and where it would lie without rounding. */
export interface MarkedSpan extends Span {
  readonly exact: Span;
}

type Steps = Pick<Draft, "precision" | "fits">;

/** A size that can be marked: of thickness and width as the stock has them, nothing is taken. */
export function markable(
  entry: Entry,
  axis: AxisIndex,
  stance: Stance,
  { precision, fits }: Steps,
  exact: Length,
): Length {
  const { frame, statements } = stance;
  if (entry.draft.space || frame.thickness === axis || statements[axis].some(isOfStock)) return exact;
  const roles = rolesOf(statements[axis]);
  const between = roles.has("low") && roles.has("high");
  const outright = !between && isOutright(entry, axis, frame);
  const direction = entry.draft.rounded?.value ?? (outright ? "nearest" : "down");
  const step = between ? (fits ?? precision).value : precision.value;
  const size = roundTo(exact, step, direction);
  return sign(size) > 0 ? size : exact;
}

/** The span of a part as it is cut. What is left over lies at its upper end, unless that is where it was placed from. */
export function marked(entry: Entry, axis: AxisIndex, stance: Stance, steps: Steps, exact: Span): MarkedSpan {
  const size = markable(entry, axis, stance, steps, subtract(exact.high, exact.low));
  const roles = rolesOf(stance.statements[axis]);
  if (roles.has("low")) return { low: exact.low, high: add(exact.low, size), exact };
  if (roles.has("high")) return { low: subtract(exact.high, size), high: exact.high, exact };
  const middle = half(add(exact.low, exact.high));
  return { low: subtract(middle, half(size)), high: add(middle, half(size)), exact };
}

/** Whether a size is said as a measure, and not worked out from others, beside which it has to fit. */
const isOutright = ({ draft }: Entry, axis: AxisIndex, frame: Frame): boolean =>
  draft.placing.some(
    (place) =>
      ((place.word === "extent" && indexOf(place.axis) === axis) ||
        (place.word === "board" && frame[place.size] === axis)) &&
      (place.value.kind === "number" || place.value.kind === "measure"),
  );

const isOfStock = ({ role, key }: Statement): boolean => role === "extent" && key.startsWith("the stock's");
