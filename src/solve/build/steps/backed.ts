/** What is hammered into lies on something: wood that hangs in the air springs, and its joints take the blows. */
import { dot } from "../../../geometry/vec.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { less, subtract, toNumber } from "../../../units/rational.ts";
import { axisOf } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { lieBeside } from "./bounding.ts";
import { bottomOf, boxOf, lowestOf, topOf } from "./box-of.ts";
import { definite, type Work } from "./draft.ts";
import { STEEP } from "./lying.ts";
import { isStruck, type Move, togetherAfter } from "./moves.ts";
import { BLOCKS, standingOn } from "./resting.ts";
import { onceLaid, type Sentence } from "./sentence.ts";
import { groupedBy } from "./wishes/own-key.ts";

/** Less is nothing. */
const NEAR = UNITS_PER_MM;

/** Blocks under what takes nails from above, and nothing under it on the bench. Common practice, no source. */
export function backedTexts(work: Work, moves: readonly Move[], up: Direction): readonly Sentence[] {
  const [first] = moves;
  if (!first || first.starts) return [];
  const there = first.present;
  const bench = lowestOf(work, there, up);
  const on = standingOn(work, there, up);
  const struck = moves.flatMap((move) =>
    move.work.flatMap(({ drives }) =>
      drives.filter((drive) => isStruck(drive) && dot(drive.fastener.direction, up) < -STEEP),
    ),
  );
  const taking = [...new Set(struck.map(({ fastener }) => fastener.into))].filter((id) => there.includes(id));
  const level = (id: string) => subtract(bottomOf(boxOf(work.part(id)), up), bench);
  const isBacked = (id: string, seen: readonly string[] = []): boolean =>
    toNumber(level(id)) < NEAR ||
    on?.blocked.includes(id) === true ||
    there.some((other) => !seen.includes(other) && liesOn(work, id, other, up) && isBacked(other, [...seen, id]));
  // What is higher up is carried by the frame or case that it belongs to.
  const bare = taking.filter((id) => !isBacked(id) && !less(BLOCKS, level(id)));
  return groupedBy(bare, (id) => work.print(level(id))).map((own) => {
    const them = own.length > 1 ? "they take" : "it takes";
    return onceLaid(
      ["blocks"],
      `Lay blocks ${work.print(level(own[0] as string))} high under ${definite(work, own)} too, near where the hammer strikes: ${them} the blows, and nothing else is under ${own.length > 1 ? "them" : "it"}.`,
    );
  });
}

/**
 * The same where the work is turned so that each of several sides lies uppermost. `sides`: what is driven, with what points up then. What nothing
 * carries, under all that takes the blows.
 */
export function backedInTurn(
  work: Work,
  moves: readonly Move[],
  sides: readonly (readonly [readonly string[], Direction])[],
): readonly string[] {
  const all = togetherAfter(moves);
  const bare = sides.flatMap(([taking, up]) => {
    const bench = lowestOf(work, all, up);
    const level = (id: string) => subtract(bottomOf(boxOf(work.part(id)), up), bench);
    const blocked = standingOn(work, all, up)?.blocked ?? [];
    const under = taking.map((id) => lowestUnder(work, all, id, up));
    // Blocks that the whole stands on are told by themselves.
    const isLow = (id: string): boolean => toNumber(level(id)) >= NEAR && !less(BLOCKS, level(id));
    return under
      .filter((feet) => feet.every((id) => isLow(id) && !blocked.includes(id)))
      .flat()
      .map((id) => ({ id, by: work.print(level(id)) }));
  });
  return groupedBy(bare, ({ by }) => by).map((own) => {
    const ids = [...new Set(own.map(({ id }) => id))];
    const when = ids.length > 1 ? "as each comes to lie below" : "when it lies below";
    return `Put packing ${own[0]?.by} thick under ${definite(work, ids)} ${when}, where the hammer strikes above: it takes the blows, and nothing else is under it.`;
  });
}

/** What a part lies on, down to what lies on nothing else. */
function lowestUnder(work: Work, all: readonly string[], id: string, up: Direction): readonly string[] {
  const reached = new Set([id]);
  for (const each of reached) for (const other of all) if (liesOn(work, each, other, up)) reached.add(other);
  return [...reached].filter((each) => !all.some((other) => liesOn(work, each, other, up)));
}

/** Whether one touches another from above. */
function liesOn(work: Work, id: string, other: string, up: Direction): boolean {
  if (id === other) return false;
  const [own, under] = [boxOf(work.part(id)), boxOf(work.part(other))];
  return Math.abs(toNumber(subtract(bottomOf(own, up), topOf(under, up)))) < NEAR && lieBeside(own, under, axisOf(up));
}
