import type { AnyAssembly, Neighbour } from "../assemblies/assembly.ts";
import type { Axis, Face } from "../draft.ts";
import { normaliseName, squash } from "../names.ts";
import { type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";
import type { Settings, Writer } from "./make.ts";
import { CENTRES, type Role, rolesIn, type Said } from "./standing.ts";

/** An assembly before it is opened: what it is, and what the maker said of its place. */
export interface Standing {
  readonly path: string;
  readonly assembly: AnyAssembly | null;
  readonly said: readonly Said[];
  /** Its settings; absent for what is only named. */
  readonly node?: MapNode;
}

/** The assemblies of a piece and the measures of its outside, from which it follows how they stand to each other. */
export interface Surroundings {
  readonly all: readonly Standing[];
  /** Directions in which the plan says how big the piece is. */
  readonly outside: ReadonlySet<Axis>;
}

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

/** The assembly that stands on this one and says where it is in a direction, or takes it from what covers it. */
const loadOf = (standing: Standing, axis: Axis, around: Surroundings): Standing | null =>
  around.all.find((each) => {
    const on = link(each, "on");
    const stands = each.assembly !== null && on !== undefined && isCalled(standing, named(on));
    if (!stands || each.assembly?.flat) return false;
    const cover = coverOf(each, around);
    return rolesIn(saidOf(each, axis, around), axis).size > 0 || (cover !== null && leads(cover, each, axis, around));
  }) ?? null;

/** What a frame stands before, where that is an assembly of the piece. */
function behindOf({ assembly, node }: Standing, around: Surroundings): Standing | null {
  const of = assembly?.before && node ? settingOf(node, squash(assembly.before))?.value : undefined;
  if (of?.kind !== "text") return null;
  return around.all.find((each) => each.assembly !== null && isCalled(each, pathOf(of))) ?? null;
}

/** The frame that stands before this. */
const beforeOf = (standing: Standing, around: Surroundings): Standing | null =>
  around.all.find((each) => each.assembly?.before && behindOf(each, around)?.path === standing.path) ?? null;

/**
 * What the maker says of a place in a direction. That of two one stands behind the other follows from the frame's `case`: then it does not say
 * where that lies.
 */
function saidOf(standing: Standing, axis: Axis, around: Surroundings): readonly Said[] {
  const own = standing.said.filter((each) => each.axis === axis);
  if (axis !== "deep") return own;
  const [before, behind] = [beforeOf(standing, around), behindOf(standing, around)];
  return own.filter(
    (each) =>
      !(each.key === "behind" && before !== null && isOf(before, named(each))) &&
      !(each.key === "in front of" && behind !== null && isOf(behind, named(each))),
  );
}

/** Whether a case says where its front is, and not by the frame before it. */
function saysItsFront(standing: Standing, around: Surroundings): boolean {
  const own = saidOf(standing, "deep", around);
  const name = beforeOf(standing, around)?.path.split(".").at(-1) ?? "";
  const isFrame = ({ entry: { value } }: Said): boolean =>
    value.kind === "text" && value.text.split(/[^\w.-]+/u).some((word) => word.split(".").includes(name));
  const roles = rolesIn(own, "deep");
  return (roles.has("low") || (roles.has("high") && roles.has("extent"))) && !own.some(isFrame);
}

const boxOf = (standing: Standing): string => (standing.assembly === null ? standing.path : `${standing.path}.room`);

/** Whether the upper of two gives the lower its place in a direction, or takes it from there. */
const leads = (upper: Standing, lower: Standing, axis: Axis, around: Surroundings): boolean => {
  const says = (standing: Standing): boolean => rolesIn(saidOf(standing, axis, around), axis).size > 0;
  return says(upper) || (lower.assembly !== null && !says(lower) && around.outside.has(axis));
};

/** What a statement such as `on:` names. */
const named = ({ entry }: Said): string => (entry.value.kind === "text" ? pathOf(entry.value) : "");
const pathOf = ({ text }: TextNode): string => text.split(".").map(normaliseName).join(".");
const link = (standing: Standing, key: "on" | "under"): Said | undefined =>
  standing.said.find((each) => each.key === key);
const isCalled = (standing: Standing, name: string): boolean =>
  standing.path === name || standing.path.endsWith(`.${name}`);

/** Whether a name is that of a thing, or of something in it. */
const isOf = (standing: Standing, name: string): boolean =>
  name.split(".").some((_, i, words) => isCalled(standing, words.slice(0, i + 1).join(".")));

/** The assembly that covers another: named by its `under`, or standing `on` it. */
function coverOf(standing: Standing, around: Surroundings): Standing | null {
  const under = link(standing, "under");
  if (under !== undefined)
    return around.all.find((each) => each.assembly !== null && isCalled(each, named(under))) ?? null;
  const upon = around.all.find((each) => {
    const on = link(each, "on");
    return on !== undefined && droppedLink(each, around) === on && isCalled(standing, named(on));
  });
  return upon ?? null;
}

/** What a cover lies on: named by its `on`, or saying that it is `under` it. */
function bearerOf(standing: Standing, around: Surroundings): Standing | null {
  const on = link(standing, "on");
  if (on !== undefined)
    return around.all.find((each) => isCalled(each, named(on))) ?? { path: named(on), assembly: null, said: [] };
  return (
    around.all.find((each) => {
      const under = link(each, "under");
      return under !== undefined && isCalled(standing, named(under));
    }) ?? null
  );
}

/** The `on` of a cover whose place comes from the outside: then what is under it reaches up to it, and not the other way round. */
function droppedLink(standing: Standing, around: Surroundings): Said | undefined {
  const on = link(standing, "on");
  if (on === undefined || !standing.assembly?.flat || !around.outside.has("up")) return undefined;
  const below = around.all.find((each) => isCalled(each, named(on)));
  if (below?.assembly == null) return undefined;
  const roles = rolesIn(below.said, "up");
  return roles.has("high") || roles.has("extent") ? undefined : on;
}

export const neighbours = (
  standing: Standing,
  around: Surroundings,
): { under: Neighbour | null; on: Neighbour | null; carries: Neighbour | null } => ({
  under: neighbour(coverOf(standing, around)),
  carries: neighbour(
    around.all.find((each) => {
      const on = link(each, "on");
      return on !== undefined && isCalled(standing, named(on));
    }) ?? null,
  ),
  on: neighbour(bearerOf(standing, around)),
});

/** A setting of an assembly by its name. */
export function settingIn(name: TextNode, key: string, around: Surroundings): Node | undefined {
  const found = around.all.find((each) => each.assembly !== null && isCalled(each, pathOf(name)));
  return found?.node && settingOf(found.node, squash(key))?.value;
}

/** The stock of what hangs behind the back of a case, if anything does. */
export const behindBackOf = ({ path }: Standing, around: Surroundings): TextNode | null =>
  around.all.reduce<TextNode | null>((found, { assembly, node }) => {
    const written = (key: string) => node && settingOf(node, squash(key))?.value;
    const of = assembly?.behindBack ? written("case") : undefined;
    const isHere = of?.kind === "text" && isCalled({ path, assembly: null, said: [] }, pathOf(of));
    return found ?? (isHere ? (assembly?.behindBack?.(written) ?? null) : null);
  }, null);

function neighbour(standing: Standing | null): Neighbour | null {
  if (standing === null) return null;
  const { path, assembly, node } = standing;
  const written = (key: string) => node && settingOf(node, squash(key))?.value;
  const bearers = assembly?.bearers?.(written).map((name) => `${path}.${name}`) ?? [path];
  return { path, assembly, bearers };
}
