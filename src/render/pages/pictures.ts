/** The drawings of the pages, as figures that can be placed. */

import type { Layout } from "../../solve/build.ts";
import type { Item } from "../document.ts";
import {
  type Drawing,
  type StepPicture as Drawn,
  explodedView,
  layoutDrawing,
  pieceView,
  sections,
  stepPicture,
  type Take,
  type TakenApart,
  threeViews,
} from "../drawing/index.ts";
import type { LayoutDrawing } from "../drawing/layout/layout-drawing.ts";
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

const at = ({ width, height }: Size) => ({ x: 0, y: 0, width, height });

/** `cropped`: without the empty space above what is drawn. */
export function picture({ items, alt }: Drawing, cropped = false): Picture {
  const parts = leaves(items);
  const [, top, , bottom] = parts.length === 0 ? [0, 0, 0, 0] : bounds(parts);
  const skip = cropped ? top : 0;
  return {
    height: bottom - skip,
    paint: (x, y) => ({ kind: "group", role: "figure", alt, items: moved(items, x, y - skip) }),
  };
}

export const coverPicture = ({ build, pen }: Plan, size: Size): Picture =>
  picture(pieceView(build, { frame: at(size), pen, shaded: true, scale: "fit" }));
export const viewsPicture = ({ build, pen }: Plan, size: Size): Picture =>
  picture(threeViews(build, { frame: at(size), pen }));
/** Null where nothing is hidden. */
export function sectionsPicture({ build, pen }: Plan, size: Size): Picture | null {
  const drawn = sections(build, { frame: at(size), pen });
  return drawn && picture(drawn, true);
}
export const explodedPicture = ({ build, pen }: Plan, size: Size, taken: TakenApart | null): Picture =>
  picture(explodedView(build, { frame: at(size), pen, taken }), true);
export interface StepPicture extends Picture {
  /** The same for all pictures that show the same; empty for none. */
  readonly key: string;
  /** The same in a lower frame; null where that is no lower or shows less. */
  readonly lower: (height: number) => Picture | null;
  /** The height of its frame; it gets no larger in one higher than `highest`. */
  readonly room: number;
  readonly highest: number;
  /** The same in a higher frame, as large as it goes in; null where it shows less. */
  readonly higher: (height: number) => Picture | null;
  /** The same in a wider frame, as large as it goes in, and how many times as large where two stand in it; null where it shows less. */
  readonly wide: (size: Size) => (Picture & { readonly larger: number | null }) | null;
}

/** One for each step, in a frame so large, or so tall where it holds more than one thing. Each is taken as the one before was, where that serves. */
export function stepPictures({ build, pen }: Plan, size: Size, tall: number): StepPicture[] {
  let before: Take | null = null;
  const told = new Set<string>();
  return build.steps.map((step) => {
    // It is drawn again in other frames later, when more is told.
    const drawn = stepPicture(build, step, { frame: at(size), pen, before, told: new Set(told), tall });
    before = drawn.take;
    if (drawn.close !== null) told.add(drawn.close);
    const full = picture(drawn, true);
    const lower = (height: number): Picture | null => {
      const low = full.height > height ? drawn.within({ height }) : null;
      return low && picture(low, true);
    };
    const within = (other: Partial<Size>) => {
      const found = drawn.within(other);
      const usual = drawn.two ?? (drawn.close !== null ? sizeInColumn(drawn, other.height) : null);
      const larger = found?.size && usual ? found.size / usual : null;
      return found && { ...picture(found, true), larger };
    };
    const { key, highest, frame } = drawn;
    return { ...full, key, lower, highest, room: frame.height, higher: (height) => within({ height }), wide: within };
  });
}

/** Points for each unit of what has a detail beside it, which takes some of the width: as high as it may be, as large as it gets in its column. */
const sizeInColumn = ({ take, within, highest, frame }: Drawn, most = frame.height): number | null =>
  take && Math.max(take.scale, within({ height: Math.max(frame.height, Math.min(highest, most)) })?.size ?? 0);

export const layoutPicture = (
  { build, pen }: Plan,
  layout: Layout,
  size: Size,
  close: boolean,
): Picture & Pick<LayoutDrawing, "listed"> => {
  const drawing = layoutDrawing(build, layout, { frame: at(size), pen, close });
  return { ...picture(drawing, true), listed: drawing.listed };
};
