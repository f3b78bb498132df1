/** What is measured as one: a door or a drawer with all its parts, and each part that does not move. */
import type { Build, BuiltPart } from "../../../solve/build.ts";

export interface Body {
  readonly parts: readonly BuiltPart[];
  /** Gaps around it, however narrow, have a number of their own. */
  readonly moves: boolean;
}

/** Parts that move together, the most of them that do; and the others one by one. */
export function bodiesOf({ parts, motions }: Pick<Build, "parts" | "motions">): readonly Body[] {
  const sets = motions.map((motion) => new Set(motion.moves)).sort((a, b) => b.size - a.size);
  const moved = new Set<string>();
  const moving = sets.flatMap((set): Body[] => {
    if ([...set].some((id) => moved.has(id))) return [];
    for (const id of set) moved.add(id);
    return [{ parts: parts.filter(({ id }) => set.has(id)), moves: true }];
  });
  const still = parts.filter(({ id }) => !moved.has(id)).map((part): Body => ({ parts: [part], moves: false }));
  return [...still, ...moving.filter((body) => body.parts.length > 0)];
}
