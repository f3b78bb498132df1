/** What a body is called that opens, where the names of its parts have none in common: by what it does. */
import type { Work } from "../draft.ts";
import { bodyWords, movingWords } from "./bodies.ts";
import { KINDS } from "./opening.ts";

/** "left door", by names; else "lid", of what lifts, where the piece has one. Null where neither tells. */
export const movingName = (work: Pick<Work, "design" | "motions">, ids: readonly string[]): string | null =>
  bodyWords(ids) ?? movingWords(ids, work.design.joints) ?? kindName(work, ids);

/** "lid", of several parts that swing up together; null where others open in the same way too, or it is one part, which has a name. */
export function kindName({ design, motions }: Pick<Work, "design" | "motions">, ids: readonly string[]): string | null {
  if (ids.length < 2) return null;
  const parts = new Set(design.parts.map(({ id }) => id));
  const isAll = (moves: readonly string[]): boolean =>
    ids.every((id) => moves.includes(id)) && moves.filter((id) => parts.has(id)).length === ids.length;
  const own = motions.find(({ moves }) => isAll(moves));
  return own && motions.filter(({ kind }) => kind === own.kind).length === 1 ? KINDS[own.kind] : null;
}
