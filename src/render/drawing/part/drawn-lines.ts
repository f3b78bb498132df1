/** Lines of numbers beside a view, drawn where they have been set. */
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import { pastTheView } from "../dimension/extension-lines.ts";
import type { Spot } from "../drawing.ts";
import { arrowhead, strokes } from "../ink.ts";
import { boxAround, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import { ARROW, LADDER, type SetLine } from "./ladder-lines.ts";
import { SIZE } from "./ordinates.ts";

/** Where lines stand beside a view: from along its side and out of it to the page, and how far out the view itself ends. */
export interface BesideView {
  readonly spot: (along: number, out: number) => Spot;
  readonly level: boolean;
  readonly end: number;
}

/** `feet`: from where in the view the extension lines of each come. */
export function drawLines(
  set: readonly SetLine[],
  { spot, level, end }: BesideView,
  feet: readonly (readonly [Spot | null, Spot | null])[],
  plate: Plate,
): readonly Item[] {
  return set.flatMap(({ line, words, level: row }, i): readonly Item[] => {
    const out = row * LADDER + LADDER / 2;
    const at = (along: number, by = 0): Spot => spot(along, out + by);
    const taken = words
      .filter(({ middle, down }) => down === 0 && middle > line.from && middle < line.to)
      .sort((a, b) => a.middle - b.middle);
    const stops = taken.flatMap(({ middle, width }) => [middle - width / 2 - 2, middle + width / 2 + 2]);
    const edges = [line.from, ...stops, line.to];
    const runs = edges.flatMap((from, j): Segment[] => (j % 2 === 0 ? [[at(from), at(edges[j + 1] as number)]] : []));
    const ticks = line.places
      .filter((place) => !taken.some(({ middle, width }) => Math.abs(place - middle) < width / 2 + 2))
      .map((place): Segment => [at(place, -2), at(place, 2)]);
    const witnesses = ([line.from, line.to] as const).flatMap((along, which): Segment[] => {
      const foot = feet[i]?.[which as 0 | 1];
      if (!foot) return [];
      const origin = spot(along, 0);
      const from = level ? foot[1] - origin[1] : foot[0] - origin[0];
      return pastTheView(from, out, end).map(([a, b]) => [spot(along, a), spot(along, b)]);
    });
    for (const run of [...runs, ...witnesses]) plate.addLeader(run);
    const ahead: Spot = level ? [1, 0] : [0, -1];
    const back: Spot = level ? [-1, 0] : [0, 1];
    return [
      ...strokes([...runs, ...ticks, ...witnesses], NARROW),
      arrowhead(at(line.from), back, BLACK, ARROW),
      arrowhead(at(line.to), ahead, BLACK, ARROW),
      ...words.map(({ text, middle, width, down }): Item => {
        const [x, y] = at(middle, down * LADDER);
        plate.addBox(level ? boxAround(x, y, width, SIZE) : boxAround(x, y, SIZE, width));
        const place = level
          ? { x: x - width / 2, y: y + SIZE * 0.33 }
          : { x: x + SIZE * 0.33, y: y + width / 2, turn: 90 };
        return { kind: "text", ...place, text, font: "regular", size: SIZE, ink: BLACK, width };
      }),
    ];
  });
}
