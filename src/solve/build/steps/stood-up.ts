/** Boards that stand on their narrow sides under the first part that is driven into them. */
import { dot } from "../../../geometry/vec.ts";
import { toNumber } from "../../../units/rational.ts";
import { axisOf, extent, otherAxes } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { boxOf } from "./box-of.ts";
import { capital, definite, type Work } from "./draft.ts";
import { STEEP } from "./lying.ts";
import { isStruck, type Move, togetherAfter } from "./moves.ts";
import { isSteady } from "./resting.ts";

/** "The left end (D) and the right end (E) would fall over: ...", in the step that begins a body. Common practice, no source. */
export function stoodUpTexts(work: Work, moves: readonly Move[], up: Direction): readonly string[] {
  if (moves[0]?.starts !== true) return [];
  const drives = moves.flatMap((move) => move.work.flatMap((each) => each.drives));
  const down = drives.filter(({ fastener }) => dot(fastener.direction, up) < -STEEP);
  const under = new Set(down.map(({ fastener }) => fastener.into));
  const joints = moves.flatMap((move) => move.work.map(({ joint }) => joint.parts));
  // Those that are joined to each other stand together.
  const alone = (id: string): boolean => !joints.some((ids) => ids.includes(id) && ids.every((own) => under.has(own)));
  const falls = (id: string): boolean => isSlender(work, id, up) || !isSteady(work, [id], up);
  const free = togetherAfter(moves).filter((id) => under.has(id) && alone(id) && falls(id));
  if (free.length === 0) return [];
  const [each, them, they] = free.length > 1 ? ["each", "them", "they are"] : ["it", "it", "it is"];
  const fixed = down.some(isStruck) ? "nailed" : "screwed";
  return [
    `${capital(definite(work, free))} would fall over: clamp a block to the foot of ${each}, or let a second person hold ${them}, until ${they} ${fixed}.`,
  ];
}

/** A drill pushes more than a tenth of the weight of a small board. Common practice, no source. */
const SLENDER = 6;

/** Whether a part stands on its end or edge, many times as high as that is wide. */
function isSlender(work: Work, id: string, up: Direction): boolean {
  const box = boxOf(work.part(id));
  const high = axisOf(up);
  const foot = otherAxes(high).map((axis) => toNumber(extent(box, axis)));
  return toNumber(extent(box, high)) > SLENDER * Math.min(...foot);
}
