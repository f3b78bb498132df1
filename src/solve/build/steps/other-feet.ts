/** What else is propped where the lowest parts alone would let the work tip over. */
import { toNumber } from "../../../units/rational.ts";
import { axisOf, INDICES } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { boxOf, lowestOf } from "./box-of.ts";
import type { Work } from "./draft.ts";
import { BLOCKS, centreOf } from "./resting.ts";

/** Parts at the next level above the bench, and how much higher that is, in units of length. */
export interface OtherFeet {
  readonly ids: readonly string[];
  readonly by: number;
}

/** `feet`: ids of those that work lies on; null where its weight lies between them, or nothing else comes near the bench. */
export function otherFeet(
  work: Work,
  ids: readonly string[],
  feet: readonly string[],
  up: Direction,
): OtherFeet | null {
  const level = (id: string): number => toNumber(lowestOf(work, [id], up));
  const bench = toNumber(lowestOf(work, feet, up));
  const weight = centreOf(work, ids);
  const boxes = feet.map((id) => boxOf(work.part(id)));
  const between = INDICES.filter((i) => i !== axisOf(up)).every((i) => {
    const [low, high] = [
      Math.min(...boxes.map((box) => toNumber(box.low[i]))),
      Math.max(...boxes.map((box) => toNumber(box.high[i]))),
    ];
    const margin = (high - low) / 10;
    return weight[i] > low + margin && weight[i] < high - margin;
  });
  if (between) return null;
  const next = ids.map((id) => level(id) - bench).filter((by) => by > 0 && by <= toNumber(BLOCKS));
  if (next.length === 0) return null;
  const by = Math.min(...next);
  return { ids: ids.filter((id) => level(id) - bench === by), by };
}
