/** Where a part is drawn shorter than it is. */
import type { Item } from "../../document.ts";
import { WHITE } from "../../palette.ts";
import { polygon } from "../../shapes.ts";
import type { Spot } from "../drawing.ts";
import { strokes } from "../ink.ts";
import type { Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";

/** Half the width of a break, with its zigzags. */
export const BREAK = 6;

/** A white strip across the view between two zigzag lines. */
export function broken(x: number, top: number, bottom: number): readonly Item[] {
  const [from, to] = [top - 3, bottom + 3];
  const middle = (from + to) / 2;
  const zigzag = (at: number): readonly Spot[] => [
    [at, from],
    [at, middle - 3],
    [at + 3, middle - 1],
    [at - 3, middle + 1],
    [at, middle + 3],
    [at, to],
  ];
  const [a, b] = [zigzag(x - 2.5), zigzag(x + 2.5)];
  const line = (spots: readonly Spot[]): Segment[] => spots.slice(1).map((p, i) => [spots[i] as Spot, p]);
  return [polygon([...a, ...[...b].reverse()], { fill: WHITE }), ...strokes([...line(a), ...line(b)], NARROW)];
}
