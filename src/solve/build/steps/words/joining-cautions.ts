/** Cautions of steps that join: of points, drawers and glass. Common practice, no source. */

export const SCREW_CAUTION = "Wear eye protection, and keep your free hand away from where the point would come out.";
/** Where eye protection is worn for the glass. */
export const POINT_CAUTION = "Keep your free hand away from where the point would come out.";

export const OPEN_CAUTION =
  "A case with open drawers can tip over until it is tied to the wall or loaded below: try one drawer at a time, empty, with a hand on the case.";

export const GLASS_CAUTION =
  "Wear gloves that glass does not cut and eye protection, and carry a pane upright. Put none in that is chipped or has a crack.";
