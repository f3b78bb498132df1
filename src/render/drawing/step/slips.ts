/** Keys across mitres: thin slips of wood, drawn as what they are before their slots, and in them from then on. */
import type { Build, Step } from "../../../solve/build.ts";
import type { Marked } from "../labels.ts";
import type { Driven } from "./screws.ts";

/** Those of the parts that are shown; `screws`: what is driven in this step. */
export function slips(
  { fasteners, steps }: Build,
  { number }: Step,
  shown: ReadonlySet<string>,
  screws: readonly Driven[],
): readonly Marked[] {
  const before = new Set(
    steps
      .filter((step) => step.number < number)
      .flatMap(({ actions }) => actions.flatMap((action) => (action.do === "drive" ? action.fasteners : []))),
  );
  return fasteners.flatMap(({ id, body, travelsWith, through, into }): readonly Marked[] => {
    if (!body || travelsWith !== null) return [];
    const off = screws.find((screw) => screw.id === id)?.off;
    if (off) return [{ id, mark: "", solid: body, shift: off }];
    const isThere = [...through, into].every((part) => shown.has(part));
    return isThere && before.has(id) ? [{ id, mark: "", solid: body }] : [];
  });
}
