/** The drawings of the pages, as figures that can be placed. */
import type { Layout, Step } from "../../solve/build.ts";
import type { Item } from "../document.ts";
import { type Drawing, explodedView, pieceView, threeViews } from "../drawing/index.ts";
import { bounds, leaves, moved } from "../shapes.ts";
import type { Plan } from "./plan.ts";

export interface Picture {
  /** From the top of its frame to the lowest thing drawn. */
  readonly height: number;
  /** The figure with the top left corner of its frame at (x, y). */
  readonly paint: (x: number, y: number) => Item;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

const at = (size: Size) => ({ x: 0, y: 0, ...size });

function picture({ items, alt }: Drawing): Picture {
  const parts = leaves(items);
  return {
    height: parts.length === 0 ? 0 : bounds(parts)[3],
    paint: (x, y) => ({ kind: "group", role: "figure", alt, items: moved(items, x, y) }),
  };
}

export const coverPicture = ({ build, pen }: Plan, size: Size): Picture =>
  picture(pieceView(build, { frame: at(size), pen, shaded: true, scale: "fit" }));
export const viewsPicture = ({ build, pen }: Plan, size: Size): Picture =>
  picture(threeViews(build, { frame: at(size), pen }));
export const explodedPicture = ({ build, pen }: Plan, size: Size): Picture =>
  picture(explodedView(build, { frame: at(size), pen }));
export const stepPicture = ({ build, pen }: Plan, step: Step, size: Size): Picture =>
  picture(
    pieceView(build, { frame: at(size), pen, parts: [...step.shows.fresh, ...step.shows.present], scale: "fit" }),
  );
export const layoutPicture = ({ build, pen }: Plan, _layout: Layout, size: Size): Picture =>
  picture(pieceView(build, { frame: at(size), pen }));
