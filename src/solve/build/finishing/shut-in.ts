/** What doors, drawers and lids shut in: little air moves there, even through a gap, and what smells stays. */
import { inches, TOLERANCE, toNumber } from "../../../units/index.ts";
import { type AxisIndex, faceAxis, faceOf, INDICES, isHigh } from "../../design/space.ts";
import type { Design, Face, Part } from "../../design.ts";
import { panesOf } from "../order/glazing.ts";
import { comesOff, fastBodies, fastIds } from "../order/links.ts";
import { panelsThatComeOff } from "../order/removable.ts";

type Given = Pick<Design, "parts" | "joints" | "fittings" | "stock">;

/** In units of length: from a corner to the other. */
interface Box {
  readonly low: readonly number[];
  readonly high: readonly number[];
}

export interface Inside {
  /** In squares of the unit of length. */
  readonly area: number;
  /** Those of which so much is inside that it counts, largest first. */
  readonly sides: readonly Face[];
}

export interface ShutIn {
  /** Parts that lie inside with all their faces, such as loose shelves. */
  readonly wholly: ReadonlySet<string>;
  /** Of other parts: what of their faces is inside. */
  readonly faces: ReadonlyMap<string, Inside>;
}

export const NOTHING_SHUT: ShutIn = { wholly: new Set(), faces: new Map() };

/** A face that is no farther from what shuts than this belongs to the room behind it: a slide lies between. Common practice, no source. */
const BESIDE = toNumber(inches(1));

/** Of what moves, and of panels that are finished on both faces alike, nothing counts; behind glass everything is seen. */
export function shutIn(design: Given): ShutIn {
  const { parts } = design;
  const leaves = leavesOf(design);
  const moving = new Set(leaves.flatMap((leaf) => leaf.map(({ id }) => id)));
  const rest = parts.filter(({ id }) => !moving.has(id));
  const loose = looseIn(design);
  const fixed = rest.filter(({ id }) => !loose.has(id));
  const panes = panesOf(design);
  const rooms = leaves
    .filter((leaf) => !leaf.some(({ id }) => panes.has(id)))
    .map((leaf) => roomBehind(design, leaf, fixed));
  const wholly = new Set(
    rest.flatMap((part) => (!fixed.includes(part) && isHeld(rooms, boxOf(part)) ? [part.id] : [])),
  );
  const alike = panelsThatComeOff(design);
  const faces = new Map<string, Inside>();
  for (const part of fixed) {
    if (alike.has(part.id)) continue;
    const inside = insideOf(part, rooms, fixed);
    if (inside.area > 0) faces.set(part.id, inside);
  }
  return { wholly, faces };
}

/** Bodies that hang or run. */
function leavesOf(design: Given): readonly (readonly Part[])[] {
  const { parts, joints } = design;
  return fastBodies(design).flatMap((places) => {
    const body = places.flatMap((place) => parts[place] ?? []);
    const own = new Set(body.map(({ id }) => id));
    const moves = joints.some(
      (joint) => comesOff(joint) && joint.kind !== "resting" && own.has(joint.parts[0]) && !own.has(joint.parts[1]),
    );
    return moves ? [body] : [];
  });
}

/** Doors and lids, each with the ids of its parts: what is turned on hinges. */
export const hungLeaves = (design: Given): readonly (readonly string[])[] =>
  leavesOf(design)
    .map((leaf) => leaf.map(({ id }) => id))
    .filter((ids) => design.joints.some(({ kind, parts: [hung] }) => kind === "hinged" && ids.includes(hung)));

/** What lies on the rest by its weight, with all that is fast to it: a shelf with its lip. */
function looseIn(design: Given): ReadonlySet<string> {
  const lies = fastIds(design).flatMap((ids) => {
    const own = new Set(ids);
    const outward = design.joints.filter(
      (joint) => joint.parts.some((id) => own.has(id)) && joint.parts.some((id) => !own.has(id)),
    );
    return outward.length > 0 && outward.every(({ kind }) => kind === "resting") ? ids : [];
  });
  return new Set(lies);
}

const boxOf = ({ body }: Part): Box => ({ low: body.low.map(toNumber), high: body.high.map(toNumber) });
const around = (boxes: readonly Box[]): Box => ({
  low: INDICES.map((i) => Math.min(...boxes.map(({ low }) => low[i] ?? 0))),
  high: INDICES.map((i) => Math.max(...boxes.map(({ high }) => high[i] ?? 0))),
});
const size = ({ low, high }: Box, i: AxisIndex): number => (high[i] ?? 0) - (low[i] ?? 0);
const shared = (a: Box, b: Box, i: AxisIndex): number =>
  Math.min(a.high[i] ?? 0, b.high[i] ?? 0) - Math.max(a.low[i] ?? 0, b.low[i] ?? 0);

/** As wide and high as what shuts it, and as deep as there is nothing in the way: a drawer is in its room, a door before it. */
function roomBehind(design: Given, leaf: readonly Part[], fixed: readonly Part[]): Box {
  const own = around(leaf.map(boxOf));
  const axis = axisOf(design, leaf, own);
  const [a, b] = INDICES.filter((i) => i !== axis) as [AxisIndex, AxisIndex];
  const whole = around([own, ...fixed.map(boxOf)]);
  const inwards = (own.low[axis] ?? 0) + (own.high[axis] ?? 0) < (whole.low[axis] ?? 0) + (whole.high[axis] ?? 0);
  // What closes the room covers most of it.
  const closes = (box: Box): boolean =>
    shared(box, own, a) > 0 &&
    shared(box, own, b) > 0 &&
    2 * shared(box, own, a) * shared(box, own, b) > size(own, a) * size(own, b);
  const behind = fixed.map(boxOf).filter((box) => closes(box));
  const far = inwards
    ? Math.min(
        ...behind.flatMap(({ low }) => ((low[axis] ?? 0) >= (own.high[axis] ?? 0) ? [low[axis] ?? 0] : [])),
        whole.high[axis] ?? 0,
      )
    : Math.max(
        ...behind.flatMap(({ high }) => ((high[axis] ?? 0) <= (own.low[axis] ?? 0) ? [high[axis] ?? 0] : [])),
        whole.low[axis] ?? 0,
      );
  const room: Box = {
    low: own.low.map((value, i) => (i === axis && !inwards ? far : value)),
    high: own.high.map((value, i) => (i === axis && inwards ? far : value)),
  };
  return [a, b].reduce<Box>((so, side) => between(so, side, fixed.map(boxOf)), room);
}

/** What shuts may lie over the edges of what stands beside the room: that is not in it. */
function between(room: Box, side: AxisIndex, fixed: readonly Box[]): Box {
  const [low, high] = [room.low[side] ?? 0, room.high[side] ?? 0];
  const others = INDICES.filter((i) => i !== side);
  const bounds = fixed.filter(
    (box) =>
      others.every((i) => shared(box, room, i) > 0) &&
      2 * others.reduce<number>((so, i) => so * shared(box, room, i), 1) >
        others.reduce<number>((so, i) => so * size(room, i), 1),
  );
  const quarter = (high - low) / 4;
  const inner = bounds.flatMap((box) => box.high[side] ?? []).filter((at) => at > low && at < low + quarter);
  const outer = bounds.flatMap((box) => box.low[side] ?? []).filter((at) => at < high && at > high - quarter);
  return {
    low: room.low.with(side, Math.max(low, ...inner)),
    high: room.high.with(side, Math.min(high, ...outer)),
  };
}

/** Through what shuts: of a drawer through its front, else through what is thin. */
function axisOf({ joints, fittings }: Given, leaf: readonly Part[], own: Box): AxisIndex {
  const fronts = new Set([
    ...joints.flatMap(({ setWith, parts: [, front] }) => (setWith ? [front] : [])),
    ...fittings.map(({ part }) => part),
  ]);
  const front = leaf.find(({ id }) => fronts.has(id));
  const box = front ? boxOf(front) : own;
  return INDICES.reduce<AxisIndex>((thin, i) => (size(box, i) < size(box, thin) ? i : thin), 0);
}

/** A shelf may lie behind two doors. */
const MOST_OF_IT = 0.8;
function isHeld(rooms: readonly Box[], box: Box): boolean {
  const volume = (of: (i: AxisIndex) => number): number =>
    INDICES.reduce<number>((so, i) => so * Math.max(0, of(i)), 1);
  const inside = rooms.reduce((so, room) => so + volume((i) => shared(room, box, i)), 0);
  return inside > MOST_OF_IT * volume((i) => size(box, i));
}

/** A narrower strip of a face is nothing that a brush is kept off. Common practice, no source. */
const COUNTS = 0.1;

/** What of a part is in the rooms. */
function insideOf(part: Part, rooms: readonly Box[], fixed: readonly Part[]): Inside {
  const box = boxOf(part);
  const areas = new Map<Face, number>();
  for (const room of rooms)
    for (const { face, area, away } of looking(room, box))
      if (!isCovered(part, face, fixed, away)) areas.set(face, (areas.get(face) ?? 0) + area);
  const whole = (face: Face): number => {
    const [a, b] = INDICES.filter((i) => faceOf(i, true) !== face && faceOf(i, false) !== face) as [
      AxisIndex,
      AxisIndex,
    ];
    return size(box, a) * size(box, b);
  };
  return {
    area: [...areas.values()].reduce((so, each) => so + each, 0),
    sides: [...areas]
      .filter(([face, area]) => area > COUNTS * whole(face))
      .toSorted(([, a], [, b]) => b - a)
      .map(([face]) => face),
  };
}

/**
 * Whether most of a face lies against other parts, as the top of a plinth does under the bottom, or behind them, as a cleat does behind a
 * back: no brush comes there. `away`: how far the face is from the room, at most.
 */
function isCovered(part: Part, face: Face, fixed: readonly Part[], away: number): boolean {
  const [axis, high, own] = [faceAxis(face), isHigh(face), boxOf(part)];
  const [a, b] = INDICES.filter((i) => i !== axis) as [AxisIndex, AxisIndex];
  const covered = fixed.reduce((so, other) => {
    const box = boxOf(other);
    const gap = high ? (box.low[axis] ?? 0) - (own.high[axis] ?? 0) : (own.low[axis] ?? 0) - (box.high[axis] ?? 0);
    if (other.id === part.id || gap < -TOLERANCE || gap > away + TOLERANCE) return so;
    return so + Math.max(0, shared(box, own, a)) * Math.max(0, shared(box, own, b));
  }, 0);
  return 2 * covered > size(own, a) * size(own, b);
}

/** The faces of a part that look into a room: what stands in it, as a divider does, has two of them there. */
function looking(
  room: Box,
  box: Box,
): readonly { readonly face: Face; readonly area: number; readonly away: number }[] {
  return INDICES.flatMap((axis) => {
    const [a, b] = INDICES.filter((i) => i !== axis) as [AxisIndex, AxisIndex];
    const [wide, high] = [shared(room, box, a), shared(room, box, b)];
    if (wide <= 0 || high <= 0) return [];
    const [from, to] = [room.low[axis] ?? 0, room.high[axis] ?? 0];
    const [low, up] = [box.low[axis] ?? 0, box.high[axis] ?? 0];
    return [
      ...(up < to && up + BESIDE > from
        ? [{ face: faceOf(axis, true), area: wide * high, away: Math.max(0, from - up) }]
        : []),
      ...(low > from && low - BESIDE < to
        ? [{ face: faceOf(axis, false), area: wide * high, away: Math.max(0, low - to) }]
        : []),
    ];
  });
}
