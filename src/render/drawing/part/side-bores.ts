/** Bores that run across a view: two sides and a bottom, a countersink as the V that it is. */
import type { Vec } from "../../../geometry/types.ts";
import { plus, times } from "../../../geometry/vec.ts";
import type { Hole } from "../../../solve/design.ts";
import { toNumber } from "../../../units/index.ts";
import type { Spot } from "../drawing.ts";
import { toVec } from "../feature-box.ts";
import { heading } from "../ink.ts";
import type { Segment } from "../plate.ts";

type Stage = Hole["stages"][number];

/** So much narrower on either side for each unit of depth: the tangent of half of 82 degrees, the heads of ASME B18.6.1. */
const NARROWS = 0.8693;

/** How deep the cone of a hole is where it meets what is bored inside it; 0 without one. */
function coneOf({ stages }: Hole): number {
  const cone = stages.find((stage) => stage.cone);
  const throat = stages.find((stage) => !stage.cone);
  return cone ? (toNumber(cone.diameter) - (throat ? toNumber(throat.diameter) : 0)) / 2 / NARROWS : 0;
}

/** The lines of one stage: of a cone its two sides, of a bore its sides from there and its bottom. */
export function acrossView(hole: Hole, stage: Stage, spot: (p: Vec) => Spot, scale: number): readonly Segment[] {
  const at = (deep: number): Spot => spot(plus(toVec(hole.at), times(hole.direction, deep)));
  const wide = toNumber(stage.diameter);
  const deep = coneOf(hole);
  const [from, to] = stage.cone ? [at(0), at(deep)] : [at(deep), at(toNumber(stage.depth))];
  const { along, distance } = heading(from, to);
  if (distance < SPECK) return [];
  const side = ([x, y]: Spot, by: number): Spot => [x - along[1] * by, y + along[0] * by];
  const [r, end] = [(wide * scale) / 2, ((stage.cone ? wide - 2 * NARROWS * deep : wide) * scale) / 2];
  const sides: readonly Segment[] = [
    [side(from, r), side(to, end)],
    [side(to, -end), side(from, -r)],
  ];
  return stage.cone ? sides : [...sides, [side(to, r), side(to, -r)]];
}

/** In points. */
const SPECK = 0.1;
