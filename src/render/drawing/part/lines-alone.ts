import { hiddenLines, perView } from "../../../geometry/picture/index.ts";
import type { PictureItem, Solid } from "../../../geometry/types.ts";

const NONE = { visible: [], hidden: [] };

/** The lines of a part by itself, seen and hidden: the same for every scale and width in which it is drawn. */
export const linesAlone = perView((solid: Solid, view): Omit<PictureItem, "id"> => {
  const [lines = NONE] = hiddenLines([{ id: "", solid }], view, { hidden: true });
  return lines;
});
