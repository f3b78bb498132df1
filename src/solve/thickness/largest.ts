import { less } from "../../units/rational.ts";
import { printedSizes } from "../build/cut-list/printed.ts";
import type { LargestSizes, Reserved } from "../build/model/thickness.ts";
import type { Design } from "../design.ts";
import { corners, type Range } from "./range.ts";
import type { SolvedAt } from "./solved-at.ts";

/** Of more stock than this each end is tried alone. */
const MOST_IN_CORNERS = 4;

/** Sizes go straight with the thickness of each stock, so that they are largest where every stock is at an end of its range. */
export function largestSizes(ranges: readonly Range[], drawn: Design, solved: SolvedAt): LargestSizes {
  const together = ranges.length <= MOST_IN_CORNERS ? corners(ranges) : ranges.flatMap((range) => corners([range]));
  const elsewhere = together.flatMap((at) => {
    const design = solved.design(at);
    return design ? [{ at, parts: new Map(design.parts.map((part) => [part.id, part])) }] : [];
  });
  return new Map(
    drawn.parts.flatMap((part) => {
      const own = printedSizes(part, drawn.fits);
      const reserved = (["width", "length"] as const).flatMap((size): readonly Reserved[] => {
        let found: Reserved | null = null;
        for (const { at, parts } of elsewhere) {
          const there = parts.get(part.id);
          const largest = there && printedSizes(there, drawn.fits)[size];
          if (largest && less(found?.largest ?? own[size], largest)) found = { size, largest, at };
        }
        return found ? [found] : [];
      });
      return reserved.length > 0 ? [[part.id, reserved] as const] : [];
    }),
  );
}
