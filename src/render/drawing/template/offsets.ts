/** A curve that is too large to trace: its points by two measures each. */
import type { CurvePattern } from "../../../solve/build.ts";
import type { Units } from "../../../solve/design.ts";
import { toNumber } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import { circle } from "../../shapes.ts";
import type { Drawing, Pen, Spot } from "../drawing.ts";
import { strokes } from "../ink.ts";
import { apart, LEADER, ordinatesAlong, SIZE } from "../part/ordinates.ts";
import { Plate, type Segment } from "../plate.ts";
import { usualScale } from "../scale.ts";
import { CHAIN, HIDDEN, NARROW, OUTLINE } from "../strokes.ts";
import { outlineOf } from "./curve-tile.ts";
import { truePoints } from "./print-bar.ts";
import type { Panel } from "./set-out.ts";

/** Room above for the lengths along the edge, and below for those up from it. */
const TEXT = 44;

export function offsetDrawing(pattern: CurvePattern, units: Units, pen: Pen, most: number): Drawing & Panel {
  const { offsets = [] } = pattern;
  const [wide, high] = [toNumber(pattern.width), toNumber(pattern.height)];
  const scale = usualScale(units, ({ points }) => wide * points <= most - 2 * SIZE && high * points <= 220);
  const by = scale.points / (truePoints(pattern.width) / wide);
  const [left, top] = [SIZE, LEADER + TEXT];
  const bottom = top + high * scale.points;
  const spot = ([x, y]: Spot): Spot => [left + x * by, bottom - y * by];
  const curve = outlineOf(pattern).map(([a, b]): Segment => [spot(a), spot(b)]);
  const edges = pattern.edges.map(({ from, to, is, gone }) => {
    const line: Segment = [
      spot([truePoints(from[0]), truePoints(from[1])]),
      spot([truePoints(to[0]), truePoints(to[1])]),
    ];
    return strokes([line], is === "middle" ? CHAIN : gone ? HIDDEN : NARROW);
  });
  const points = offsets.map(([x, y]) => ({ x, y, at: spot([truePoints(x), truePoints(y)]) }));
  const above = points.map(({ x, at }) => ({ at: at[0], text: pen.print(x) }));
  const plate = new Plate({ x: 0, y: 0, width: most, height: bottom + TEXT });
  const bent = apart(
    above.map(({ at }) => at),
    left,
  );
  const below = points.map(({ y }, i): Item => {
    const text = pen.print(y);
    const width = pen.measure(text, "regular", SIZE);
    const x = (bent[i] as number) + SIZE * 0.33;
    return { kind: "text", x, y: bottom + 4 + width, text, font: "regular", size: SIZE, ink: BLACK, turn: 90, width };
  });
  const stations = points.map(
    ({ at: [x, y] }): Segment => [
      [x, bottom],
      [x, y],
    ],
  );
  const told = points.map(({ x, y }) => `${pen.print(x)} along, ${pen.print(y)} up`).join("; ");
  return {
    items: [
      ...strokes(curve, OUTLINE),
      ...edges.flat(),
      ...strokes(stations, NARROW),
      ...points.map(({ at }) => circle(at[0], at[1], 1.2, { fill: BLACK })),
      ...ordinatesAlong(above, "above", top, left, plate, pen),
      ...below,
    ],
    alt: `Curve, ${pattern.what}, for ${pattern.marks.join(", ")}, by points: ${told}.`,
    scale: scale.text,
    width: left + wide * scale.points + SIZE,
    height: bottom + TEXT,
  };
}
