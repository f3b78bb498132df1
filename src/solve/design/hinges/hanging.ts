/** What hangs on the hinges of a part: the part, and all that is joined to it for good. */
import type { JointDraft, Method } from "../../../parse/draft.ts";
import { type Length, UNITS_PER_MM } from "../../../units/length.ts";
import { max, min, toNumber } from "../../../units/rational.ts";
import type { Box } from "../../design.ts";
import type { Directory } from "../expand/directory.ts";
import { standsApart } from "../joinery/touch.ts";
import { type AxisIndex, extent, INDICES } from "../space.ts";

/** kg; the density in kg/m³. */
export const boxMass = (box: Box, density: number): number =>
  INDICES.reduce((so, i) => so * (toNumber(extent(box, i)) / UNITS_PER_MM / 1000), density);

/** What is joined for good to a part, by its id, itself first. Worked out when it is first asked for. */
export function hanging(joints: readonly JointDraft[], directory: Directory): (id: string) => readonly string[] {
  const links = (): readonly (readonly string[])[] =>
    joints
      .filter((joint) => !standsApart(joint.with.value) && !RESTS.has(joint.with.value))
      .map((joint) => [...joint.join, ...joint.to].flatMap((name) => (directory.find(name) ?? []).map(({ id }) => id)));
  let linked: readonly (readonly string[])[] | null = null;
  const known = new Map<string, readonly string[]>();
  return (id) => {
    const found = known.get(id);
    if (found) return found;
    linked ??= links();
    const body = new Set([id]);
    for (let before = 0; before < body.size; ) {
      before = body.size;
      for (const ids of linked) if (ids.some((each) => body.has(each))) for (const each of ids) body.add(each);
    }
    known.set(id, [...body]);
    return [...body];
  };
}

const RESTS: ReadonlySet<Method> = new Set(["shelf pins", "loose", "hangs on"]);

/** How far a body reaches in each direction: the place where its farthest part ends. */
export const reaching =
  (bodyOf: (id: string) => readonly string[], boxOf: (id: string) => Box | null) =>
  (id: string, axis: AxisIndex, sign: 1 | -1): Length | null =>
    bodyOf(id)
      .flatMap((each) => {
        const box = boxOf(each);
        return box ? [(sign > 0 ? box.high : box.low)[axis]] : [];
      })
      .reduce<Length | null>((so, end) => (so === null ? end : (sign > 0 ? max : min)(so, end)), null);
