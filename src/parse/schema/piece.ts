import { assemblyName } from "../../findings/rules/assembly-name.ts";
import { missingKey } from "../../findings/rules/missing-key.ts";
import { reservedName } from "../../findings/rules/reserved-name.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import { nearest } from "../../findings/suggest.ts";
import type { NodeDraft } from "../draft.ts";
import { type JsonSchema, type Kind, tell, tellWrong, type Where } from "../kinds/kind.ts";
import { readName } from "../kinds/named.ts";
import { LIMITS } from "../limits.ts";
import { RESERVED_NAMES, squash } from "../names.ts";
import type { Entry, MapNode, Node } from "../yaml/nodes.ts";
import { part, partDraft } from "./part.ts";

/** Kinds of assembly: a group of such a name would be one. */
const ASSEMBLIES: ReadonlySet<string> = new Set([
  ...["case", "bays", "face-frame", "door", "drawer", "shelves", "top", "table", "base"],
  ...["frame", "box", "back", "cleat", "strip", "bench", "box-bed"],
]);

const PART_WORDS: ReadonlySet<string> = new Set(
  Object.entries(part.keys).flatMap(([name, key]) => [name, ...key.also].map(squash)),
);
const SURE: ReadonlySet<string> = new Set(["made of", "like", "mirror of"].map(squash));

/** A misspelt `made of`, which is told as that. */
const isNearlySure = (node: MapNode): boolean =>
  node.entries.some(
    ({ key, value }) => value.kind === "text" && nearest(key.text, ["made of", "mirror of"]).length > 0,
  );

const isSure = (node: MapNode): boolean => node.entries.some(({ key }) => SURE.has(squash(key.text)));

/**
 * An entry is a part if it says what it is made of, or says anything that only a part can say, or nothing; else it is a group.
 * Settings under a word such as `notch` are those of a shape, unless they look like a part or group of that name.
 */
function isPart(node: MapNode): boolean {
  const isNode = (value: Node): boolean =>
    value.kind === "map" && (isSure(value) || value.entries.every((entry) => entry.value.kind === "map"));
  if (node.entries.length === 0 || isSure(node) || isNearlySure(node)) return true;
  return node.entries.some(({ key, value }) => PART_WORDS.has(squash(key.text)) && !isNode(value));
}

/** One entry of `piece`: a part or a group, and everything in it. */
function readEntry(entry: Entry, above: readonly string[], count: { parts: number }, where: Where): NodeDraft[] {
  const { key, value } = entry;
  const here: Where = { ...where, key: key.text, at: key.at };
  const name = readName(key, here);
  if (name !== undefined && RESERVED_NAMES.has(name)) tell(here, key, reservedName(key.at, { name }));
  if (value.kind !== "map")
    return tellWrong(here, value, "settings of a part (made of, as, left …) or of a group") ?? [];
  const path = [...above, name ?? "?"];
  if (value.entries.some((each) => squash(each.key.text) === "kind"))
    return tell(here, key, assemblyName(key.at, { name: key.text, kind: "kind:" })) ?? [];
  if (!isPart(value)) {
    if (name !== undefined && ASSEMBLIES.has(name) && !RESERVED_NAMES.has(name))
      tell(here, key, assemblyName(key.at, { name: key.text, kind: name }));
    const children = value.entries.flatMap((child) => readEntry(child, path, count, where));
    return [{ kind: "group", path, at: key.at, children }];
  }
  count.parts += 1;
  if (count.parts > LIMITS.parts.limit) {
    if (count.parts === LIMITS.parts.limit + 1)
      tell(here, key, tooMuch(key.at, { count: count.parts, ...LIMITS.parts }));
    return [];
  }
  const read = part.read(value, here);
  if (read === undefined) return [];
  if (!isSure(value) && !isNearlySure(value))
    tell(here, key, missingKey(key.at, { what: `\`${key.text}\``, key: "made of" }));
  return [partDraft(read, path, key.at)];
}

const json: JsonSchema = { type: "object", additionalProperties: { $ref: "#/$defs/entry" } };

export const piece: Kind<readonly NodeDraft[]> = {
  words: "settings, one for each part or group",
  json,
  inside: part.inside ?? [],
  read(node: Node, where: Where) {
    if (node.kind !== "map") return tellWrong(where, node, this.words);
    const count = { parts: 0 };
    return node.entries.flatMap((entry) => readEntry(entry, [], count, where));
  },
};

/** A part, or a group of parts and groups. */
export const entryJson: JsonSchema = { anyOf: [part.json, json] };
