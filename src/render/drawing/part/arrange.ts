/** Where the views of a part and its numbers stand at a scale. */
import type { Frame } from "../../style.ts";
import { BAR_HEIGHT } from "../bar.ts";
import type { Pen, Spot } from "../drawing.ts";
import { type Extent, heightOf } from "../fit.ts";
import type { Scale } from "../scale.ts";
import { type CloseEnd, type CloseSet, closeEnd, setEnd } from "./close-end.ts";
import { type Line, reachOf, type SetLine, setLines } from "./ladder-lines.ts";
import { apart, LEADER, leaderFor, PITCH, SIZE, type Told, widest } from "./ordinates.ts";
import type { Sheet } from "./sheet.ts";
import { type Squeezed, squeezed, whole } from "./squeeze.ts";

/** Between the views: above the edge, and beside the end. */
export const GAP = 22;
const ASIDE = 16;
/** What stands right of the face hangs no farther below it, where that can be. */
const HANG = 8;
/** Parts that fit only smaller than this are drawn broken at a larger scale. */
const SMALL = 1 / 4;
export const POINTS_PER_UNIT = 72 / 406_400;

export interface Arranged {
  readonly scale: Scale;
  readonly along: Squeezed;
  readonly left: number;
  readonly top: number;
  /** Left edge of the end view, top of the edge view, and what is lowest. */
  readonly endLeft: number;
  readonly edgeTop: number;
  /** Down the page, where the numbers beside the face and beside the edge are set, and how long their leaders are. */
  readonly face: readonly number[];
  readonly edge: readonly number[];
  readonly long: number;
  /** Lowest of the edge and its numbers, and of all. */
  readonly bottom: number;
  /** The lines of rows between the face and the edge, and right of both. */
  readonly level: readonly SetLine[];
  readonly upright: readonly SetLine[];
  /** So much lower the level lines begin. */
  readonly hang: number;
  /** The end in a view of its own, and where the left and the top of that are. */
  readonly close: { readonly set: CloseSet; readonly at: Spot } | null;
  /** The rows that have a line. */
  readonly ladders: Sheet["ladders"];
  /** How far along the part a number stands from its place at most, in points. */
  readonly bent: number;
}

/** A row's line on the page, by where its places stand along a side. */
const lineOf = (
  { row, ends, words }: Sheet["ladders"][number],
  place: (value: number) => number,
  hides: (value: number) => boolean = () => false,
): Line => {
  const pitch = (row.to - row.from) / row.spaces;
  const places = Array.from({ length: row.spaces + 1 }, (_, i) => row.from + i * pitch)
    .filter((value) => !hides(value))
    .map(place);
  return { from: places[0] as number, to: places.at(-1) as number, places, ends, words };
};

/** Shares of the room that a part with a gap fills: less where its numbers do not go in else. */
const FILLED = [1, 0.8, 0] as const;

/** Null where they do not go in; `scales`, largest first: those of views beside it. */
export function arranged(
  sheet: Sheet,
  scale: Scale,
  frame: Frame,
  pen: Pen,
  scales: readonly Scale[],
): Arranged | null {
  const close = closeEnd(sheet, scale, scales);
  for (const end of close ? [close, null] : [null])
    for (const share of FILLED) {
      const found = arrangedIn(sheet, scale, frame, pen, share, end);
      if (found) return found;
    }
  return null;
}

function arrangedIn(
  sheet: Sheet,
  scale: Scale,
  frame: Frame,
  pen: Pen,
  share: number,
  end: CloseEnd | null,
): Arranged | null {
  const { lies, numbers, face, edge } = sheet;
  const { ladders } = end ?? sheet;
  const close = end && setEnd(end, sheet, pen);
  const { low, high } = face.extent;
  const k = scale.points;
  const deep = heightOf(edge.extent) * k;
  const above = LEADER + widest(numbers.along, pen) + 4;
  const top = frame.y + above;
  const across = ups(numbers.across, face.extent, top, k);
  const besideFace = apart(across, frame.y + SIZE / 2);
  const foot = top + heightOf(face.extent) * k;
  const through = ups(numbers.through, edge.extent, 0, k);
  const around = apart(through, Number.NEGATIVE_INFINITY);
  const long = Math.max(leaderFor(across, besideFace), leaderFor(through, around));
  const margin = long + widest([...numbers.across, ...numbers.through], pen) + 2;
  const right = frame.x + frame.width;
  // How wide the lines at the right are is known when it is known how low the edge stands, which they do not change.
  const besideOf = (upright: number): number => (lies.end ? (close?.width ?? deep) + ASIDE : 0) + upright;
  const uprightLines = (edgeTop: number): readonly Line[] =>
    ladders
      .filter(({ axis }) => axis > 0)
      .map((ladder) =>
        ladder.axis === 1
          ? lineOf(ladder, (v) => -(top + (high[1] - v) * k))
          : lineOf(ladder, (v) => -(edgeTop + (edge.extent.high[1] - v) * k)),
      );
  const lengthwise = ladders.filter(({ axis }) => axis === 0);
  const place = (room: number): Squeezed => {
    const plain = whole(low[0], high[0], k);
    if (plain.width <= room || k > SMALL * POINTS_PER_UNIT * 1.001) return plain;
    return squeezed(low[0], high[0], high[1] - low[1], k, sheet.kept, { room, filled: share * room });
  };
  // The edge stands where its numbers, which are set around it, keep a line off those of the face.
  const edgeTopFor = (rows: number): number =>
    Math.max(foot + GAP + rows, Math.max(foot, (besideFace.at(-1) ?? 0) + PITCH) + PITCH - (around[0] ?? 0));
  const lowest = frame.y + frame.height - BAR_HEIGHT - 4;
  // The numbers along the face may reach over its right end.
  const highest = -(top - 4);
  const setUpright = (lines: readonly Line[]): readonly SetLine[] | null =>
    setLines(lines, [Math.min(-foot - HANG, ...lines.map(({ from }) => from)), highest], pen) ??
    setLines(lines, [-lowest, highest], pen);
  const guess = setUpright(uprightLines(edgeTopFor(0)));
  if (guess === null) return null;
  const beside = besideOf(reachOf(guess));
  const room = frame.width - margin - beside - 4;
  const along = place(room);
  if (along.width > room + 1e-6) return null;
  const atLeft = lies.end?.at === "left" && close === null;
  const left = frame.x + margin + (atLeft ? deep + ASIDE : 0);
  const level = setLines(
    lengthwise.map((ladder) => lineOf(ladder, (u) => left + along.place(u), along.hides)),
    [left, right],
    pen,
  );
  if (level === null) return null;
  // Where lines of both kinds meet at the corner, the level ones stand below what hangs down there.
  const meet = level.some((line) => line.high > left + along.width);
  const hang = meet ? Math.max(0, ...guess.map((line) => -line.low - foot)) : 0;
  const edgeTop = edgeTopFor(reachOf(level) + hang);
  const upright = setUpright(uprightLines(edgeTop));
  if (upright === null || reachOf(upright) > reachOf(guess)) return null;
  const besideEdge = around.map((at) => edgeTop + at);
  const lengthways = [numbers.along, numbers.below].map((all) => {
    const places = all.map(({ value }) => left + along.place(value));
    return { places, set: apart(places, left) };
  });
  const last = lengthways.map(({ set }) => set.at(-1));
  const bent = Math.max(
    0,
    ...lengthways.flatMap(({ places, set }) => set.map((at, i) => Math.abs(at - (places[i] ?? at)))),
  );
  const below = numbers.below.length > 0 ? LEADER + widest(numbers.below, pen) : 0;
  const closeFoot = close ? frame.y + close.height : 0;
  const bottom = Math.max(edgeTop + deep + below, (besideEdge.at(-1) ?? 0) + SIZE / 2, closeFoot) + 4;
  if (Math.max(...last.map((at) => at ?? 0)) + SIZE / 2 > right || bottom > lowest) return null;
  const beyond = left + along.width + reachOf(upright) + ASIDE;
  const endLeft = close ? beyond + close.left : atLeft ? frame.x + margin : beyond;
  return {
    ...{
      scale,
      along,
      left,
      top,
      endLeft,
      edgeTop,
      bottom,
      hang,
      face: besideFace,
      edge: besideEdge,
      long,
      level,
      upright,
      bent,
      ladders,
      close: close && { set: close, at: [beyond, frame.y] },
    },
  };
}

/** Places up a view, down the page. */
const ups = (all: readonly Told[], { high }: Extent, top: number, k: number): number[] =>
  all.map(({ value }) => top + (high[1] - value) * k).reverse();
