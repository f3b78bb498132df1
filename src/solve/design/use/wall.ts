import type { Formula, Units, WallDraft } from "../../../parse/draft.ts";
import { inches, type Length, millimetres } from "../../../units/length.ts";
import type { Wall } from "../../design.ts";

/** Studs are 16 in or 400 mm apart where nothing is said. Common practice, no source. */
const usual = (units: Units): Length => (units === "inch" ? inches(16) : millimetres(400));

/** The wall that the plan describes, or the usual one. */
export function wallOf(draft: WallDraft | undefined, units: Units, measure: (formula: Formula) => Length | null): Wall {
  if (draft?.of === "solid") return { studs: null };
  const apart = draft?.apart ? measure(draft.apart) : null;
  return { studs: apart && apart.n > 0n ? apart : usual(units) };
}
