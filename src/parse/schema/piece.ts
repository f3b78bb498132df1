import { missingKey } from "../../findings/rules/missing-key.ts";
import { reservedName } from "../../findings/rules/reserved-name.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import { nearest } from "../../findings/suggest.ts";
import { ALL } from "../assemblies/index.ts";
import type { FittingDraft, JointDraft, NodeDraft, PartDraft } from "../draft.ts";
import { type JsonSchema, type Kind, tell, tellWrong, type Where } from "../kinds/kind.ts";
import { readName } from "../kinds/named.ts";
import { settings } from "../kinds/settings.ts";
import { LIMITS } from "../limits.ts";
import { isReserved, squash } from "../names.ts";
import { type Entry, type MapNode, type Node, settingOf, type TextNode } from "../yaml/nodes.ts";
import { fittings } from "./fittings.ts";
import { joints } from "./joints.ts";
import { part, partDraft } from "./part.ts";
import { PART_WORDS } from "./part-words.ts";
import { placesOf, placing } from "./placing.ts";

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

/** What an entry of `piece` says: its parts and groups, and the joints and fittings that stand in its groups. */
export interface PieceDraft {
  readonly nodes: readonly NodeDraft[];
  readonly joints: readonly JointDraft[];
  readonly fittings: readonly FittingDraft[];
}
const NOTHING: PieceDraft = { nodes: [], joints: [], fittings: [] };

/** One entry of `piece`: a part, a space or a group, and everything in it. */
function readEntry(entry: Entry, above: readonly string[], count: { parts: number }, where: Where): PieceDraft {
  const { key, value } = entry;
  const here: Where = { ...where, key: key.text, at: key.at };
  const name = readName(key, here);
  if (name !== undefined && isReserved(name, above.length > 0)) tell(here, key, reservedName(key.at, { name }));
  if (value.kind !== "map")
    return tellWrong(here, value, "settings of a part (made of, as, left …) or of a group") ?? NOTHING;
  const path = [...above, name ?? "?"];
  const kind = settingOf(value, "kind");
  if (kind?.value.kind === "text" && squash(kind.value.text) === "space") return readSpace(value, kind, path, here);
  if (kind !== undefined) return tellWrong(here, kind.value, "the name of a kind of assembly") ?? NOTHING;
  if (value.opened || !isPart(value)) return readGroup(value, path, key, count, here);
  count.parts += 1;
  if (count.parts > LIMITS.parts.limit) {
    if (count.parts === LIMITS.parts.limit + 1)
      tell(here, key, tooMuch(key.at, { count: count.parts, ...LIMITS.parts }));
    return NOTHING;
  }
  const read = part.read(value, here);
  if (read === undefined) return NOTHING;
  if (!isSure(value) && !isNearlySure(value))
    tell(here, key, missingKey(key.at, { what: `\`${key.text}\``, key: "made of" }));
  return {
    ...NOTHING,
    nodes: [{ ...partDraft(read, path, key.at, here), ...madeBy(value, where) }],
  };
}

/** The assembly that wrote it, if one did. */
const madeBy = ({ entries: [first], cures }: MapNode, { named }: Where): Pick<PartDraft, "made" | "cures"> => ({
  ...(first?.key.made && { made: named ?? [] }),
  ...(cures && { cures }),
});

function readGroup(
  { entries, apart }: MapNode,
  path: readonly string[],
  { at, made }: TextNode,
  count: { parts: number },
  where: Where,
): PieceDraft {
  const inside: Where = { ...where, home: path, ...(!made && { named: path }) };
  const listed = (word: string): readonly Entry[] =>
    entries.filter(({ key, value }) => squash(key.text) === word && value.kind === "list");
  const [ofJoints, ofFittings] = [listed("joints"), listed("fittings")];
  const nodes = entries.filter((each) => !ofJoints.includes(each) && !ofFittings.includes(each));
  const read = nodes.map((each) => readEntry(each, path, count, inside));
  const own = ofJoints.flatMap(({ value }) => joints.read(value, inside) ?? []);
  const fitted = ofFittings.flatMap(({ value }) => fittings.read(value, inside) ?? []);
  return {
    nodes: [{ kind: "group", path, at, children: read.flatMap(({ nodes }) => nodes), ...(apart && { apart }) }],
    joints: [...read.flatMap((each) => each.joints), ...own],
    fittings: [...read.flatMap((each) => each.fittings), ...fitted],
  };
}

export const space = settings("a space", placing);

/** Room without wood. */
function readSpace(node: MapNode, kind: Entry, path: readonly string[], where: Where): PieceDraft {
  const read = space.read({ ...node, entries: node.entries.filter((each) => each !== kind) }, where);
  if (read === undefined) return NOTHING;
  const placed = placesOf(read.said);
  return {
    ...NOTHING,
    nodes: [{ ...madeBy(node, where), kind: "part", path, at: where.at, space: true, placing: placed, shapes: [] }],
  };
}

const json: JsonSchema = { type: "object", additionalProperties: { $ref: "#/$defs/entry" } };

export const piece: Kind<PieceDraft> = {
  words: "settings, one for each part or group",
  json,
  inside: [...(part.inside ?? []), ...(space.inside ?? []), ...ALL.flatMap((each) => each.settings.inside ?? [])],
  read(node: Node, where: Where) {
    if (node.kind !== "map") return tellWrong(where, node, this.words);
    const count = { parts: 0 };
    const read = node.entries.map((entry) => readEntry(entry, [], count, where));
    return {
      nodes: read.flatMap(({ nodes }) => nodes),
      joints: read.flatMap((each) => each.joints),
      fittings: read.flatMap((each) => each.fittings),
    };
  },
};
