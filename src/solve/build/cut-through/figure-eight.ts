/** A figure-eight fastener, cut across the edge that it lies in: its recess when that is bored, and the two screws when it is screwed on. */
import type { Length } from "../../../units/length.ts";
import { absolute, half, less, multiply, rational, subtract, toNumber } from "../../../units/rational.ts";
import type { Build, BuiltPart } from "../../build.ts";
import { type AxisIndex, axisOf, faceOf, shift, thirdAxis, triple, unit } from "../../design/space.ts";
import type { Fastener, Hole, Point } from "../../design.ts";
import type { CutThrough, Rod } from "../model/cut-through.ts";

type Of = Pick<Build, "parts" | "fasteners">;

/** Of a recess that is open to a side; null for other holes. */
export function recessCut({ parts, fasteners }: Of, hole: Hole): CutThrough | null {
  const lie = lieOf(hole, parts, fasteners);
  if (!lie) return null;
  const { edge, deep, across, sign, screw, part } = lie;
  const rim = (by: 1 | -1): Point => shift(hole.at, across, multiply(rational(by * sign), half(edge.diameter)));
  const up = unit(deep, -hole.direction[deep]);
  const skin = sideOf(part, across, sign);
  const bottom = shift(rim(-1), deep, multiply(rational(hole.direction[deep]), edge.depth));
  return {
    what: "a recess",
    ...plane(lie, hole, screw),
    bores: [hole],
    rods: [],
    sizes: [
      {
        says: `from the ${faceOf(across, sign > 0)} of ${part.mark} to the middle of the recess`,
        size: absolute(subtract(skin, hole.at[across])),
        isPlace: true,
        spans: [{ from: hole.at, to: triple((i) => (i === across ? skin : hole.at[i])), off: up }],
      },
      {
        says: "how wide the recess is",
        size: edge.diameter,
        spans: [{ from: rim(-1), to: rim(1), off: up }],
      },
      {
        says: "how deep the recess is",
        size: edge.depth,
        spans: [{ from: rim(-1), to: bottom, off: unit(across, -sign) }],
      },
    ],
  };
}

/** With the recess that a screw's fastener lies in; null for a screw without one. */
export function figureEightCut({ parts, fasteners }: Of, holes: readonly Hole[], screw: Fastener): CutThrough | null {
  const own = holes.filter((hole) => hole.for === screw.id);
  const hole = own.find(({ kind }) => kind === "recess");
  const lie = hole && lieOf(hole, parts, fasteners);
  const hold = parts.find(({ id }) => id === screw.into);
  if (!hole || !lie || !hold) return null;
  const { edge, inner, deep, across, sign, part } = lie;
  const radius = half(edge.diameter);
  const middle = multiply(rational(hole.direction[deep]), half(edge.depth));
  const end = (at: Length, way: 1 | -1): Point =>
    shift(
      shift(
        triple((i) => (i === across ? at : hole.at[i])),
        across,
        multiply(rational(way * sign), radius),
      ),
      deep,
      middle,
    );
  const plate: Rod = {
    from: end(hole.at[across], -1),
    to: end(screw.head.at[across], 1),
    diameter: edge.depth,
    name: "figure-eight fastener",
  };
  const way = screw.direction[deep];
  const short: Rod = {
    from: hole.at,
    to: shift(hole.at, deep, multiply(rational(hole.direction[deep]), inner.depth)),
    diameter: inner.diameter,
  };
  const long: Rod = {
    from: screw.head.at,
    to: shift(screw.head.at, deep, multiply(rational(way), screw.length)),
    diameter: screw.rod,
    head: screw.head,
  };
  return {
    what: "a figure-eight fastener",
    ...plane(lie, hole, screw),
    bores: [hole],
    rods: [plate, short, long],
    sizes: [
      {
        says: `from the screw in ${part.mark} to the one in ${hold.mark}, square to the face of ${part.mark} that the recess is open to`,
        size: absolute(subtract(screw.head.at[across], hole.at[across])),
        spans: [
          {
            from: short.to,
            to: triple((i) => (i === across ? screw.head.at[i] : short.to[i])),
            off: unit(deep, -way),
          },
        ],
      },
    ],
  };
}

interface Lie {
  readonly edge: Hole["stages"][number];
  readonly inner: Hole["stages"][number];
  readonly part: BuiltPart;
  readonly screw: Fastener;
  /** Into the edge; out of the recess, and which way. */
  readonly deep: AxisIndex;
  readonly across: AxisIndex;
  readonly sign: 1 | -1;
}

function lieOf(hole: Hole, parts: readonly BuiltPart[], fasteners: readonly Fastener[]): Lie | null {
  const screw = fasteners.find(({ id }) => id === hole.for);
  const part = parts.find(({ id }) => id === hole.part);
  const [edge, inner] = hole.stages;
  if (hole.kind !== "recess" || !screw || !part || part.turned || !edge || !inner) return null;
  const deep = axisOf(hole.direction);
  const far = (i: AxisIndex): Length => absolute(subtract(screw.head.at[i], hole.at[i]));
  const [one, other] = ([0, 1, 2] as const).filter((i) => i !== deep) as [AxisIndex, AxisIndex];
  const across = less(far(one), far(other)) ? other : one;
  if (toNumber(far(across)) === 0) return null;
  const sign = less(hole.at[across], screw.head.at[across]) ? 1 : -1;
  return { edge, inner, part, screw, deep, across, sign };
}

const plane = ({ deep, across, part }: Lie, { at }: Hole, { into }: Fastener) => {
  const axis = thirdAxis(deep, across);
  return { axis, at: at[axis], parts: [part.id, into] as const, hardware: [], rounds: [] };
};

const sideOf = ({ body }: BuiltPart, axis: AxisIndex, sign: 1 | -1): Length => (sign > 0 ? body.high : body.low)[axis];
