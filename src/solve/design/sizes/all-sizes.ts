import type { Finding } from "../../../findings/finding.ts";
import { sizeOutOfRange } from "../../../findings/rules/size-out-of-range.ts";
import type { Draft, Formula, SizeDraft } from "../../../parse/draft.ts";
import type { Length } from "../../../units/length.ts";
import { less, multiply } from "../../../units/rational.ts";

/** Every size by name, the outside's last. Sizes that are no lengths are left out. */
export function allSizes(
  draft: Draft,
  size: (name: string) => { kind: string; value: Length } | null,
  outside: (face: "right" | "back" | "top") => Length | null,
  unit: Length,
): ReadonlyMap<string, Length> {
  const all = new Map<string, Length>();
  for (const name of draft.sizes.keys()) {
    const value = size(name);
    if (value?.kind === "length") all.set(name, value.value);
    if (value?.kind === "bare") all.set(name, multiply(value.value, unit));
  }
  for (const [word, face] of [
    ["width", "right"],
    ["depth", "back"],
    ["height", "top"],
  ] as const) {
    const value = draft.outside[word] ? outside(face) : null;
    if (value) all.set(word, value);
  }
  return all;
}

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
