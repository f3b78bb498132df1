/** Doors, drawers and loose shelves are made to the openings that they go into: what bounds those, and how much of them is filled. */
import type { Length } from "../../../units/length.ts";
import { add, less, subtract, sum } from "../../../units/rational.ts";
import { isCutLater, makingOf } from "../../design/making/plain.ts";
import { type AxisIndex, enclosing, extent, INDICES, indexOf } from "../../design/space.ts";
import type { Box, Part } from "../../design.ts";
import { onPins } from "../order/links.ts";
import { bounding, boxOfPiece, broadest, type Going, lieBeside, NEAR } from "./bounding.ts";
import type { Work } from "./draft.ts";

/** What goes into an opening as a whole. */
export interface Entering {
  /** Ids of its parts, and of hardware that goes with them. */
  readonly moves: readonly string[];
  readonly kind: "swing" | "slide" | "lift" | "rests";
  /** The directions in which its opening decides. */
  readonly axes: readonly AxisIndex[];
}

/** An opening in one direction, from the part at its low side to that at its high side. */
export interface Opening {
  readonly axis: AxisIndex;
  readonly low: Part;
  readonly high: Part;
  /** Ids of these and of all others that stand as near. */
  readonly bounds: readonly string[];
  /** Ids of what it runs on: that stands too before anything is fitted. */
  readonly runsOn: readonly string[];
  /** What it measures. */
  readonly room: Length;
  /** How large what goes in is, all together; and how many those are: a pair of doors. */
  readonly filled: Length;
  readonly count: number;
}

type Known = Pick<Work, "design" | "motions">;

/** What waits for its opening: bodies that move, and what lies loose on pins. */
export function enteringOf({ design, motions }: Known): readonly Entering[] {
  const waiting = design.parts.filter((part) => isCutLater(part) && makingOf(part).cut === "opening");
  const moving = motions.flatMap(({ moves, kind, poses }): readonly Entering[] => {
    const box = boxOf(design.parts.filter(({ id }) => moves.includes(id)));
    if (!box || !waiting.some(({ id }) => moves.includes(id))) return [];
    const [x, y] = poses.at(-1)?.shift ?? [0, 1, 0];
    const thin = INDICES.reduce((best, axis) => (less(extent(box, axis), extent(box, best)) ? axis : best));
    // A drawer is fitted across, a door across and in its height.
    const axes: readonly AxisIndex[] =
      kind === "slide" ? [Math.abs(x) > Math.abs(y) ? 1 : 0] : INDICES.filter((axis) => axis !== thin);
    return [{ moves, kind, axes }];
  });
  const pinned = onPins(design);
  const resting = waiting
    .filter(({ id }) => pinned.has(id) && !moving.some(({ moves }) => moves.includes(id)))
    .map(({ id, axes }): Entering => ({ moves: [id], kind: "rests", axes: [indexOf(axes.length)] }));
  return [...moving, ...resting];
}

/** The openings that some parts of what goes in, one of `all`, fill; none where nothing stands on one of two sides. */
export function openingsOf(
  known: Known,
  all: readonly Entering[],
  entering: Entering,
  { parts, onIt }: { readonly parts: readonly Part[]; readonly onIt: boolean },
): readonly Opening[] {
  const box = boxOf(parts);
  const axes = entering.axes;
  // The front of a drawer is fitted in its height too.
  const both: readonly AxisIndex[] = onIt && entering.kind === "slide" ? [...axes, 2] : axes;
  const flat = entering.kind !== "rests" && (entering.kind !== "slide" || onIt);
  return box ? both.flatMap((axis) => openingAlong(known, all, entering, { box, parts, flat }, axis) ?? []) : [];
}

function openingAlong(
  known: Known,
  all: readonly Entering[],
  entering: Entering,
  going: Going,
  axis: AxisIndex,
): Opening | null {
  const { box } = going;
  const loose = new Set([...all, ...known.motions].flatMap(({ moves }) => moves));
  const around = known.design.parts
    .filter(({ id, turned }) => !loose.has(id) && !turned)
    .flatMap((part) => part.solid.pieces.map((piece) => ({ part, piece: boxOfPiece(piece) })));
  const lows = bounding(around, going, axis, false);
  const highs = bounding(around, going, axis, true);
  const [low, high] = [broadest(lows, box, axis), broadest(highs, box, axis)];
  if (!low || !high) return null;
  const [from, to] = [low.piece.high[axis], high.piece.low[axis]];
  const others = all.flatMap((other) => {
    const own = other === entering || other.kind !== entering.kind ? null : boxOf(partsOf(known, other.moves));
    return own && lieBeside(box, own, axis) ? [own] : [];
  });
  const row = [box, ...others].filter(
    (each) => !less(add(each.low[axis], NEAR), from) && !less(add(to, NEAR), each.high[axis]),
  );
  return {
    bounds: [...new Set([...lows, ...highs].map(({ part }) => part.id))],
    runsOn: runsOn(known, entering),
    ...{ axis, low: low.part, high: high.part, room: subtract(to, from) },
    ...{ filled: sum(row.map((each) => extent(each, axis))), count: row.length },
  };
}

/** Rails and supports. */
const runsOn = ({ design }: Known, { moves }: Entering): readonly string[] =>
  design.joints.flatMap(({ kind, parts }) =>
    kind === "running" && parts.some((id) => moves.includes(id)) ? parts.filter((id) => !moves.includes(id)) : [],
  );

const partsOf = ({ design }: Known, moves: readonly string[]): readonly Part[] =>
  design.parts.filter(({ id }) => moves.includes(id));

const boxOf = (parts: readonly Part[]): Box | null =>
  parts.length === 0 ? null : parts.map(({ blank }) => blank).reduce(enclosing);
