import type { Axis, Face } from "../draft.ts";
import type { TextNode } from "../yaml/nodes.ts";
import {
  bearerOf,
  beforeOf,
  behindOf,
  boxOf,
  coverOf,
  droppedLink,
  leads,
  loadOf,
  type Standing,
  type Surroundings,
  saidOf,
  saysItsFront,
} from "./around.ts";
import type { Settings, Writer } from "./make.ts";
import { CENTRES, type Role, type Said } from "./standing.ts";

const FACES: Readonly<Record<Axis, readonly [Face, Face]>> = {
  across: ["left", "right"],
  deep: ["front", "back"],
  up: ["bottom", "top"],
};

/**
 * Statements of place in a direction that say all: those of the maker; then, of two that stand on one another, the one whose size is
 * not said follows the other; then the outside of the piece. Lower ends come first, so that a given size grows from the left, the
 * front and the floor. `beyond` moves a face that follows what is under it outwards, by an overhang.
 */
export function placedIn(
  standing: Standing,
  axis: Axis,
  around: Surroundings,
  write: Writer,
  beyond: (face: Face, from: TextNode) => TextNode = (_, from) => from,
): Settings {
  const fallback = (end: 0 | 1): TextNode => fallBack(standing, axis, end, around, write, beyond);
  const dropped = axis === "up" ? droppedLink(standing, around) : undefined;
  const own = saidOf(standing, axis, around).filter((each) => each !== dropped);
  const { statements, roles } = stated(own, axis, write, (end) => write`${fallback(end)}`);
  if (axis === "up" && standing.assembly?.flat) {
    if (roles.size === 0) statements.top = fallback(1);
    return statements;
  }
  return completed(statements, roles, axis, fallback);
}

/** What the maker says in a direction. Something in the middle of its room, or centred on another, becomes where its lower end is. */
function stated(own: readonly Said[], axis: Axis, write: Writer, room: (end: 0 | 1) => TextNode) {
  const [low, high] = FACES[axis];
  const centre = own.find(({ key }) => CENTRES.includes(key));
  const extent = own.find(({ roles }) => roles.includes("extent"))?.entry.value;
  const statements: Record<string, Settings[string]> = Object.fromEntries(
    own.filter((each) => each !== centre).map(({ key, entry }) => [key, entry.value]),
  );
  const roles = new Set<Role>(own.filter((each) => each !== centre).flatMap((each) => each.roles));
  if (centre && extent?.kind === "text" && !roles.has("low") && !roles.has("high")) {
    const on = centre.key === "at" ? null : centreOf(centre);
    const [from, to] = on ? [write`${on}.${low}`, write`${on}.${high}`] : [room(0), room(1)];
    statements[low] = write`(${from} + ${to} - ${extent}) / 2`;
    roles.add("low");
  }
  return { statements, roles };
}

const centreOf = ({ entry: { value } }: Said): TextNode | null => {
  const of = value.kind === "map" ? value.entries[0]?.value : value;
  return of?.kind === "text" ? of : null;
};

/** What is said in a direction, with the ends that it leaves open. */
function completed(
  statements: Record<string, Settings[string]>,
  roles: Set<Role>,
  axis: Axis,
  fallback: (end: 0 | 1) => TextNode,
): Settings {
  const [low, high] = FACES[axis];
  if (!roles.has("low") && roles.size < 2 && !(roles.has("high") && roles.has("extent"))) {
    statements[low] = fallback(0);
    roles.add("low");
  }
  if (roles.size < 2) statements[high] = fallback(1);
  return statements;
}

/** Statements of place that follow those of something named, but for what the maker says. */
export function likeIn({ said }: Standing, axis: Axis, name: TextNode, write: Writer): Settings {
  const own = said.filter((each) => each.axis === axis);
  const follow = (end: 0 | 1): TextNode => write`${name}.${FACES[axis][end]}`;
  const { statements, roles } = stated(own, axis, write, follow);
  return completed(statements, roles, axis, follow);
}

/** Statements of place in the direction in which a thing is as thick as its stock: those of the maker, or else where this face lies. */
export function thinIn(standing: Standing, axis: Axis, face: Face, around: Surroundings, write: Writer): Settings {
  const own = saidOf(standing, axis, around);
  if (own.some(({ roles }) => roles.length > 0))
    return Object.fromEntries(own.map(({ key, entry }) => [key, entry.value]));
  const behind = behindOf(standing, around);
  if (behind !== null && saysItsFront(behind, around)) return { back: write`${boxOf(behind)}.front` };
  const end = FACES[axis][0] === face ? 0 : 1;
  return { [face]: fallBack(standing, axis, end, around, write, (_, from) => from) };
}

/** Where an end lies when nothing is said of it. */
function fallBack(
  standing: Standing,
  axis: Axis,
  end: 0 | 1,
  around: Surroundings,
  write: Writer,
  beyond: (face: Face, from: TextNode) => TextNode,
): TextNode {
  const face = FACES[axis][end];
  const behind = behindOf(standing, around);
  if (behind !== null && axis !== "deep") return write`${boxOf(behind)}.${face}`;
  if (behind !== null) return fallBackOf(behind, axis, end, around, write, beyond);
  const before = face === "front" ? beforeOf(standing, around) : null;
  return before === null ? fallBackOf(standing, axis, end, around, write, beyond) : write`${boxOf(before)}.back`;
}

/** The same of what has no frame before it. */
function fallBackOf(
  standing: Standing,
  axis: Axis,
  end: 0 | 1,
  around: Surroundings,
  write: Writer,
  beyond: (face: Face, from: TextNode) => TextNode,
): TextNode {
  const face = FACES[axis][end];
  const above = coverOf(standing, around);
  if (above !== null && axis !== "up" && leads(above, standing, axis, around))
    return write`${above.assembly?.footprint ? `${above.path}.footprint` : boxOf(above)}.${face}`;
  if (above !== null && axis === "up" && end === 1)
    return write`${above.assembly?.footprint ? `${above.path}.footprint` : above.path}.bottom`;
  const load = axis === "up" ? null : loadOf(standing, axis, around);
  if (load !== null) return write`${boxOf(load)}.${face}`;
  const below = standing.assembly?.footprint ? bearerOf(standing, around) : null;
  if (below !== null && axis !== "up" && !leads(standing, below, axis, around))
    return beyond(face, write`${boxOf((face === "front" ? beforeOf(below, around) : null) ?? below)}.${face}`);
  return write`outside.${face}`;
}
