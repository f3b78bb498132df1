import type { MoreDraft, RoughDraft, Units } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import type { More, Rough } from "../../design.ts";
import type { MakingContext } from "./context.ts";

const more = (longer: Length, wider: Length, thicker: Length): More => ({ longer, wider, thicker });

/** Left over the finished size where nothing is said. Common practice, no source. */
export const USUAL_ROUGH: Readonly<Record<Units, Rough>> = {
  inch: {
    parts: more(inches(1), inches(1, 4), inches(1, 8)),
    legs: more(inches(1), inches(1, 4), inches(1, 8)),
    slabs: { ...more(inches(1), inches(1, 2), inches(1, 16)), eachBoardWider: inches(1, 4) },
  },
  mm: {
    parts: more(millimetres(25), millimetres(6), millimetres(3)),
    legs: more(millimetres(25), millimetres(6), millimetres(3)),
    slabs: { ...more(millimetres(25), millimetres(12), millimetres(2)), eachBoardWider: millimetres(6) },
  },
};

/** What the plan says of rough sizes, the rest as usual; null where it says nothing. */
export function roughOf(
  draft: RoughDraft | undefined,
  context: Pick<MakingContext, "units" | "positive">,
): Rough | null {
  if (!draft) return null;
  const usual = USUAL_ROUGH[context.units];
  const size = (formula: MoreDraft["longer"], otherwise: Length): Length =>
    (formula && context.positive(formula, "a rough size")) ?? otherwise;
  const of = (said: MoreDraft, base: More): More => ({
    longer: size(said.longer, base.longer),
    wider: size(said.wider, base.wider),
    thicker: size(said.thicker, base.thicker),
  });
  return {
    parts: of(draft.parts, usual.parts),
    legs: of(draft.legs, usual.legs),
    slabs: {
      ...of(draft.slabs, usual.slabs),
      eachBoardWider: size(draft.slabs.eachBoardWider, usual.slabs.eachBoardWider),
    },
  };
}
