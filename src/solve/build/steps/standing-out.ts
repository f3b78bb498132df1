/** Dowels that a glue-up leaves standing out for a later one, just where clamps press. */

import { inches, type Length, millimetres } from "../../../units/length.ts";
import { add, less, max, subtract, ZERO } from "../../../units/rational.ts";
import { roundTo } from "../../../units/round.ts";
import { type AxisIndex, faceOf, INDICES } from "../../design/space.ts";
import type { Face } from "../../design.ts";
import { roomBeside, type Standing } from "./block-room.ts";
import { hasItsDowels } from "./dowelled.ts";
import { listed, series, type Work } from "./draft.ts";
import type { Move } from "./moves.ts";
import { type Sentence, sentence } from "./sentence.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** How far they stand out at most of a side of a part when these moves are done; zero where there are none. */
export const standsOutOn = (work: Work, moves: readonly Move[], part: string, side: Face): Length =>
  outstanding(work, moves)
    .filter((each) => each.part === part && each.side === side)
    .map(({ past }) => past)
    .reduce(max, ZERO);

interface Outstanding extends Standing {
  readonly past: Length;
  /** "right": of the finished piece. */
  readonly side: Face;
}

function outstanding(work: Work, moves: readonly Move[]): readonly Outstanding[] {
  const together = moves.flatMap(({ present, arriving }) => [...present, ...arriving]);
  const body = new Set(together);
  const open = work.design.joints.filter(
    ({ method, parts }) =>
      method === "dowels" && parts.some((id) => body.has(id)) && !parts.every((id) => body.has(id)),
  );
  return open
    .flatMap(({ id }) => work.plan.chosen.get(id)?.fasteners ?? [])
    .filter(({ travelsWith }) => travelsWith !== null && body.has(travelsWith))
    .filter(({ travelsWith }) => hasItsDowels(work, travelsWith ?? "", together))
    .flatMap((peg): readonly Outstanding[] => {
      const hole = work.plan.holes.find((each) => each.for === peg.id && each.part === peg.travelsWith);
      const past = subtract(peg.length, hole?.stages.at(-1)?.depth ?? ZERO);
      if (!hole || !less(ZERO, past)) return [];
      const out = INDICES.reduce<AxisIndex>(
        (so, i) => (Math.abs(hole.direction[i]) > Math.abs(hole.direction[so]) ? i : so),
        0,
      );
      return [{ peg, past, part: hole.part, out, at: hole.at, side: faceOf(out, hole.direction[out] < 0) }];
    });
}

/** Dowels go into their blocks loosely, and clamps press on wood that stands past them; a block beside them is no narrower than this. Common practice, no source. */
const ROOM = { inch: inches(1, 16), mm: millimetres(2) } as const;
const PAST = { inch: inches(1, 4), mm: millimetres(5) } as const;
const BLOCK = { inch: inches(1), mm: millimetres(25) } as const;

/** "Dowels stand out 15/16 in on the right for what comes later": what the clamps press on then, and where; `pressed`: the sides that any of them press on. */
export function blockText(
  work: Work,
  moves: readonly Move[],
  pressed: readonly { readonly part: string; readonly side: Face }[],
): readonly Sentence[] {
  const all = outstanding(work, moves).filter(({ part, side }) =>
    pressed.some((each) => each.part === part && each.side === side),
  );
  if (all.length === 0) return [];
  const { units } = work.design;
  const past = all.map((each) => each.past).reduce(max);
  const thick = roundTo(add(past, ROOM[units]), PAST[units], "up");
  const sides = series([...new Set(all.map(({ side }) => `the ${side}`))]);
  const rooms = groupedBy(all, ({ part, side }) => `${part} ${side}`).map((own) => ({
    part: own[0]?.part ?? "",
    width: roundTo(roomBeside(work, moves, own), PAST[units], "down"),
  }));
  const beside = groupedBy(
    rooms.filter(({ width }) => !less(width, BLOCK[units])),
    ({ width }) => work.print(width),
  ).map((own) => `${work.print(own[0]?.width ?? ZERO)} wide on ${listed(work, unique(own))}`);
  const bored = unique(rooms.filter(({ width }) => less(width, BLOCK[units])));
  const bore = add(all.map(({ peg }) => peg.rod).reduce(max), ROOM[units]);
  return [
    `Dowels stand out up to ${work.print(past)} on ${sides} for what comes later, and nothing may press on a dowel. Put a block at least ${work.print(thick)} thick, of offcuts in a stack, under each clamp that presses there${beside.length === 0 ? "" : `, in line with the joint, beside the dowels or between them: there is room for blocks up to ${series(beside)}`}.`,
    ...(bored.length === 0
      ? []
      : [
          sentence(
            `On ${listed(work, bored)} there is no room beside them in line with the joint: bore the block through ${work.drill(bore)} wide where a dowel stands, and set it over that.`,
            { uses: [{ of: "bit for blocks", size: work.drill(bore) }] },
          ),
        ]),
  ];
}

const unique = (rooms: readonly { readonly part: string }[]): readonly string[] => [
  ...new Set(rooms.map(({ part }) => part)),
];
