/** Dowels that a glue-up leaves standing out for a later one, just where clamps press. */

import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, less, max, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, faceOf, INDICES } from "../../design/space.ts";
import type { Fastener } from "../../design.ts";
import { series, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";

/** How far they stand out at most along an axis when these moves are done; zero where there are none. */
export const standingOut = (work: Work, moves: readonly Move[], axis: AxisIndex): Length =>
  outstanding(work, moves)
    .filter(({ peg }) => peg.direction[axis] !== 0)
    .map(({ past }) => past)
    .reduce(max, ZERO);

interface Outstanding {
  readonly peg: Fastener;
  readonly past: Length;
  /** "right": of the finished piece. */
  readonly side: string;
}

function outstanding(work: Work, moves: readonly Move[]): readonly Outstanding[] {
  const body = new Set(moves.flatMap(({ present, arriving }) => [...present, ...arriving]));
  const open = work.design.joints.filter(
    ({ method, parts }) =>
      method === "dowels" && parts.some((id) => body.has(id)) && !parts.every((id) => body.has(id)),
  );
  return open
    .flatMap(({ id }) => work.plan.chosen.get(id)?.fasteners ?? [])
    .filter(({ travelsWith }) => travelsWith !== null && body.has(travelsWith))
    .flatMap((peg): readonly Outstanding[] => {
      const hole = work.plan.holes.find((each) => each.for === peg.id && each.part === peg.travelsWith);
      const past = subtract(peg.length, hole?.stages.at(-1)?.depth ?? ZERO);
      if (!hole || !less(ZERO, past)) return [];
      const out = INDICES.reduce<AxisIndex>(
        (so, i) => (Math.abs(hole.direction[i]) > Math.abs(hole.direction[so]) ? i : so),
        0,
      );
      return [{ peg, past, side: faceOf(out, hole.direction[out] < 0) }];
    });
}

/** Dowels go into their blocks loosely, and clamps press on wood that stands past them. Common practice, no source. */
const ROOM = { inch: inches(1, 16), mm: millimetres(2) } as const;
const PAST = { inch: inches(1, 4), mm: millimetres(5) } as const;

/** "Dowels stand out 15/16 in on the right for what comes later": what the clamps press on then. */
export function blockText(work: Work, moves: readonly Move[]): readonly string[] {
  const all = outstanding(work, moves);
  if (all.length === 0) return [];
  const { units } = work.design;
  const past = all.map((each) => each.past).reduce(max);
  const thick = roundTo(add(past, ROOM[units]), PAST[units], "up");
  const bore = add(all.map(({ peg }) => peg.rod).reduce(max), ROOM[units]);
  const sides = series([...new Set(all.map(({ side }) => `the ${side}`))]);
  return [
    `Dowels stand out up to ${work.print(past)} on ${sides} for what comes later. Put a block under each clamp that presses there, at least ${work.print(thick)} thick, of offcuts in a stack, and bore it through, ${work.drill(bore)} wide, where a dowel is in its way: nothing may press on a dowel.`,
  ];
}
