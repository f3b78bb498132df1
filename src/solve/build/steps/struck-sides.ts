/** The sides that are struck level as the work lies: it is turned for them where that can be done. */
import { dot } from "../../../geometry/vec.ts";
import type { Direction } from "../../design.ts";
import type { JointWork } from "../order/plan.ts";
import type { Work } from "./draft.ts";
import { against, LEVEL } from "./lying.ts";
import { type Move, togetherAfter } from "./moves.ts";
import { standingOn } from "./resting.ts";
import { sideOf } from "./words/driving.ts";
import { liftCaution } from "./words/lifting.ts";

/** Each side by its name, and what points up when it lies uppermost. */
export const sidesOf = (level: JointWork["drives"], up: Direction): readonly (readonly [string, Direction])[] => [
  ...new Map(level.map((drive) => [sideOf(drive.fastener, up), against(drive.fastener.direction)])),
];

/** Whether work that is struck from several sides is turned, so that each lies uppermost: light enough for that, and firm on each. */
export function isTurnedFor(work: Work, moves: readonly Move[], up: Direction): boolean {
  const struck = moves
    .flatMap((move) => move.work.flatMap(({ drives }) => drives))
    .filter(({ tool }) => tool === "hammer");
  const sides = sidesOf(
    struck.filter(({ fastener }) => Math.abs(dot(fastener.direction, up)) < LEVEL),
    up,
  );
  const all = togetherAfter(moves);
  return (
    sides.length > 1 &&
    liftCaution(work, all).length === 0 &&
    sides.every(([, way]) => standingOn(work, all, way) !== null)
  );
}
