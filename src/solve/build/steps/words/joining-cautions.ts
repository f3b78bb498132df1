/** Cautions of steps that join: of points, drawers and glass. Common practice, no source. */
import type { FastenerKind } from "../../../design.ts";
import type { Drive } from "../../order/index.ts";

export const SCREW_CAUTION = "Wear eye protection, and keep your free hand away from where the point would come out.";
/** Where eye protection is worn for the glass. */
export const POINT_CAUTION = "Keep your free hand away from where the point would come out.";

/** Wood that is driven in has no point that comes out. */
const STRUCK_CAUTION = "Wear eye protection while you drive the pegs.";
const WOODEN: readonly FastenerKind[] = ["peg", "dowel", "key"];

/** Of what is driven with more than the hand; `glass`: eye protection is told for that. */
export function drivingCautions(
  drives: readonly { readonly tool: Drive["tool"]; readonly fastener: { readonly kind: FastenerKind } }[],
  glass: boolean,
): readonly string[] {
  const driven = drives.filter(({ tool, fastener: { kind } }) => tool !== "hand" && kind !== "bolt");
  if (driven.length === 0) return [];
  if (driven.some(({ fastener: { kind } }) => !WOODEN.includes(kind))) return [glass ? POINT_CAUTION : SCREW_CAUTION];
  return glass ? [] : [STRUCK_CAUTION];
}

export const OPEN_CAUTION =
  "A case with open drawers can tip over until it is tied to the wall or loaded below: try one drawer at a time, empty, with a hand on the case.";

export const GLASS_CAUTION =
  "Wear gloves that glass does not cut and eye protection, and carry a pane upright. Put none in that is chipped or has a crack.";
