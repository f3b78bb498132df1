/** The ways in which a body can be turned so that it fills the same place. */

import type { Vec } from "../../../../geometry/index.ts";
import { type Movement, turnVec } from "../../../../geometry/transform.ts";
import { equal, type Rational, subtract } from "../../../../units/rational.ts";
import { enclosing, extent, indexOf, middle, triple } from "../../../design/space.ts";
import type { Box, Part } from "../../../design.ts";

/** What is rigid in a step: a part, or parts that were put together before. */
export interface Body {
  readonly parts: readonly Part[];
  readonly box: Box;
}

export const bodyOf = (parts: readonly [Part, ...Part[]]): Body => ({
  parts,
  box: parts.map(({ body }) => body).reduce(enclosing),
});

/** Over each of the three directions, half a turn. */
const HALF_TURNS = [
  [1, -1, -1],
  [-1, 1, -1],
  [-1, -1, 1],
] as const satisfies readonly Movement["sign"][];

/** By a half turn each way. */
export const halfTurnsOf = (box: Box): readonly Movement[] => HALF_TURNS.map((sign) => about(box, [0, 1, 2], sign));

/** By half turns; of a single part whose section is square by quarters about its length as well. */
export function turnsOf({ parts, box }: Body): readonly Movement[] {
  const [part, ...more] = parts;
  const half = halfTurnsOf(box);
  if (!part || more.length > 0) return half;
  const [a, b, c] = [indexOf(part.axes.width), indexOf(part.axes.thickness), indexOf(part.axes.length)];
  if (!equal(extent(box, a), extent(box, b))) return half;
  const from = triple((i) => (i === a ? b : i === b ? a : c));
  // Two places change: an odd number of signs does with them.
  const signs = [-1, 1].flatMap((one) => [-1, 1].map((other) => [one, other] as const));
  return [
    ...half,
    ...signs.map(([one, other]) =>
      about(box, from, triple((i) => (i === a ? one : i === b ? other : -one * other)) as Movement["sign"]),
    ),
  ];
}

/** The middle of the box stays. */
function about(box: Box, from: Movement["from"], sign: Movement["sign"]): Movement {
  const shift = (i: 0 | 1 | 2): Rational => {
    const old = middle(box, from[i]);
    return subtract(middle(box, i), sign[i] === 1 ? old : { n: -old.n, d: old.d });
  };
  return { from, sign, shift: [shift(0), shift(1), shift(2)] };
}

/** The same turn about the middle of a box. */
export const aboutMiddle = (box: Box, { from, sign }: Movement): Movement => about(box, from, sign);

/** The turn that brings back what was turned. */
export function backOf({ from, sign }: Movement, { box }: Body): Movement {
  const where = triple((i) => from.indexOf(i) as 0 | 1 | 2);
  return about(
    box,
    where,
    triple((i) => sign[where[i]]),
  );
}

/** Whether a direction is the same after some turns. */
export function keeps(turns: readonly Movement[], way: Vec): boolean {
  const to = turns.reduce((so, turn) => turnVec(so, turn), way);
  return to.every((c, i) => Math.abs(c - (way[i] as number)) < 1e-6);
}
