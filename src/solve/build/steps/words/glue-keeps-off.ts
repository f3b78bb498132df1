/** Where glue is told in the same step as wood that must move: what that lies on gets none. */
import type { Joint } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import { woodMoves } from "./still.ts";

export function glueKeepsOff(work: Work, joints: readonly Joint[], texts: readonly string[]): readonly string[] {
  const sliding = joints.filter(({ glue, still }) => !glue && still && woodMoves(work, still.part));
  const glued = new Set(joints.filter(({ glue }) => glue).flatMap(({ parts }) => parts));
  const free = [
    ...new Set(sliding.flatMap(({ parts, still }) => parts.filter((id) => id !== still?.part && !glued.has(id)))),
  ];
  if (free.length === 0) return texts;
  const none = `and none on ${listed(work, free)}: there the wood must be able to move`;
  return texts.map((text) => text.replace(/^(Spread glue where .+? meet)\./u, (_, told) => `${told}, ${none}.`));
}
