/** What stays bare under a finish that smells: the boxes of drawers, but for what is seen of them in front. */
import type { Design, Finish } from "../../design.ts";
import { leftTogether } from "../moved-as-one.ts";
import { productOf } from "../steps/finishing/products.ts";

/** Ids of parts. A finish that the plan gives to drawers alone goes on them. */
export function bareUnder(
  finish: Finish,
  { parts, joints, fittings }: Pick<Design, "parts" | "joints" | "fittings">,
): ReadonlySet<string> {
  if (!productOf(finish.product).heats) return new Set();
  const runs = new Set(joints.flatMap(({ kind, parts: [side] }) => (kind === "running" ? [side] : [])));
  if (runs.size === 0) return new Set();
  const seen = new Set([
    ...joints.flatMap(({ setWith, parts: [, front] }) => (setWith ? [front] : [])),
    ...fittings.map(({ part }) => part),
  ]);
  const inside = leftTogether({ parts, joints })
    .map((body) => body.parts.map(({ id }) => id))
    .filter((ids) => ids.some((id) => runs.has(id)))
    .flatMap((ids) => {
      const shown = ids.filter((id) => seen.has(id));
      // Without a grip or a front of its own nobody can say which of it is seen.
      return shown.length > 0 ? ids.filter((id) => !shown.includes(id)) : [];
    });
  const bare = new Set(inside);
  return finish.parts.every((id) => bare.has(id)) ? new Set() : bare;
}
