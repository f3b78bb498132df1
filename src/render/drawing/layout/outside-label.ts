/** The mark of a part that is too narrow for it: beside the part or the board, with a leader. Its size stands in the cut list. */
import type { Item } from "../../document.ts";
import { BLACK, WHITE } from "../../palette.ts";
import { circle, rectangle } from "../../shapes.ts";
import { MARK_SIZE } from "../balloon.ts";
import type { Pen, Spot } from "../drawing.ts";
import { centred, strokes } from "../ink.ts";
import { type Box, boxAround, grown, meets, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";

const LINE = 14;
const HIGH = 10;
const ROWS = 2;
/** From the board to the middle of a label above it, where the numbers of cuts stand too. */
const ABOVE = 11;
/** How far below the board a label may reach. */
export const BELOW = 14 + ROWS * LINE;

interface Place {
  readonly centre: Spot;
  readonly leader: Segment;
  readonly cost: number;
}

/** `others` are the parts of the board, which the label keeps off. */
export function labelOutside(
  pen: Pen,
  mark: string,
  part: Box,
  board: Box,
  others: readonly Box[],
  plate: Plate,
): readonly Item[] {
  const width = pen.measure(mark, "bold", MARK_SIZE);
  const boxOf = ({ centre: [x, y] }: Place): Box => boxAround(x, y, width, HIGH);
  const free = (place: Place): boolean => {
    const box = grown(boxOf(place), 1.5);
    return plate.isFree(box) && !others.some((other) => meets(other, box));
  };
  const places = [...inLine(part, width), ...roundBoard(part, board, width)].sort((a, b) => a.cost - b.cost);
  const found = places.find((p) => free(p) && !plate.blocks(p.leader)) ?? places.find(free);
  if (!found) return [];
  const box = boxOf(found);
  plate.addBox(box);
  plate.addLeader(found.leader);
  const [x, y] = found.leader[1];
  return [
    ...strokes([found.leader], NARROW),
    circle(x, y, 1.2, { fill: BLACK }),
    rectangle(box.left - 1, box.top - 1, width + 2, HIGH + 2, { fill: WHITE }),
    centred(pen, mark, found.centre, { font: "bold", size: MARK_SIZE }).item,
  ];
}

/** Beyond the ends of the part, in line with it, the nearer the better. */
function inLine({ left, right, top, bottom }: Box, width: number): readonly Place[] {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  return Array.from({ length: 12 }, (_, n) => 8 + n * 8).flatMap((away): Place[] => {
    const reach = away + width / 2;
    const down = away + HIGH / 2;
    return [
      {
        centre: [right + reach, y],
        leader: [
          [right + away, y],
          [right - 4, y],
        ],
        cost: away,
      },
      {
        centre: [left - reach, y],
        leader: [
          [left - away, y],
          [left + 4, y],
        ],
        cost: away + 1,
      },
      {
        centre: [x, bottom + down],
        leader: [
          [x, bottom + away],
          [x, bottom - 3],
        ],
        cost: away + 2,
      },
      {
        centre: [x, top - down],
        leader: [
          [x, top - away],
          [x, top + 3],
        ],
        cost: away + 3,
      },
    ];
  });
}

/** Above and below the board. */
function roundBoard(part: Box, board: Box, width: number): readonly Place[] {
  const middle = (part.top + part.bottom) / 2;
  const places: Place[] = [];
  for (const share of [0.5, 0.3, 0.7, 0.15, 0.85])
    for (let row = 0; row < ROWS; row++)
      for (let n = -12; n <= 12; n++) {
        const target: Spot = [part.left + (part.right - part.left) * share, middle];
        const x = target[0] + n * 12;
        const start = Math.max(x - width / 2, Math.min(x + width / 2, target[0]));
        for (const [y, edge] of [
          [board.top - ABOVE - row * LINE, 5],
          [board.bottom + 14 + row * LINE, -5],
        ] as const)
          places.push({
            centre: [x, y],
            leader: [[start, y + edge], target],
            cost: Math.abs(n) * 12 + Math.abs(y - middle) + 10 * Math.abs(share - 0.5),
          });
      }
  return places;
}
