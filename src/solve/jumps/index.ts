/** Where a copy of a plan with another size or another stock takes more, longer or other things: found by solving it there. */
import { andThen, type Outcome } from "../../findings/outcome.ts";
import type { Draft, SizeDraft } from "../../parse/draft.ts";
import type { Length } from "../../units/length.ts";
import { less } from "../../units/rational.ts";
import { build } from "../build/index.ts";
import type { Build } from "../build.ts";
import { type DesignOptions, design } from "../design/index.ts";
import { atThicknesses } from "../design/measured.ts";
import { placing } from "../design/placed.ts";
import { rangesOf, stepOf } from "../thickness/range.ts";
import { factsOf, REFUSED } from "./facts.ts";
import { findJumps, type Jump } from "./find.ts";

/** The jumps of a size or of the thickness of a stock. */
export interface Jumps {
  readonly of: string;
  readonly kind: "size" | "stock";
  readonly jumps: readonly Jump[];
}

const OUTSIDE = ["width", "depth", "height"] as const;

/** Of every size with a range, in steps of the plan's precision, and of every stock with one, in those of a caliper. */
export function jumpsOf(draft: Draft, options: DesignOptions, drawn: Build): readonly Jumps[] {
  const solved = (changed: Draft): Outcome<Build> => andThen(design(changed, options), (each) => build(each));
  const { measure } = placing(draft, () => {});
  const sized = (of: string, size: SizeDraft | undefined, at: (value: SizeDraft) => Draft): readonly Jumps[] => {
    const [low, high] = [size?.from && measure(size.from), size?.to && measure(size.to)];
    if (!size || !low || !high || !less(low, high) || options.sizes.has(of)) return [];
    const facts = (value: Length) => factsOf(solved(at({ ...size, value: { kind: "measure", value, at: size.at } })));
    return [{ of, kind: "size", jumps: told(findJumps({ low, high, step: draft.precision.value }, facts)) }];
  };
  return [
    ...[...draft.sizes].flatMap(([name, size]) =>
      sized(name, size, (value) => ({ ...draft, sizes: new Map([...draft.sizes, [name, value]]) })),
    ),
    ...OUTSIDE.flatMap((name) =>
      sized(name, draft.outside[name], (value) => ({ ...draft, outside: { ...draft.outside, [name]: value } })),
    ),
    ...rangesOf(drawn.design).map(({ stock, low, high }): Jumps => {
      const facts = (mark: Length) => factsOf(solved(atThicknesses(draft, new Map([[stock, mark]]))));
      return { of: stock, kind: "stock", jumps: told(findJumps({ low, high, step: stepOf(draft.units) }, facts)) };
    }),
  ];
}

/** Where a plan cannot be built any more, everything is gone: only that is told. */
const told = (jumps: readonly Jump[]): readonly Jump[] => {
  const ends = jumps.filter(({ what }) => what === REFUSED);
  return jumps.filter(({ what, last }) => what === REFUSED || !ends.some((end) => end.last === last));
};
