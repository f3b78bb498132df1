/** What a mitred part reaches round: a base or a moulding that is put on piece by piece. */
import { absolute, add, divide, type Length, multiply, rational, subtract } from "../../units/index.ts";
import { type AxisIndex, extent, INDICES, indexOf } from "../design/space.ts";
import type { Between, Feature, Part } from "../design.ts";
import { boxOfPiece, lieBeside } from "./steps/bounding.ts";
import { isNear } from "./tight.ts";

/** Between which outer faces of a body the heels of both mitres of a part lie, where it lies against that body; null where it does not. */
export function roundIn(part: Part, size: Between["size"], body: readonly Part[]): Between | null {
  if (size !== "length") return null;
  const axis = indexOf(part.axes.length);
  const [low, high] = [mitreAt(part, axis, false), mitreAt(part, axis, true)];
  if (!low || !high || low.side !== high.side || low.inner !== high.inner) return null;
  const face = part.body[low.inner ? "high" : "low"][low.side];
  const against = body.flatMap((other) =>
    other.solid.pieces
      .map(boxOfPiece)
      .flatMap((box) =>
        isNear(box[low.inner ? "low" : "high"][low.side], face) && lieBeside(part.body, box, low.side)
          ? [{ other, box }]
          : [],
      ),
  );
  const [first] = against.filter(({ box }) => isNear(box.low[axis], add(part.body.low[axis], low.lost)));
  const [last] = against.filter(({ box }) => isNear(box.high[axis], subtract(part.body.high[axis], high.lost)));
  return first && last ? { size, parts: [first.other.id, last.other.id], round: true } : null;
}

/** Which part, itself cut round something, a part lies on and ends flush with, mitred as that is; null where there is none. */
export function flushOn(part: Part, size: Between["size"], round: readonly Part[]): Between | null {
  if (size !== "length") return null;
  const axis = indexOf(part.axes.length);
  if (!mitreAt(part, axis, false) || !mitreAt(part, axis, true)) return null;
  const under = round.find(
    (other) =>
      indexOf(other.axes.length) === axis &&
      isNear(other.body.low[axis], part.body.low[axis]) &&
      isNear(other.body.high[axis], part.body.high[axis]) &&
      INDICES.some(
        (i) =>
          i !== axis &&
          lieBeside(part.body, other.body, i) &&
          (isNear(part.body.low[i], other.body.high[i]) || isNear(part.body.high[i], other.body.low[i])),
      ),
  );
  return under ? { size, parts: [under.id, under.id], flush: true } : null;
}

interface Mitre {
  /** The direction in which it is shorter on one side, whether that is the high one, and by how much. */
  readonly side: AxisIndex;
  readonly inner: boolean;
  readonly lost: Length;
}

/** The mitre of an end of a part, but for one that only a tenon has. */
function mitreAt(part: Part, axis: AxisIndex, isHigh: boolean): Mitre | null {
  const isTenon = ({ for: joint }: { readonly for: string | null }): boolean =>
    part.features.some((other) => other.kind === "tenon" && other.for === joint);
  for (const mitre of part.features) {
    if (!isMitre(mitre) || isTenon(mitre) || mitre.normal[axis] === 0 || mitre.normal[axis] > 0 !== isHigh) continue;
    const side = INDICES.find((i) => i !== axis && mitre.normal[i] !== 0);
    if (side === undefined) continue;
    const slope = divide(rational(mitre.normal[side]), rational(mitre.normal[axis]));
    return { side, inner: mitre.normal[side] > 0, lost: absolute(multiply(extent(part.body, side), slope)) };
  }
  return null;
}

type MitreFeature = Extract<Feature, { readonly normal: unknown; readonly for: unknown }>;
const isMitre = (feature: Feature): feature is MitreFeature => feature.kind === "mitre" && "normal" in feature;
