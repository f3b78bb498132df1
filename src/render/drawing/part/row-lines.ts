/** The lines of the rows of a part: between the face and the edge, and right of both. */
import type { Hole } from "../../../solve/design.ts";
import type { Item } from "../../document.ts";
import type { Spot } from "../drawing.ts";
import { toVec } from "../feature-box.ts";
import { heightOf } from "../fit.ts";
import type { Plate } from "../plate.ts";
import { type Arranged, GAP } from "./arrange.ts";
import { drawLines } from "./drawn-lines.ts";
import { LADDER, type Line, type SetLine } from "./ladder-lines.ts";
import { farthest, type Ladder } from "./ladders.ts";
import { framed } from "./places.ts";
import type { InPart } from "./rows.ts";
import type { Sheet } from "./sheet.ts";

/** From a hole or the side of a view to the extension line of its row. */
const OFF = 4;
/** From the right of the face to its upright lines. */
const OUT = 6;

export function rowLines(
  { lies, face }: Sheet,
  { ladders, left, top, along, hang, level, upright, scale }: Arranged,
  onFace: (p: InPart) => Spot,
  onEdge: (p: InPart) => Spot,
  plate: Plate,
): readonly Item[] {
  const frame = framed(lies);
  const spotOf = (hole: Hole): InPart => frame(toVec(hole.at));
  const foot = top + heightOf(face.extent) * scale.points;
  const start = foot + hang + (GAP - LADDER) / 2;
  const right = left + along.width + LADDER / 2;
  const feetOf = (ladder: Ladder, line: Line): readonly [Spot | null, Spot | null] => {
    const foot = (end: "from" | "to"): Spot | null => {
      if (ladder.axis === 2) return null;
      const into = ladder.holes.some((hole) => frame(hole.direction)[1] > 0.9);
      const hole = farthest(ladder, end, spotOf, ladder.axis === 1 ? [1, 0, 0] : [0, into ? 0 : -1, into ? 1 : 0]);
      if (ladder.axis === 1)
        return hole ? beyond(onFace(spotOf(hole)), [OFF, 0]) : [left + along.width + 2, -line[end]];
      if (hole) return into ? beyond(onEdge(spotOf(hole)), [0, -OFF]) : beyond(onFace(spotOf(hole)), [0, OFF]);
      return [line[end], top + heightOf(face.extent) * scale.points + 2];
    };
    return [foot("from"), foot("to")];
  };
  const of = (lengthwise: boolean): readonly Ladder[] => ladders.filter(({ axis }) => (axis === 0) === lengthwise);
  const feet = (set: readonly SetLine[], lengthwise: boolean) =>
    of(lengthwise).map((ladder, i) => feetOf(ladder, (set[i] as SetLine).line));
  return [
    ...drawLines(
      level,
      { level: true, spot: (s, out) => [s, start + out], end: foot - start },
      feet(level, true),
      plate,
    ),
    ...drawLines(
      upright,
      { level: false, spot: (s, out) => [right - LADDER / 2 + OUT + out, -s], end: -OUT },
      feet(upright, false),
      plate,
    ),
  ];
}

const beyond = ([x, y]: Spot, [dx, dy]: Spot): Spot => [x + dx, y + dy];
