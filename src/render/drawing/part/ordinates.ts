/** Running dimensions (ISO 129-1): every place is told from one edge, which is 0; what stands too close is bent apart. */
import { type Length, rational } from "../../../units/index.ts";
import type { Item } from "../../document.ts";
import { BLACK } from "../../palette.ts";
import type { Pen, Spot } from "../drawing.ts";
import { strokes } from "../ink.ts";
import { boxAround, type Plate, type Segment } from "../plate.ts";
import { NARROW } from "../strokes.ts";
import type { Row } from "./rows.ts";

export const SIZE = 10;
/** From text to text. */
export const PITCH = 11;
/** The three stretches of a leader: from the view, to the bent place, to the text. */
const OUT = 4;
const BEND = 9;
const IN = 3;
export const LEADER = OUT + BEND + IN;
/** What a leader may rise or fall on its way, for each point that it is wide. */
const STEEP = 2;
const WIDEST_BEND = 34;

/** How wide the leaders of numbers must be that are set beside their places. */
export const leaderFor = (wanted: readonly number[], bent: readonly number[]): number =>
  OUT +
  IN +
  Math.min(WIDEST_BEND, Math.max(BEND, ...wanted.map((at, i) => Math.abs((bent[i] as number) - at) / STEEP)));

/** A number, and at which place of the part it stands, in units of 1/16 µm. */
export interface Told {
  readonly value: number;
  readonly text: string;
}

/** The same on the page. */
export interface Ordinate extends Omit<Told, "value"> {
  /** Along the side, in points. */
  readonly at: number;
}

/** Prints the places of a part. */
export interface Numbers {
  readonly print: Pen["print"];
  /** Whether a rule has marks for such steps, one after the other. */
  readonly marked: (pitch: Length) => boolean;
}

/** What is told of sorted places, `from` being 0. */
export const told = (values: readonly number[], from: number, { print }: Pick<Numbers, "print">): readonly Told[] =>
  values.map((value) => ({ value, text: print(lengthOf(Math.abs(value - from))) }));

/** "7 × 4", seven spaces of 4; "7 equal" where a rule has no marks for them. */
export function spacesOf({ from, to, spaces }: Row, { print, marked }: Numbers): string {
  const pitch = lengthOf((to - from) / spaces);
  return `${spaces}\u202f${marked(pitch) ? `×\u202f${print(pitch)}` : "equal"}`;
}

export const ordinates = (all: readonly Told[], place: (value: number) => number): readonly Ordinate[] =>
  all.map(({ value, ...rest }) => ({ at: place(value), ...rest }));

export const lengthOf = (value: number): Length => rational(Math.round(value));

export const widest = (all: readonly Pick<Told, "text">[], pen: Pen): number =>
  Math.max(0, ...all.map(({ text }) => pen.measure(text, "regular", SIZE)));

/**
 * Places near the wanted ones, in their order, `PITCH` apart and none before `least`: runs that are too close are set around
 * their middle, so that the sum of the squares of what they are shifted by is least.
 */
export function apart(wanted: readonly number[], least: number, pitch = PITCH): readonly number[] {
  const runs: { sum: number; count: number }[] = [];
  wanted.forEach((at, i) => {
    runs.push({ sum: at - i * pitch, count: 1 });
    for (;;) {
      const [before, last] = [runs.at(-2), runs.at(-1)];
      if (!before || !last || before.sum / before.count <= last.sum / last.count) break;
      runs.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  });
  const shifts = runs.flatMap(({ sum, count }) => Array.from({ length: count }, () => Math.max(least, sum / count)));
  return shifts.map((shift, i) => shift + i * pitch);
}

/** Above a view whose top edge is at `edge`, or below one whose lower edge is there, the texts turned. */
export function ordinatesAlong(
  all: readonly Ordinate[],
  side: "above" | "below",
  edge: number,
  left: number,
  plate: Plate,
  pen: Pen,
): Item[] {
  const bent = apart(
    all.map(({ at }) => at),
    left,
  );
  const out = side === "above" ? -1 : 1;
  return all.flatMap(({ at, text }, i): Item[] => {
    const to = bent[i] as number;
    const width = pen.measure(text, "regular", SIZE);
    const foot = edge + out * LEADER;
    plate.addBox(boxAround(to, foot + (out * width) / 2, SIZE, width));
    const spots: readonly Spot[] = [
      [at, edge + out * 1.5],
      [at, edge + out * OUT],
      [to, edge + out * (OUT + BEND)],
      [to, foot - out * 1.5],
    ];
    return [
      ...leader(plate, ...spots),
      {
        ...{ kind: "text", x: to + SIZE * 0.33, y: side === "above" ? foot : foot + width, text, font: "regular" },
        ...{ size: SIZE, ink: BLACK, turn: 90, width },
      },
    ];
  });
}

/** Left of a view whose left edge is at `left`. `all` from above to below, their texts at `bent`; `long`: the leaders. */
export function ordinatesLeft(
  all: readonly Ordinate[],
  { left, bent, long }: { readonly left: number; readonly bent: readonly number[]; readonly long: number },
  plate: Plate,
  pen: Pen,
): readonly Item[] {
  return all.flatMap(({ at, text }, i): Item[] => {
    const to = bent[i] as number;
    const width = pen.measure(text, "regular", SIZE);
    plate.addBox(boxAround(left - long - width / 2, to, width, SIZE));
    return [
      ...leader(plate, [left - 1.5, at], [left - OUT, at], [left - long + IN, to], [left - long + 1.5, to]),
      {
        ...{ kind: "text", x: left - long - width, y: to + SIZE * 0.33, text, font: "regular", size: SIZE },
        ...{ ink: BLACK, width },
      },
    ];
  });
}

function leader(plate: Plate, ...spots: readonly Spot[]): readonly Item[] {
  const lines = spots.slice(1).map((to, i): Segment => [spots[i] as Spot, to]);
  for (const line of lines) plate.addLeader(line);
  return strokes(lines, NARROW);
}
