/** Which steps show nearly the same, so that one looks for the other and finds it drawn alike. */
import { equal } from "../../units/index.ts";
import { partInStep } from "./drawn-part.ts";
import type { Plan } from "./plan.ts";

type Part = NonNullable<ReturnType<typeof partInStep>>["part"];

/** For each step the first one that it looks like: told as that, or just before it with the mirror image of its part or one of its size. */
export function likeBefore(plan: Plan): readonly (number | null)[] {
  const { steps, cutList } = plan.build;
  const worked = steps.map((step) => partInStep(plan, step)?.part ?? null);
  const mirrorOf = (mark: string): string | null => cutList.find((line) => line.mark === mark)?.mirrorOf ?? null;
  const pairs = (one: Part, other: Part): boolean =>
    mirrorOf(one.mark) === other.mark ||
    (["thickness", "width", "length"] as const).every((size) => equal(one[size], other[size]));
  const found: (number | null)[] = [];
  for (const [i, { like }] of steps.entries()) {
    const part = worked[i] ?? null;
    const near = worked.slice(Math.max(0, i - NEAR), i).findLastIndex((other) => part && other && pairs(part, other));
    const place = like !== undefined ? like - 1 : near < 0 ? -1 : Math.max(0, i - NEAR) + near;
    found.push(place < 0 ? null : (found[place] ?? place));
  }
  return found;
}

/** Who reads a step has those so many before it in mind. */
const NEAR = 3;
