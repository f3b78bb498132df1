import { assemblyCircle } from "../../findings/rules/assembly-circle.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import { unknownAssembly } from "../../findings/rules/unknown-assembly.ts";
import { unknownKey } from "../../findings/rules/unknown-key.ts";
import { nearest } from "../../findings/suggest.ts";
import type { AnyAssembly, Site } from "../assemblies/assembly.ts";
import { BUILT_IN } from "../assemblies/index.ts";
import { ITS_PARTS, withItsParts } from "../assemblies/its-parts.ts";
import type { Axis } from "../draft.ts";
import { tell, type Where } from "../kinds/kind.ts";
import { LIMITS } from "../limits.ts";
import { isReserved, normaliseName, squash } from "../names.ts";
import { PART_WORDS } from "../schema/part-words.ts";
import { type Entry, type MapNode, type Node, settingOf } from "../yaml/nodes.ts";
import { behindBackOf, neighbours, type Standing, type Surroundings, settingIn } from "./around.ts";
import { settingsNode, writer, written } from "./make.ts";
import { likeIn, placedIn, thinIn } from "./room.ts";
import { isPlace, placesIn } from "./standing.ts";
import { writtenItem } from "./written-item.ts";
import { isGlass, isSolid } from "./written-stock.ts";

export interface Opening {
  /** The settings of the plan, for its units and its outside. */
  readonly plan: MapNode;
  readonly own: ReadonlyMap<string, AnyAssembly>;
  readonly where: Where;
}

interface Progress extends Opening {
  readonly around: Surroundings;
  readonly units: "inch" | "mm";
  readonly step: Node & { kind: "text" };
  readonly fit: Node & { kind: "text" };
  /** Kinds that are being opened, outermost first. */
  readonly inside: readonly string[];
  readonly count: { nodes: number };
}

/** The piece with every assembly opened into a group of parts, spaces and joints. */
export function openPiece(piece: MapNode, opening: Opening): MapNode {
  const units = /^\s*(?:mm|metric)\s*$/i.test(textOf(opening.plan, "units")) ? "mm" : "inch";
  const usual = written(units === "mm" ? "1 mm" : "1/16 in", piece.at);
  const said = (key: string) => {
    const value = settingOf(opening.plan, key)?.value;
    return value?.kind === "text" ? value : null;
  };
  const step = said("precision") ?? usual;
  const outside = settingOf(opening.plan, "outside")?.value;
  const progress: Progress = {
    ...opening,
    units,
    step,
    fit: said("fits") ?? step,
    around: { all: [], outside: outside?.kind === "map" ? outsideOf(outside) : new Set() },
    inside: [],
    count: { nodes: 0 },
  };
  return openEntries(piece, [], progress);
}

const textOf = (node: MapNode, name: string): string => {
  const value = settingOf(node, name)?.value;
  return value?.kind === "text" ? value.text : "";
};

const OUTSIDE: ReadonlyMap<string, Axis> = new Map([
  ...(["width", "wide"] as const).map((word) => [word, "across"] as const),
  ...(["depth", "deep"] as const).map((word) => [word, "deep"] as const),
  ...(["height", "high"] as const).map((word) => [word, "up"] as const),
]);
const outsideOf = ({ entries }: MapNode): ReadonlySet<Axis> =>
  new Set(entries.flatMap(({ key }) => OUTSIDE.get(squash(key.text)) ?? []));

/** Opens what stands at one level and below, each thing knowing what stands around it. */
function openEntries(node: MapNode, path: readonly string[], progress: Progress): MapNode {
  const standings = standingsIn(node, path, progress);
  const inner: Progress = {
    ...progress,
    around: { ...progress.around, all: [...standings, ...progress.around.all] },
  };
  return openLevel(node, path, inner);
}

function openLevel(node: MapNode, path: readonly string[], progress: Progress): MapNode {
  const entries = node.entries.flatMap((entry): Entry[] => {
    const { key, value } = entry;
    if (value.kind !== "map") return [entry];
    const here = [...path, normaliseName(key.text)];
    const kind = kindOf(entry, path.length > 0, progress);
    if (kind === undefined) return [];
    if (kind !== null) return openAssembly(entry, kind, here, progress);
    return isGroup(value) ? [{ key, value: openLevel(value, here, progress) }] : [entry];
  });
  return { ...node, entries };
}

/** Settings each of which has settings of its own: a group, not a part. */
const isGroup = (node: MapNode): boolean =>
  node.entries.length > 0 && node.entries.every(({ value }) => value.kind === "map" || value.kind === "list");

/** The assembly that an entry is; null for a part, space or group; undefined where it says a kind that there is not. */
function kindOf({ key, value }: Entry, inGroup: boolean, { own, where }: Progress): AnyAssembly | null | undefined {
  if (value.kind !== "map") return null;
  const find = (word: string): AnyAssembly | undefined => own.get(normaliseName(word)) ?? BUILT_IN.get(squash(word));
  const said = settingOf(value, "kind")?.value;
  if (said?.kind === "text") {
    if (squash(said.text) === "space") return null;
    const found = find(said.text);
    if (found) return found;
    const known = [...own.keys(), ...[...BUILT_IN.values()].map((each) => each.kind), "space"];
    const unique = [...new Set(known)];
    return tell(
      where,
      said,
      unknownAssembly(said.at, { kind: said.text, known: unique, near: nearest(said.text, unique) }),
    );
  }
  // What can be no name can be no kind either.
  const named = isReserved(normaliseName(key.text), inGroup) ? undefined : find(key.text);
  if (named === undefined || named.settings === undefined) return null;
  const words = wordsOf(named);
  // Somebody may call a part `door`: what only a part can say makes it one.
  const isOwn = (text: string): boolean => words.has(squash(text)) || isPlace(text, new Set());
  if (value.entries.some(({ key: { text } }) => PART_WORDS.has(squash(text)) && !isOwn(text))) return null;
  const allMaps = isGroup(value);
  return allMaps && !value.entries.every((entry) => words.has(squash(entry.key.text))) ? null : named;
}

const wordsOf = ({ settings }: AnyAssembly): ReadonlySet<string> =>
  new Set(
    Object.entries(settings.keys as Record<string, { also: readonly string[] }>).flatMap(([name, { also }]) =>
      [name, ...also].map(squash),
    ),
  );

/** Every assembly, and every part that says what it stands on, at a level and below. */
function standingsIn(node: MapNode, path: readonly string[], progress: Progress): readonly Standing[] {
  const quiet = { ...progress, where: { ...progress.where, findings: [] } };
  return node.entries.flatMap((entry): readonly Standing[] => {
    if (entry.value.kind !== "map") return [];
    const here = [...path, normaliseName(entry.key.text)];
    const assembly = kindOf(entry, path.length > 0, quiet) ?? null;
    const said = placesIn(entry.value, assembly ? wordsOf(assembly) : new Set());
    const below = assembly === null && isGroup(entry.value) ? standingsIn(entry.value, here, progress) : [];
    return [{ path: here.join("."), assembly, said, node: entry.value }, ...below];
  });
}

function openAssembly(entry: Entry, kind: AnyAssembly, path: readonly string[], progress: Progress): Entry[] {
  const { key } = entry;
  const value = entry.value as MapNode;
  const where: Where = { ...progress.where, key: key.text, at: key.at };
  if (progress.inside.includes(kind.kind) && progress.own.has(kind.kind)) {
    tell(where, key, assemblyCircle(key.at, { names: [...progress.inside, kind.kind] }));
    return [];
  }
  const words = wordsOf(kind);
  const said = placesIn(value, words);
  const places = new Set(value.entries.filter(({ key: { text } }) => isPlace(text, words)));
  for (const {
    entry: { key: word },
    axis,
  } of said)
    if (axis === null)
      tell(
        where,
        word,
        unknownKey(word.at, {
          ...{ what: `a ${kind.kind}`, key: word.text, near: [], belongs: ["a part"] },
          known: Object.keys(kind.settings.keys),
        }),
      );
  const rest = value.entries.filter((each) => !places.has(each) && squash(each.key.text) !== "kind");
  const before = where.findings.length;
  const read = kind.settings.read({ ...value, entries: rest }, where);
  if (read === undefined || where.findings.slice(before).some(({ severity }) => severity === "error")) return [];
  const standing: Standing = { path: path.join("."), assembly: kind, said, node: value };
  const write = writer(key.at);
  const site: Site = {
    name: path.at(-1) ?? "",
    path,
    at: key.at,
    where,
    units: progress.units,
    step: progress.step,
    fit: progress.fit,
    write,
    usual: (inch, mm) => (progress.units === "inch" ? `${inch} in` : `${mm} mm`),
    placed: (axis, beyond) => placedIn(standing, axis, progress.around, write, beyond),
    thin: (axis, face) => thinIn(standing, axis, face, progress.around, write),
    like: (axis, of) => likeIn(standing, axis, of, write),
    isGlass: (stock) => isGlass(progress.plan, stock),
    isSolid: (stock) => isSolid(progress.plan, stock),
    item: (name, usual) => writtenItem(progress.plan, progress.units, name, usual),
    behindBack: behindBackOf(standing, progress.around),
    settingOf: (name, word) => settingIn(name, word, progress.around),
    ...neighbours(standing, progress.around),
  };
  const { entries: made, joints, fittings = [] } = kind.expand(read.said, site);
  const entries = withItsParts(made, read.said[ITS_PARTS]?.value as MapNode | undefined, where);
  const opened = settingsNode(
    { ...entries, ...(joints.length > 0 && { joints }), ...(fittings.length > 0 && { fittings }) },
    key.at,
  );
  progress.count.nodes += sizeOf(opened);
  if (progress.count.nodes > LIMITS.nodes.limit) {
    tell(where, key, tooMuch(key.at, { count: progress.count.nodes, ...LIMITS.nodes }));
    return [];
  }
  const inside = [...progress.inside, kind.kind];
  const apart = kind.moves && progress.inside.length > 0 ? ({ apart: true } as const) : {};
  return [{ key, value: { ...openEntries(opened, path, { ...progress, inside }), opened: kind.kind, ...apart } }];
}

const sizeOf = (node: Node): number =>
  node.kind === "map"
    ? node.entries.reduce((sum, { value }) => sum + sizeOf(value), 1)
    : node.kind === "list"
      ? node.items.reduce((sum, item) => sum + sizeOf(item), 1)
      : 1;
