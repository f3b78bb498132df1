/** Solid wood that is cut to fit between two parts across its grain: it grows wider in damp air, and wants room. */

import { multiply, roundTo, ZERO } from "../../../../units/index.ts";
import { inches, type Length, millimetres } from "../../../../units/length.ts";
import { indexOf } from "../../../design/space.ts";
import { shareOfMovement } from "../../../design/use/seasons.ts";
import { USUAL_SITE } from "../../../design/use/site.ts";
import type { Part } from "../../../design.ts";
import type { Work } from "../draft.ts";

/** What is marked at least (common practice, no source). */
const STEP = { inch: inches(1, 32), mm: millimetres(1) } as const;

/** Between the dampest and the driest season; zero where it does not move so, or is held to one of the `bounds`. */
export function roomToSwell(work: Work, part: Part, size: "length" | "width", bounds: readonly string[]): Length {
  if (size === "length" || indexOf(part.axes.length) === indexOf(part.axes.width)) return ZERO;
  const held = work.design.joints.some(
    ({ kind, still, parts }) =>
      kind === "fixed" && !still && parts.includes(part.id) && parts.some((id) => bounds.includes(id)),
  );
  const share = shareOfMovement(work.stock(part.stock), work.design.site ?? USUAL_SITE);
  if (held || share === null) return ZERO;
  return roundTo(multiply(work.line(part.id).width, share), STEP[work.design.units], "up");
}
