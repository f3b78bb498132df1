/** Which way the grain runs of what is as wide as it is long, and could lie turned by a quarter. */
import { isSame } from "../../../../units/length.ts";
import { extent, faceOf, indexOf } from "../../../design/space.ts";
import { LOCATED } from "../../jigs/spacers.ts";
import { called, type Work } from "../draft.ts";
import type { Move } from "../moves.ts";

/** "The grain of the top panel (C) runs from left to right.": of what comes by itself, and is located by no joint. */
export function grainTexts(work: Work, moves: readonly Move[]): readonly string[] {
  const told = moves.flatMap(({ arriving: [id, ...more], work: own }): readonly string[] => {
    if (id === undefined || more.length > 0 || own.some(({ joint }) => LOCATED.has(joint.method))) return [];
    const { body, axes, turned, stock } = work.part(id);
    const { form, grainless } = work.stock(stock);
    const long = indexOf(axes.length);
    if (turned || form === "pane" || grainless || !isSame(extent(body, long), extent(body, indexOf(axes.width))))
      return [];
    return [`The grain of the ${called(work, id)} runs from ${faceOf(long, false)} to ${faceOf(long, true)}.`];
  });
  return [...new Set(told)];
}
