/** How the assemblies of a piece stand to each other: on, under, before. */
import type { AnyAssembly, Neighbour } from "../assemblies/assembly.ts";
import type { Axis } from "../draft.ts";
import { normaliseName, squash } from "../names.ts";
import { type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";
import { rolesIn, type Said } from "./standing.ts";

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

/** The assembly that stands on this one and says where it is in a direction, or takes it from what covers it. */
export const loadOf = (standing: Standing, axis: Axis, around: Surroundings): Standing | null =>
  around.all.find((each) => {
    const on = link(each, "on");
    const stands = each.assembly !== null && on !== undefined && isCalled(standing, named(on));
    if (!stands || each.assembly?.flat) return false;
    const cover = coverOf(each, around);
    return rolesIn(saidOf(each, axis, around), axis).size > 0 || (cover !== null && leads(cover, each, axis, around));
  }) ?? null;

/** What a frame stands before, where that is an assembly of the piece. */
export function behindOf({ assembly, node }: Standing, around: Surroundings): Standing | null {
  const of = assembly?.before && node ? settingOf(node, squash(assembly.before))?.value : undefined;
  if (of?.kind !== "text") return null;
  return around.all.find((each) => each.assembly !== null && isCalled(each, pathOf(of))) ?? null;
}

/** The frame that stands before this. */
export const beforeOf = (standing: Standing, around: Surroundings): Standing | null =>
  around.all.find((each) => each.assembly?.before && behindOf(each, around)?.path === standing.path) ?? null;

/**
 * What the maker says of a place in a direction. That of two one stands behind the other follows from the frame's `case`: then it does not say
 * where that lies.
 */
export function saidOf(standing: Standing, axis: Axis, around: Surroundings): readonly Said[] {
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
export function saysItsFront(standing: Standing, around: Surroundings): boolean {
  const own = saidOf(standing, "deep", around);
  const name = beforeOf(standing, around)?.path.split(".").at(-1) ?? "";
  const isFrame = ({ entry: { value } }: Said): boolean =>
    value.kind === "text" && value.text.split(/[^\w.-]+/u).some((word) => word.split(".").includes(name));
  const roles = rolesIn(own, "deep");
  return (roles.has("low") || (roles.has("high") && roles.has("extent"))) && !own.some(isFrame);
}

export const boxOf = (standing: Standing): string =>
  standing.assembly === null ? standing.path : `${standing.path}.room`;

/** Whether the upper of two gives the lower its place in a direction, or takes it from there. */
export const leads = (upper: Standing, lower: Standing, axis: Axis, around: Surroundings): boolean => {
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
export function coverOf(standing: Standing, around: Surroundings): Standing | null {
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
export function bearerOf(standing: Standing, around: Surroundings): Standing | null {
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
export function droppedLink(standing: Standing, around: Surroundings): Said | undefined {
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
