import type { Settings } from "../expand/make.ts";
import { squash } from "../names.ts";
import { method } from "../schema/joint-words.ts";
import { joint } from "../schema/joints.ts";
import type { MapNode, Node, TextNode } from "../yaml/nodes.ts";
import { made } from "./combine.ts";
import { type Kind, tellWrong } from "./kind.ts";
import type { Fields, Keys, SettingsKind } from "./settings.ts";
import { extent, formula, text } from "./simple.ts";

/** Read for its mistakes, and kept as it was written: an assembly passes it on. */
export const kept = <T>(kind: Kind<T>): Kind<Node> => made(kind, (_, node) => node);

/** What a part has as well; the part that it becomes is read for its mistakes. */
export const asOfPart: Kind<Node> = {
  words: "as a part has it",
  json: { title: "as [a part](#a-part) has it" },
  read: (node) => node,
};

const keptText = <T>(kind: Kind<T>, title?: string): Kind<TextNode> =>
  made(title === undefined ? kind : { ...kind, json: { ...kind.json, title } }, (_, node) =>
    node.kind === "text" ? node : undefined,
  );

/** A measure that an assembly puts into formulas of its own. */
export const measure = keptText(formula);
/** The same, for how big something is. */
export const sizeOf = keptText(extent);
/** The name of a stock. */
export const stockName = keptText(text(100), "the name of a stock");

/** The name of a part or group. */
export const partName = keptText(text(100), "the name of a part");

const words = "a kind of joint, or settings of a joint with `with`";

/** How parts are joined: a method alone, or the settings of a joint without the parts. Gives those settings. */
export const joinWords: Kind<Settings> = {
  words,
  json: { anyOf: [method.json, { type: "object", title: "settings of a joint with `with`" }] },
  read(node, where) {
    if (node.kind === "text") return method.read(node, where) === undefined ? undefined : { with: node };
    if (node.kind !== "map") return tellWrong(where, node, words);
    const names: MapNode = { ...node, entries: [...node.entries, ...PARTS.map((name) => named(name, node))] };
    return joint.read(names, where) === undefined ? undefined : settingsOf(node);
  },
};

const PARTS = ["join", "to"];
/** The parts of a joint are the assembly's business: a name stands in while the rest is read. */
const named = (name: string, { at }: Node) => {
  const place = () => at;
  const word = (text: string): TextNode => ({ kind: "text", text, quoted: false, at, place });
  return { key: word(name), value: word("part") };
};

/** Settings by name, each as it was written. */
export const settingsOf = (node: MapNode): Settings =>
  Object.fromEntries(node.entries.map(({ key, value }) => [key.text, value]));

/** Settings of which some are read, and all others kept for what they are passed on to. */
export const withRest = <K extends Keys>(
  own: SettingsKind<K>,
): Kind<{ readonly said: Fields<K>; readonly rest: Settings }> => ({
  ...own,
  read(node, where) {
    if (node.kind !== "map") return tellWrong(where, node, own.words);
    const words = new Set(Object.entries(own.keys).flatMap(([name, { also }]) => [name, ...also].map(squash)));
    const isOwn = ({ key }: MapNode["entries"][number]): boolean => words.has(squash(key.text));
    const read = own.read({ ...node, entries: node.entries.filter(isOwn) }, where);
    const rest = settingsOf({ ...node, entries: node.entries.filter((entry) => !isOwn(entry)) });
    return read && { said: read.said, rest };
  },
});

/** `yes`, `no`, or settings that say more. */
export const yesNoOr = <T>(kind: Kind<T>): Kind<T | boolean> => ({
  words: `yes, no, or ${kind.words}`,
  json: { anyOf: [{ enum: ["yes", "no", true, false] }, kind.json] },
  inside: kind.inside ?? [],
  read(node, where) {
    const said = node.kind === "text" ? squash(node.text) : "";
    if (said === "yes" || said === "true") return true;
    if (said === "no" || said === "false" || said === "none") return false;
    return kind.read(node, where);
  },
});
