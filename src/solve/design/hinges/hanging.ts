/** What hangs on the hinges of a part: the part, and all that is joined to it for good. */
import type { JointDraft } from "../../../parse/draft.ts";
import { UNITS_PER_MM } from "../../../units/length.ts";
import { toNumber } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import { standsApart } from "../joinery/touch.ts";
import { extent, INDICES } from "../space.ts";

/** kg; the density in kg/m³. */
export const boxMass = (box: Box, density: number): number =>
  INDICES.reduce((so, i) => so * (toNumber(extent(box, i)) / UNITS_PER_MM / 1000), density);

/** kg of the body that a part belongs to, by its id. Worked out when it is first asked for. */
export function hanging(
  joints: readonly JointDraft[],
  directory: Directory,
  mass: (id: string) => number,
): (id: string) => number {
  const links = (): readonly (readonly string[])[] =>
    joints
      .filter((joint) => !standsApart(joint.with.value) && joint.with.value !== "shelf pins")
      .map((joint) => [...joint.join, ...joint.to].flatMap((name) => (directory.find(name) ?? []).map(({ id }) => id)));
  let linked: readonly (readonly string[])[] | null = null;
  return (id) => {
    linked ??= links();
    const body = new Set([id]);
    for (let before = 0; before < body.size; ) {
      before = body.size;
      for (const ids of linked) if (ids.some((each) => body.has(each))) for (const each of ids) body.add(each);
    }
    return [...body].reduce((so, each) => so + mass(each), 0);
  };
}
