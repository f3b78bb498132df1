/** Which steps show nearly the same, so that one looks for the other and finds it drawn alike. */
import type { Build } from "../../solve/build.ts";
import { equal } from "../../units/index.ts";
import type { partInStep } from "./drawn-part.ts";

type Worked = ReturnType<typeof partInStep>;
type Part = NonNullable<Worked>["part"];

/** `inSteps`: the part that each works on. For each step the last one before that it looks like: told as that, or just before it with the mirror image of its part, one of its size, or one that differs from it in width or length alone. */
export function likeBefore(
  { steps, cutList }: Pick<Build, "steps" | "cutList">,
  inSteps: readonly Worked[],
): readonly (number | null)[] {
  const worked = inSteps.map((each) => each?.part ?? null);
  const mirrorOf = (mark: string): string | null => cutList.find((line) => line.mark === mark)?.mirrorOf ?? null;
  const alike = [
    (one: Part, other: Part): boolean => mirrorOf(one.mark) === other.mark,
    (one: Part, other: Part): boolean =>
      (["thickness", "width", "length"] as const).every((size) => equal(one[size], other[size])),
    (one: Part, other: Part): boolean =>
      equal(one.thickness, other.thickness) && (equal(one.width, other.width) || equal(one.length, other.length)),
  ];
  return steps.map(({ like }, i) => {
    if (like !== undefined) return like - 1;
    const part = worked[i] ?? null;
    const from = Math.max(0, i - NEAR);
    const near = alike.map((pairs) =>
      worked.slice(from, i).findLastIndex((other) => part !== null && other !== null && pairs(part, other)),
    );
    const place = near.find((each) => each >= 0);
    return place === undefined ? null : from + place;
  });
}

/** Who reads a step has those so many before it in mind. */
const NEAR = 3;
