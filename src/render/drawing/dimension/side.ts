/** The four sides of a view. A place beside it is (along the side, out from the view), whichever side it is. */

import type { Spot } from "../drawing.ts";
import type { Box } from "../plate.ts";

export type SideName = "below" | "above" | "left" | "right";

export interface Side {
  readonly name: SideName;
  /** True where the side runs across the page. */
  readonly level: boolean;
  readonly spot: (along: number, out: number) => Spot;
  /** How far out a place of the page lies; negative inside the view. */
  readonly out: (spot: Spot) => number;
}

/** `view` is the rectangle of the view on the page. */
export function sideOf(view: Box, name: SideName): Side {
  switch (name) {
    case "below":
      return { name, level: true, spot: (a, o) => [a, view.bottom + o], out: ([, y]) => y - view.bottom };
    case "above":
      return { name, level: true, spot: (a, o) => [a, view.top - o], out: ([, y]) => view.top - y };
    case "left":
      return { name, level: false, spot: (a, o) => [view.left - o, a], out: ([x]) => view.left - x };
    case "right":
      return { name, level: false, spot: (a, o) => [view.right + o, a], out: ([x]) => x - view.right };
  }
}
