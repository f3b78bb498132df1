/** How many sheets of paper a full-size pattern takes. */

import { ONE } from "../../../units/index.ts";
import { inches, type Length } from "../../../units/length.ts";
import { ceil, divide, less, max, subtract } from "../../../units/rational.ts";

/** What is free for patterns on a sheet of Letter as well as on one of A4, between the margins and below a heading and a bar. */
const FREE = { width: inches(51, 8), height: inches(15, 2) } as const;
/** Sheets that are put together share so much. */
export const OVERLAP = inches(1, 2);
/** More are not put together without a fault. Common practice, no source. */
const MOST = 4;

/** Tiles along one direction. */
export function tiles(size: Length, free: Length = FREE.width): number {
  if (!less(free, size)) return 1;
  return Number(ceil(divide(subtract(size, OVERLAP), subtract(free, OVERLAP))));
}

/** Whether a pattern goes on at most four sheets; low ones go on one sheet several times. */
export function fitsPaper(width: Length, height: Length): boolean {
  const [across, down] = [tiles(width, FREE.width), tiles(height, FREE.height)];
  if (down > 1) return across * down <= MOST;
  const onOne = Math.max(1, Number(divide(FREE.height, max(height, ONE)).n / divide(FREE.height, max(height, ONE)).d));
  return Math.ceil(across / onOne) <= MOST;
}
