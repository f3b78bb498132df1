/** The groups of the source as units: each is built by itself where that is possible. */
import type { Design } from "../../design.ts";
import type { Taken } from "./choices.ts";
import { fastBodies, hangsOn, hangsTogether, type Link } from "./links.ts";
import type { Assembly, Union } from "./plan.ts";
import type { Piece } from "./splits.ts";
import { type Stuck, type Taking, takeApart } from "./take-apart.ts";

/** A part, or a group with what is directly in it; parts by their places in the source. */
export interface Item {
  readonly parts: readonly number[];
  readonly group: string | null;
  readonly items: readonly Item[];
}

/** The whole piece as an item. Parts that are set in their places belong to no group but the whole. */
export function itemsOf(
  { parts, groups, apart = [] }: Pick<Design, "parts" | "groups" | "apart">,
  set: ReadonlySet<string> = new Set(),
  bodies: readonly (readonly number[])[] = [],
  wished: readonly (readonly number[])[] = [],
): Item {
  const moving = new Set(bodies.flat());
  const isIn = (path: string, outer: string): boolean => path.startsWith(`${outer}.`);
  // Packing for the drawers of a frame goes into the case, and not with the frame.
  const isApart = (path: string, outer: string): boolean =>
    apart.some((group) => isIn(group, outer) && (path === group || isIn(path, group)));
  const within = (path: string, outer: string | null): boolean =>
    outer === null || (isIn(path, outer) && !isApart(path, outer) && !set.has(path));
  const item = (group: string | null, belongs: (part: number) => boolean): Item => {
    const inner = groups.filter((path) => path !== group && within(path, group));
    const direct = inner.filter((path) => !inner.some((other) => within(path, other)));
    const all = parts.flatMap(({ id }, i) => (within(id, group) && belongs(i) ? [i] : []));
    const grouped = direct.map((path) => item(path, belongs)).filter(({ parts: some }) => some.length > 0);
    const taken = new Set(grouped.flatMap(({ parts: some }) => some));
    const single = all.filter((i) => !taken.has(i)).map((i): Item => ({ parts: [i], group: null, items: [] }));
    const items = [...grouped, ...single].sort((a, b) => (a.parts[0] ?? 0) - (b.parts[0] ?? 0));
    return { parts: all, group, items: wished.reduce(asOne, items) };
  };
  const standing = item(null, (part) => !moving.has(part));
  if (bodies.length === 0) return standing;
  // What hangs or runs is built by itself, whatever groups it is in, and then put into the rest.
  const hung = bodies.map((body) => whole(item(null, (part) => body.includes(part))));
  const items = [...hung, ...standing.items].sort((a, b) => (a.parts[0] ?? 0) - (b.parts[0] ?? 0));
  return { parts: parts.map((_, i) => i), group: null, items };
}

/** Items that are wished to be built by themselves, in one of their own; groups that hold some of them and others are opened. */
function asOne(items: readonly Item[], wished: readonly number[]): readonly Item[] {
  const inside = ({ parts }: Item): number => parts.filter((part) => wished.includes(part)).length;
  if (items.some((item) => inside(item) === wished.length) || items.every((item) => inside(item) === 0)) return items;
  const opened = (item: Item): readonly Item[] =>
    inside(item) === 0 || inside(item) === item.parts.length ? [item] : item.items.flatMap(opened);
  const all = items.flatMap(opened);
  const own = all.filter((item) => inside(item) > 0);
  const parts = own.flatMap((item) => item.parts).sort((a, b) => a - b);
  if (own.length === all.length || parts.length < wished.length) return items;
  return all.flatMap((item) =>
    item === own[0] ? [{ parts, group: null, items: own }] : own.includes(item) ? [] : [item],
  );
}

/** A body that is all one group goes by the name of that. */
function whole(body: Item): Item {
  const [only] = body.items;
  return only && only.parts.length === body.parts.length ? whole(only) : body;
}

/** Bodies of several parts that hang, run or lie loose on the rest; shelves on pins, and the cleats on the wall on which it hangs. */
export function movingBodies({ parts, joints }: Pick<Design, "parts" | "joints">): readonly (readonly number[])[] {
  const bodies = fastBodies({ parts, joints });
  const largest = bodies.reduce<readonly number[]>((so, body) => (body.length > so.length ? body : so), []);
  const alone = new Set(
    joints.flatMap((joint) => [
      ...(joint.method === "shelf pins" ? [joint.parts[0]] : []),
      ...(hangsOn(joint) ? [joint.parts[1]] : []),
    ]),
  );
  const isAlone = (place: number): boolean => alone.has(parts[place]?.id ?? "");
  return bodies.filter((body) => (body.length > 1 || body.some(isAlone)) && body !== largest);
}

interface Built {
  readonly assembly: Assembly;
  readonly taken: Taken;
}

/** A dead end, with the parts that did not come apart. */
export type Trapped = Pick<Stuck, "refusals" | "exhausted"> & { readonly parts: readonly number[] };

/** Groups are opened one at a time so often, then all at once. */
const ATTEMPTS = 12;

/**
 * Takes an item apart unit by unit, then each unit by itself. A group that is in the way of that is no unit after all: of several the one whose
 * opening is enough, the one of most parts first.
 */
export function build(piece: Piece, whole: Item, start: Taken): Built | Trapped {
  let attempts = ATTEMPTS;

  const attempt = (item: Item, before: Taken, loose: ReadonlySet<Item>): Built | Trapped => {
    const nodes = contract(item, loose, piece.links);
    const apart = takeApart(
      piece,
      nodes.map(({ parts }) => parts),
      before,
    );
    if ("nodes" in apart) {
      const inside = apart.nodes.flatMap((node) => nodes[node] ?? []);
      const groups = inside.filter(({ parts }) => parts.length > 1);
      if (groups.length === 0) return { ...apart, parts: inside.flatMap(({ parts }) => parts).sort((a, b) => a - b) };
      return opened(item, before, loose, groups);
    }
    let taken = apart.taken;
    const units = new Map<number, Assembly>();
    for (const [i, node] of nodes.entries()) {
      if (node.parts.length === 1) continue;
      const built = attempt(node, taken, loose);
      if ("parts" in built) return attempt(item, before, new Set([...loose, node]));
      units.set(i, built.assembly);
      taken = built.taken;
    }
    return { assembly: assemble(piece, apart.tree, units, nodes, item.group), taken };
  };

  const opened = (item: Item, before: Taken, loose: ReadonlySet<Item>, groups: readonly Item[]): Built | Trapped => {
    for (const group of groups.length < 2 ? [] : groups.toSorted((a, b) => b.parts.length - a.parts.length)) {
      attempts -= 1;
      if (attempts < 0) break;
      const built = attempt(item, before, new Set([...loose, group]));
      if (!("parts" in built)) return built;
    }
    return attempt(item, before, new Set([...loose, ...groups]));
  };
  return attempt(whole, start, new Set());
}

/** The units directly in an item: groups that hang together, and what is in those that do not. */
function contract(item: Item, loose: ReadonlySet<Item>, links: readonly Link[]): readonly Item[] {
  return item.items.flatMap((inner) => {
    const [only] = inner.parts;
    if (inner.parts.length === 1 && only !== undefined) return [{ parts: [only], group: null, items: [] }];
    return loose.has(inner) || !hangsTogether(inner.parts, links) ? contract(inner, loose, links) : [inner];
  });
}

function assemble(
  piece: Piece,
  taking: Taking,
  units: ReadonlyMap<number, Assembly>,
  nodes: readonly Item[],
  group: string | null,
): Assembly {
  const ids = (parts: readonly number[]): readonly string[] => parts.flatMap((part) => piece.parts[part]?.id ?? []);
  const from = (inner: Taking): Assembly => {
    if ("split" in inner) return union(inner, null);
    const [id = ""] = ids(nodes[inner.node]?.parts ?? []);
    return units.get(inner.node) ?? { kind: "part", parts: [id] };
  };
  const union = ({ split, staying, moving }: Extract<Taking, { split: unknown }>, path: string | null): Union => {
    const { halves, along, legs, sliding, work } = split;
    const parts = ids([...halves.moving, ...halves.staying].sort((a, b) => a - b));
    return {
      kind: "union",
      parts,
      staying: from(staying),
      moving: from(moving),
      along,
      ...(legs && { legs }),
      sliding,
      work,
      group: path,
    };
  };
  return "split" in taking ? union(taking, group) : from(taking);
}
