import type { JointDraft } from "../../../parse/draft.ts";
import type { Directory } from "./directory.ts";

/** Parts that lie on pins, and what is fixed to nothing but those: a strip along the front of a loose shelf. */
export function lyingLoose(joints: readonly JointDraft[], { find }: Pick<Directory, "find">): ReadonlySet<string> {
  const idsOf = (names: JointDraft["join"]): readonly string[] =>
    names.flatMap((name) => find(name) ?? []).map(({ id }) => id);
  const isPinned = ({ with: { value } }: JointDraft): boolean => value === "shelf pins";
  const loose = new Set(joints.filter(isPinned).flatMap(({ join }) => idsOf(join)));
  if (loose.size === 0) return loose;
  const others = joints
    .filter((joint) => !isPinned(joint))
    .map(({ join, to }) => ({ join: idsOf(join), to: idsOf(to) }));
  for (let before = -1; before < loose.size; ) {
    before = loose.size;
    for (const { join, to } of others)
      if (to.length > 0 && to.every((id) => loose.has(id))) for (const id of join) loose.add(id);
  }
  return loose;
}
