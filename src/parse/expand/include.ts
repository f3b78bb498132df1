import { includeNotFound } from "../../findings/rules/include-not-found.ts";
import { tell, type Where } from "../kinds/kind.ts";
import { squash } from "../names.ts";
import { includedNames } from "../schema/own-assembly.ts";
import { type Entry, type MapNode, type Node, settingOf } from "../yaml/nodes.ts";

/** What an included file may hold: tables of things with names. */
const TABLES = ["assemblies", "stock", "hardware", "sizes", "choices"];

/** A file of the plan's own folder: a name without a path. */
export const isFileName = (name: string): boolean => /^[^\\/:]+\.ya?ml$/i.test(name) && !name.startsWith(".");

/** The names of the files that a plan includes, those that can be such names. */
export function includedFiles(tree: Node): readonly string[] {
  if (tree.kind !== "map") return [];
  const value = settingOf(tree, "include")?.value;
  const nodes = value?.kind === "list" ? value.items : value ? [value] : [];
  return nodes.flatMap((node) => (node.kind === "text" && isFileName(node.text.trim()) ? [node.text.trim()] : []));
}

/** The plan with the tables of the files that it includes. What the plan itself says under a name goes before. */
export function include(plan: MapNode, files: ReadonlyMap<string, Node>, where: Where): MapNode {
  const entry = settingOf(plan, "include");
  if (entry === undefined) return plan;
  const names = includedNames.read(entry.value, { ...where, key: "include", at: entry.key.at }) ?? [];
  let whole = plan;
  for (const name of names) {
    const tree = files.get(name);
    if (tree?.kind === "map") whole = merge(whole, tree);
    else tell(where, entry.key, includeNotFound(entry.key.at, { file: name, outside: !isFileName(name) }));
  }
  return whole;
}

function merge(plan: MapNode, file: MapNode): MapNode {
  let { entries } = plan;
  for (const table of file.entries) {
    const name = squash(table.key.text);
    if (!TABLES.includes(name) || table.value.kind !== "map") continue;
    const own = entries.find(({ key }) => squash(key.text) === name);
    if (own?.value.kind !== "map") {
      if (own === undefined) entries = [...entries, table];
      continue;
    }
    const said = new Set(own.value.entries.map(({ key }) => squash(key.text)));
    const more = table.value.entries.filter(({ key }) => !said.has(squash(key.text)));
    const merged: Entry = { key: own.key, value: { ...own.value, entries: [...own.value.entries, ...more] } };
    entries = entries.map((each) => (each === own ? merged : each));
  }
  return { ...plan, entries };
}
