import type { Draft } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { add, divide, rational, subtract, toNumber } from "../../units/rational.ts";
import type { Slope } from "../build/model/thickness.ts";
import { indexOf } from "../design/space.ts";
import type { Part } from "../design.ts";
import type { Range } from "./range.ts";
import type { SolvedAt } from "./solved-at.ts";

/** So fine that nothing is rounded where parts depend on each other. */
const FINE: Length = rational(1, 2n ** 40n);

/** The plan as if every size could be marked. */
export function unrounded({ fits: _, ...draft }: Draft): Draft {
  return { ...draft, precision: { ...draft.precision, value: FINE } };
}

/** How the sizes of a part change with the thickness of each stock that has a range. `exact` is the plan unrounded. */
export function slopesOf(ranges: readonly Range[], exact: SolvedAt): (part: string) => ReadonlyMap<string, Slope> {
  const ends = ranges.flatMap((range) => {
    const low = exact.design(new Map([[range.stock, range.low]]));
    const high = exact.design(new Map([[range.stock, range.high]]));
    return low && high ? [{ range, low: byId(low.parts), high: byId(high.parts) }] : [];
  });
  return (part) =>
    new Map(
      ends.flatMap(({ range, low, high }) => {
        const [thin, thick] = [low.get(part), high.get(part)];
        if (!thin || !thick) return [];
        const slope = (size: keyof Slope): number =>
          toNumber(divide(subtract(sizeOf(thick, size), sizeOf(thin, size)), subtract(range.high, range.low)));
        return [
          [range.stock, { thickness: slope("thickness"), width: slope("width"), length: slope("length") }] as const,
        ];
      }),
    );
}

const byId = (parts: readonly Part[]): ReadonlyMap<string, Part> => new Map(parts.map((part) => [part.id, part]));

function sizeOf(part: Part, size: keyof Slope): Length {
  const axis = indexOf(part.axes[size]);
  return add(subtract(part.blank.high[axis], part.blank.low[axis]), part.leftOver[axis]);
}
