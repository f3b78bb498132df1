/** What can be told of a side of a part, and which side something is nearer to. */
import { type Length, millimetres } from "../../../../units/length.ts";
import { absolute, less, min, subtract } from "../../../../units/rational.ts";
import type { AxisIndex } from "../../../design/space.ts";
import type { Box, Direction, Part } from "../../../design.ts";

export interface Sign {
  readonly part: Part;
  /** "mortise" and "mortises", "wide end" and "wide ends"; how many there are; what is said of them: " for the stretcher (C)". */
  readonly what: {
    readonly one: string;
    readonly many: string;
    readonly count: number;
    readonly more: string;
    /** Not all of them: others lie at the side across. */
    readonly some?: true;
    /** So many, fewer, lie at the side across. */
    readonly across?: number;
  };
  /** "flush": a side of the part is, with what it is joined to. */
  readonly how: "looks" | "lies" | "flush" | "nearer" | "nearest";
  /** Ids of what it is flush with. */
  readonly with?: readonly string[];
  /** Out of the part, to where it looks or lies. */
  readonly way: Direction;
}

/** Distances that differ by less look the same. */
const SEEN = millimetres(3);

/** Whether the nearest of some lies nearer to the high side than the nearest does to the low one; null where they look as near to both. */
export function isHigher(body: Box, some: readonly Box[], axis: AxisIndex): boolean | null {
  const least = (all: readonly Length[]): Length => all.reduce(min);
  const low = least(some.map((each) => subtract(each.low[axis], body.low[axis])));
  const high = least(some.map((each) => subtract(body.high[axis], each.high[axis])));
  return less(absolute(subtract(low, high)), SEEN) ? null : less(high, low);
}
