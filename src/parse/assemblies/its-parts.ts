/** More settings of the parts that an assembly makes. */
import { unknownName } from "../../findings/rules/unknown-name.ts";
import { nearest } from "../../findings/suggest.ts";
import { CURE, FROM, from, isList, isNode, type Settings, type Value } from "../expand/make.ts";
import { settingsOf } from "../kinds/kept.ts";
import { type Kind, tell, tellWrong, type Where } from "../kinds/kind.ts";
import { may } from "../kinds/settings.ts";
import { normaliseName, squash } from "../names.ts";
import type { Entry, MapNode, TextNode } from "../yaml/nodes.ts";

const WORDS = "parts of the assembly by their names, each with settings";

/** The value of the setting: names with settings each. */
const partsWithSettings: Kind<MapNode> = {
  words: WORDS,
  json: { type: "object", title: "settings of [a part](#a-part) by the name of each" },
  read(node, where) {
    if (node.kind !== "map") return tellWrong(where, node, WORDS);
    const wrong = node.entries.find(({ value }) => value.kind !== "map");
    return wrong ? tellWrong({ ...where, key: wrong.key.text }, wrong.value, "settings of a part") : node;
  },
};

export const ITS_PARTS = "its parts";
/** Every assembly has it. */
export const itsParts = {
  [ITS_PARTS]: may(
    partsWithSettings,
    "More settings of parts that it makes, or other ones, by the name of each: `its parts: { back-panel: { hole: { in: front, from left: 4, from bottom: 6, diameter: 2 } } }`. A part of an assembly inside has its name behind a dot.",
  ),
};

/** What an assembly makes, with the maker's settings of its parts in the place of its own. */
export function withItsParts(made: Settings, said: MapNode | undefined, where: Where): Settings {
  return (said?.entries ?? []).reduce((entries, entry) => {
    const path = entry.key.text.split(".").map(normaliseName);
    return changed(entries, path, entry, where) ?? entries;
  }, made);
}

function changed(
  entries: Settings,
  [name = "", ...rest]: readonly string[],
  entry: Entry,
  where: Where,
): Settings | null {
  const own = entries[name];
  if (!isSettings(own)) {
    const names = Object.keys(entries).filter((each) => isSettings(entries[each]));
    tell(where, entry.key, unknownName(entry.key.at, { name: entry.key.text, nearest: nearest(name, names) }));
    return null;
  }
  if (rest.length === 0) return { ...entries, [name]: merged(own, settingsOf(entry.value as MapNode)) };
  if (own.kind === undefined) {
    const inner = changed(own, rest, entry, where);
    return inner && { ...entries, [name]: inner };
  }
  // An assembly inside opens later, and is told then.
  const before = own[ITS_PARTS];
  const inside: Entry = { key: renamed(entry.key, rest.join(".")), value: entry.value };
  const more: MapNode = isMap(before) ? { ...before, entries: [...before.entries, inside] } : within(entry, inside);
  return { ...entries, [name]: { ...own, [ITS_PARTS]: more } };
}

/** Settings of which the later ones count, however they are spelt. */
function merged(made: Settings, said: Settings): Settings {
  const words = new Set(Object.keys(said).map(squash));
  const kept = Object.entries(made).filter(([key]) => !words.has(squash(key)));
  return from(made[FROM], { ...Object.fromEntries(kept), ...(made[CURE] && { [CURE]: made[CURE] }), ...said });
}

const renamed = (key: TextNode, text: string): TextNode => ({ ...key, text });
const within = (entry: Entry, inside: Entry): MapNode => ({ ...(entry.value as MapNode), entries: [inside] });

const isMap = (value: Value): value is MapNode =>
  typeof value === "object" && !isList(value) && isNode(value) && value.kind === "map";
const isSettings = (value: Value): value is Settings => typeof value === "object" && !isList(value) && !isNode(value);
