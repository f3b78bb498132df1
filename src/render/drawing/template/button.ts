/** A wooden button from the side, its top above and its tongue at the left, with running dimensions. */
import type { Button, Units } from "../../../solve/design.ts";
import { add, type Length, subtract, toNumber, ZERO } from "../../../units/index.ts";
import { TINT } from "../../palette.ts";
import { polygon } from "../../shapes.ts";
import type { Drawing, Pen, Spot } from "../drawing.ts";
import { strokes } from "../ink.ts";
import { apart, LEADER, ordinatesAlong, ordinatesLeft, SIZE, widest } from "../part/ordinates.ts";
import { Plate, type Segment } from "../plate.ts";
import { usualScale } from "../scale.ts";
import { CHAIN, HIDDEN, OUTLINE } from "../strokes.ts";
import type { Panel } from "./set-out.ts";

/** `bore`: the diameter of its hole; `most`: as wide as it may be, in points. */
export function buttonDrawing(
  { thick, long, tongue, toScrew }: Button,
  bore: Length,
  units: Units,
  pen: Pen,
  most: number,
): Drawing & Panel {
  const root = tongue.long;
  const foot = add(tongue.down, tongue.thick);
  const screw = add(root, toScrew);
  const told = (all: readonly Length[], place: (length: Length) => number) =>
    all.map((length) => ({ at: place(length), text: pen.print(length) }));
  const [xs, ys] = [[ZERO, root, screw, long] as const, [ZERO, tongue.down, foot, thick] as const];
  const room = (all: readonly Length[]): number => LEADER + 4 + widest(told(all, toNumber), pen);
  const [left, top] = [room(ys), room(xs)];
  const { points: k, text } = usualScale(units, ({ points }) => left + toNumber(long) * points <= most - SIZE);
  const x = (length: Length): number => left + toNumber(length) * k;
  const y = (length: Length): number => top + toNumber(length) * k;
  const corners: readonly (readonly [Length, Length])[] = [
    ...([
      [root, ZERO],
      [long, ZERO],
      [long, thick],
      [root, thick],
    ] as const),
    ...([
      [root, foot],
      [ZERO, foot],
      [ZERO, tongue.down],
      [root, tongue.down],
    ] as const),
  ];
  const outline = corners.map(([a, b]): Spot => [x(a), y(b)]);
  const upright = (at: number, reach = 0): Segment => [
    [at, y(ZERO) - reach],
    [at, y(thick) + reach],
  ];
  const half = (toNumber(bore) * k) / 2;
  const above = told(xs, x);
  const beside = told(ys, y);
  const drops = apart(
    beside.map(({ at }) => at),
    top,
  );
  const width =
    Math.max(
      x(long),
      (apart(
        above.map(({ at }) => at),
        left,
      ).at(-1) ?? 0) +
        SIZE / 2,
    ) + 2;
  const height = Math.max(y(thick), (drops.at(-1) ?? 0) + SIZE / 2) + 4;
  const plate = new Plate({ x: 0, y: 0, width, height });
  return {
    items: [
      polygon(outline, { fill: TINT.light }),
      ...strokes(
        outline.map((spot, i): Segment => [spot, outline[(i + 1) % outline.length] as Spot]),
        OUTLINE,
      ),
      ...strokes([upright(x(screw) - half), upright(x(screw) + half)], HIDDEN),
      ...strokes([upright(x(screw), 3)], CHAIN),
      ...ordinatesAlong(above, "above", top, left, plate, pen),
      ...ordinatesLeft(beside, { left, bent: drops, long: LEADER }, plate, pen),
    ],
    alt: `Wooden button from the side: ${pen.print(long)} long and ${pen.print(thick)} thick; its tongue ${pen.print(root)} long, from ${pen.print(tongue.down)} to ${pen.print(foot)} below its top; its hole ${pen.print(subtract(screw, root))} from the shoulder.`,
    scale: text,
    width,
    height,
  };
}
