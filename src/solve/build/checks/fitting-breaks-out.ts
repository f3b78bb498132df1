import { fittingBreaksOut } from "../../../findings/rules/fitting-breaks-out.ts";
import { inches, type Length, millimetres, toMillimetres } from "../../../units/length.ts";
import { add, half, less, max, min, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, axisAt, faceAxis, faceOf, INDICES } from "../../design/space.ts";
import type { Fitting, Hole, Part, Units } from "../../design.ts";
import type { Rule, Verdict } from "./check.ts";

/** Left beside a hole. Common practice, no source. */
const LEAST = millimetres(3);

/** What pulls at its screws says how far they stand from an edge, from their middle. */
function leastFor({ hardware: [first] }: Fitting): Length {
  const [edge, pilot] = ["edge", "pilot"].map((name) => first?.item.measures.get(name));
  return edge && pilot ? max(LEAST, subtract(edge, half(pilot))) : LEAST;
}
/** To which a remedy is rounded up. */
const STEP = { inch: inches(1, 16), mm: millimetres(1) } as const;

/** Wood beside a hole to the side of its part where there is least. */
interface Side {
  readonly left: Length;
  readonly axis: AxisIndex;
  readonly high: boolean;
}

/** Holes for what is fixed to a part stay inside of it. */
export const fittingBreaksOutRule: Rule = ({ design, print }) => {
  const parts = new Map(design.parts.map((part) => [part.id, part]));
  return design.fittings.flatMap((fitting): readonly Verdict[] => {
    const sides = fitting.holes.flatMap((hole) => {
      const part = parts.get(hole.part);
      return part && !part.turned ? [{ part, side: nearest(hole, part) }] : [];
    });
    const [first] = sides;
    if (!first) return [];
    const worst = sides.reduce((so, each) => (less(each.side.left, so.side.left) ? each : so), first);
    const { left, axis, high } = worst.side;
    const limit = leastFor(fitting);
    const check = {
      rule: "fitting-breaks-out",
      subject: fitting.id,
      value: toMillimetres(left),
      limit: toMillimetres(limit),
      unit: "mm",
      basis: "geometry; the least wood is common practice, no source",
    };
    if (!less(left, limit)) return [{ check: { ...check, verdict: "holds" } }];
    const finding = fittingBreaksOut(fitting.at, {
      item: fitting.hardware[0]?.item.kind ?? "",
      part: worst.part.id,
      side: faceOf(axis, high),
      left: left.n <= 0n ? null : print(left),
      least: print(limit),
      move: print(subtract(limit, left)),
      place: placeOf(fitting, worst.part, worst.side, limit, design.units, print),
    });
    return [{ check: { ...check, verdict: "fails" }, finding }];
  });
};

function nearest(hole: Hole, { body }: Part): Side {
  const widest = hole.stages.reduce((so, { diameter }) => (less(so, diameter) ? diameter : so), ZERO);
  const sides = INDICES.filter((axis) => Math.abs(hole.direction[axis]) < 0.5).flatMap((axis): readonly Side[] => [
    { left: subtract(subtract(hole.at[axis], body.low[axis]), half(widest)), axis, high: false },
    { left: subtract(body.high[axis], add(hole.at[axis], half(widest))), axis, high: true },
  ]);
  const least = sides.map(({ left }) => left).reduce(min);
  return sides.find(({ left }) => left === least) as Side;
}

/** The setting that would bring a fitting on so far, rounded to the safe side; null where no setting of its place moves it that way. */
function placeOf(
  { part, hardware, face }: Fitting,
  worst: Part,
  side: Side,
  limit: Length,
  units: Units,
  print: (length: Length) => string,
): string | null {
  const at = hardware.find(({ carriedBy }) => carriedBy === part)?.at[side.axis];
  if (at === undefined || faceAxis(face) === side.axis) return null;
  const { low, high } = worst.body;
  const from = side.high ? subtract(high[side.axis], at) : subtract(at, low[side.axis]);
  const enough = roundTo(add(from, subtract(limit, side.left)), STEP[units], "up");
  return `${axisAt(side.axis)}: ${worst.id}.${faceOf(side.axis, side.high)} ${side.high ? "-" : "+"} ${print(enough)}`;
}
