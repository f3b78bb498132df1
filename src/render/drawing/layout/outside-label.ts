/** The mark of a part that is too narrow for it: beside the part or the board, with a leader. Its size stands below the board. */
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

/** Parts alike that lie side by side have one label, with a leader through all of them; `others` are the parts of the board, which it keeps off. */
export function labelOutside(
  pen: Pen,
  mark: string,
  parts: readonly Box[],
  board: Box,
  others: readonly Box[],
  plate: Plate,
): readonly Item[] {
  const words = parts.length > 1 ? `${mark} × ${parts.length}` : mark;
  const width = pen.measure(words, "bold", MARK_SIZE);
  const boxOf = ({ centre: [x, y] }: Place): Box => boxAround(x, y, width, HIGH);
  const free = (place: Place): boolean => {
    const box = grown(boxOf(place), 1.5);
    return plate.isFree(box) && !others.some((other) => meets(other, box)) && !isAcross(box, board);
  };
  const around = parts.reduce(both);
  const places = [...inLine(around, width), ...roundBoard(around, board, width)]
    .flatMap((place) => (parts.length > 1 ? through(parts, place) : [place]))
    .sort((a, b) => a.cost - b.cost);
  const found = places.find((p) => free(p) && !plate.blocks(p.leader)) ?? places.find(free);
  if (!found) return [];
  const box = boxOf(found);
  plate.addBox(box);
  plate.addLeader(found.leader);
  const dots = parts.length > 1 ? parts.map((part) => crossing(found.leader, part)) : [found.leader[1]];
  return [
    ...strokes([found.leader], NARROW),
    ...dots.map(([x, y]) => circle(x, y, 1.2, { fill: BLACK })),
    rectangle(box.left - 1, box.top - 1, width + 2, HIGH + 2, { fill: WHITE }),
    centred(pen, words, found.centre, { font: "bold", size: MARK_SIZE }).item,
  ];
}

/** Whether a label lies partly on the board, which ends behind it. */
const isAcross = (label: Box, board: Box): boolean =>
  meets(label, board) &&
  (label.left < board.left || label.right > board.right || label.top < board.top || label.bottom > board.bottom);

const both = (a: Box, b: Box): Box => ({
  left: Math.min(a.left, b.left),
  right: Math.max(a.right, b.right),
  top: Math.min(a.top, b.top),
  bottom: Math.max(a.bottom, b.bottom),
});

const isStack = ([a, b]: readonly Box[]): boolean => a !== undefined && b !== undefined && a.left === b.left;

/** The place with its leader on to the middle of the part that is farthest from it; none where it would not pass all of them. */
function through(parts: readonly Box[], { centre, leader: [start], cost }: Place): readonly Place[] {
  const stack = isStack(parts);
  const [along, across] = stack ? ([1, 0] as const) : ([0, 1] as const);
  const middles = parts.map(({ left, right, top, bottom }): Spot => [(left + right) / 2, (top + bottom) / 2]);
  const far = middles.reduce((so, each) =>
    Math.abs(each[along] - start[along]) > Math.abs(so[along] - start[along]) ? each : so,
  );
  const around = parts.reduce(both);
  const [low, high] = stack ? [around.left, around.right] : [around.top, around.bottom];
  const [from, to] = stack ? [around.top, around.bottom] : [around.left, around.right];
  const beyond = start[along] <= from || start[along] >= to;
  if (!beyond || start[across] < low || start[across] > high) return [];
  const end: Spot = stack ? [start[0], far[1]] : [far[0], start[1]];
  return [{ centre, leader: [start, end], cost }];
}

/** Where a leader meets the middle line of a part. */
const crossing = ([[x, y], [endX]]: Segment, { left, right, top, bottom }: Box): Spot =>
  x === endX ? [x, (top + bottom) / 2] : [(left + right) / 2, y];

/** Parts of one mark that lie close beside each other, as wide or as long as one another, together. */
export function sideBySide<T extends { readonly mark: string; readonly box: Box }>(
  parts: readonly T[],
): readonly T[][] {
  const sets: T[][] = [];
  for (const part of parts) {
    const set = sets.find((each) => each.some((other) => other.mark === part.mark && isBeside(other.box, part.box)));
    const inLineWith =
      set && (set.length < 2 || isStack(set.map(({ box }) => box)) === (set[0]?.box.left === part.box.left));
    if (set && inLineWith) set.push(part);
    else sets.push([part]);
  }
  return sets;
}

/** No more than a saw cut lies between them, in points. */
const CUT = 4;
const isBeside = (a: Box, b: Box): boolean =>
  (a.left === b.left && a.right === b.right && Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom) < CUT) ||
  (a.top === b.top && a.bottom === b.bottom && Math.max(a.left, b.left) - Math.min(a.right, b.right) < CUT);

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
