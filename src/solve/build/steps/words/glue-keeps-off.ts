/** Where glue is told in the same step as wood that must move: what that lies on gets none. */
import type { Joint } from "../../../design.ts";
import { listed, type Work } from "../draft.ts";
import { woodMoves } from "./still.ts";

/** After the words that tell where it is spread; nothing where it need not keep off. */
export function glueKeepsOff(work: Work, joints: readonly Joint[]): string {
  const sliding = joints.filter(({ glue, still }) => !glue && still && woodMoves(work, still.part));
  const glued = new Set(joints.filter(({ glue }) => glue).flatMap(({ parts }) => parts));
  const free = [
    ...new Set(sliding.flatMap(({ parts, still }) => parts.filter((id) => id !== still?.part && !glued.has(id)))),
  ];
  return free.length === 0 ? "" : `, and none on ${listed(work, free)}: there the wood must be able to move`;
}
