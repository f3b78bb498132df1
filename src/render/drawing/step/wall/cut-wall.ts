/** A wall in section: what lies on it, hatched, and the stud or the masonry behind, with their names. */
import type { Item } from "../../../document.ts";
import { TINT, WALL, WHITE } from "../../../palette.ts";
import { TYPE } from "../../../style.ts";
import type { Pen, Spot } from "../../drawing.ts";
import { centred, fills, strokes } from "../../ink.ts";
import { HATCH, hatch } from "../../layout/hatch.ts";
import { type Box, grown, type Plate, type Segment } from "../../plate.ts";
import { NARROW, PRESENT } from "../../strokes.ts";

export interface WallInSection {
  /** Board or plaster; and what holds. */
  readonly lining: Box;
  readonly behind: Box;
  readonly masonry: boolean;
}

export function cutWall({ lining, behind, masonry }: WallInSection): readonly Item[] {
  return [
    ...fills([cornersOf(behind)], masonry ? WALL : TINT.light),
    ...fills([cornersOf(lining)], WALL),
    ...strokes([...hatch(lining), ...(masonry ? hatch(behind) : [])], HATCH),
    ...strokes([...uprights(lining), ...uprights(behind)], PRESENT),
  ];
}

/** From its upper end to the name of what holds; and from the screw to its own name. */
const [DOWN, BELOW] = [12, 17];

/** Both names stand in what holds; `screw` runs level. */
export function namesInWall(
  { behind, masonry }: WallInSection,
  screw: Segment,
  plate: Plate,
  pen: Pen,
): readonly Item[] {
  const { left, right, top } = behind;
  const middle = (left + right) / 2;
  const [[x1, y], [x2]] = screw;
  const on = Math.max(Math.min(x1, x2), Math.min(Math.max(x1, x2) - 1, middle));
  const [held, own] = (
    [
      [masonry ? "masonry" : "stud", [middle, top + DOWN]],
      ["screw", [middle, y + BELOW]],
    ] as const
  ).map(([text, at]) => {
    const { item, box } = centred(pen, text, at, { size: TYPE.caption.size });
    const around = grown(box, 1.5);
    plate.addBox(around);
    return [...(masonry ? fills([cornersOf(around)], WHITE) : []), item];
  });
  const line: Segment = [
    [middle, y + BELOW - LETTERS],
    [on, y],
  ];
  plate.addLeader(line);
  return [...strokes([line], NARROW), ...(held ?? []), ...(own ?? [])];
}

/** From the middle of a name to a line that leads to it. */
const LETTERS = 6.5;

export const cornersOf = ({ left, right, top, bottom }: Box): readonly Spot[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

export const uprights = ({ left, right, top, bottom }: Box): readonly Segment[] =>
  [left, right].map(
    (x): Segment => [
      [x, top],
      [x, bottom],
    ],
  );
