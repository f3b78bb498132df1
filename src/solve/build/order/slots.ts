/** The cylinders that a hole is made of. */
import type { Vec } from "../../../geometry/index.ts";
import { plus, times } from "../../../geometry/vec.ts";
import { toNumber } from "../../../units/index.ts";
import type { Hole } from "../../design.ts";

export interface Drilled {
  readonly mouth: Vec;
  readonly diameter: number;
  readonly depth: number;
}

/** One for each stage. The last stage of a slot is a row of bores, an eighth of their width apart: what is left between is under a hundredth of it. */
export function cylindersOf({ at, stages, slot }: Pick<Hole, "at" | "stages" | "slot">): readonly Drilled[] {
  const mouth: Vec = [toNumber(at[0]), toNumber(at[1]), toNumber(at[2])];
  return stages.flatMap(({ diameter, depth }, i): readonly Drilled[] => {
    const own = { diameter: toNumber(diameter), depth: toNumber(depth) };
    if (!slot || i < stages.length - 1) return [{ mouth, ...own }];
    const long = Math.max(0, toNumber(slot.length) - own.diameter);
    const n = Math.ceil((8 * long) / own.diameter);
    return Array.from({ length: n + 1 }, (_, k) => ({
      mouth: plus(mouth, times(slot.along, n === 0 ? 0 : long * (k / n - 1 / 2))),
      ...own,
    }));
  });
}
