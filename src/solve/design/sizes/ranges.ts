import type { Finding } from "../../../findings/finding.ts";
import { sizeOutOfRange } from "../../../findings/rules/size-out-of-range.ts";
import type { Draft, Formula, SizeDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";

/** Tells of sizes outside the range that the maker gave them. */
export function reportRanges(
  draft: Draft,
  sizes: ReadonlyMap<string, Length>,
  measure: (formula: Formula) => Length | null,
  report: (finding: Finding) => void,
  print: (length: Length) => string,
): void {
  const all: readonly (readonly [string, SizeDraft])[] = [...draft.sizes, ...Object.entries(draft.outside)];
  for (const [name, { at, from, to }] of all) {
    const value = sizes.get(name);
    const [low, high] = [from && measure(from), to && measure(to)];
    if (!value || (!low && !high)) continue;
    if ((low && less(value, low)) || (high && less(high, value)))
      report(
        sizeOutOfRange(at, {
          name,
          value: print(value),
          from: low ? print(low) : null,
          to: high ? print(high) : null,
        }),
      );
  }
}
