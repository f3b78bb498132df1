import { isScalar, type Pair, type YAMLMap, type Node as YamlNode } from "yaml";
import { duplicateKey } from "../../findings/rules/duplicate-key.ts";
import { emptyValue } from "../../findings/rules/empty-value.ts";
import { keyNotText } from "../../findings/rules/key-not-text.ts";
import { mergeNotSettings } from "../../findings/rules/merge-not-settings.ts";
import { tooMuch } from "../../findings/rules/too-much.ts";
import type { Span } from "../../findings/span.ts";
import { LIMITS } from "../limits.ts";
import { normaliseName } from "../names.ts";
import { buildText } from "./build-text.ts";
import type { Builder } from "./builder.ts";
import { looseWord } from "./loose-word.ts";
import type { Entry, MapNode, Node } from "./nodes.ts";

/** A map with every key once, what `<<` merges into it behind its own keys. */
export function buildMap(builder: Builder, map: YAMLMap, at: Span, via: Span | undefined): MapNode {
  const own = new Map<string, Entry>();
  const merged: Node[] = [];
  const { findings } = builder;
  if (map.items.length > LIMITS.mapKeys.limit) {
    findings.push(tooMuch(at, { count: map.items.length, ...LIMITS.mapKeys }));
    return { kind: "map", at, entries: [], flow: false, ...(via ? { via } : {}) };
  }
  let [before, loose]: [Entry | undefined, boolean] = [undefined, false];
  for (const pair of map.items as Pair<YamlNode, YamlNode | null>[]) {
    const key = buildKey(builder, pair, at, via);
    if (key === undefined) continue;
    if (key.text === "<<" && !key.quoted) {
      merged.push(...mergedMaps(builder, pair.value, key.at, via));
      continue;
    }
    const value = builder.build(pair.value, key.at, via);
    const name = normaliseName(key.text);
    const earlier = own.get(name);
    if (pair.value === null && map.flow === true) {
      if (!loose) findings.push(looseWord(builder, key, before));
      loose = true;
      continue;
    }
    [before, loose] = [{ key, value }, false];
    if (earlier !== undefined) {
      const also = [{ at: earlier.key.at, label: "said here first" }];
      findings.push(duplicateKey(key.at, { key: key.text }, { also }));
      continue;
    }
    if (value.kind === "empty" && !builder.full && !isBroken(pair)) findings.push(emptyOf(builder, key));
    own.set(name, { key, value });
  }
  return { kind: "map", at, entries: withMerged(own, merged), flow: map.flow === true, ...(via ? { via } : {}) };
}

/** A value that could not be followed has been told about already. */
const isBroken = (pair: Pair<YamlNode, YamlNode | null>): boolean =>
  !isScalar(pair.value) ? pair.value !== null : pair.value.source !== "";

function buildKey(builder: Builder, pair: Pair<YamlNode, YamlNode | null>, at: Span, via: Span | undefined) {
  const node = pair.key as YamlNode | null;
  const [start = at.start, end = at.start] = node?.range ?? [];
  const here = builder.places(start, end);
  if (node !== null && isScalar(node)) return buildText(builder, node, here, via);
  builder.findings.push(keyNotText(here, {}));
  return undefined;
}

function emptyOf(builder: Builder, key: Entry["key"]) {
  const rest = /^['"]?\s*:[ \t]*(#[^\n]*)?/.exec(builder.text.slice(key.at.end, key.at.end + 200));
  return emptyValue(key.at, { key: key.text, comment: rest?.[1] });
}

/** What stands behind `<<`: settings, or a list of them. */
function mergedMaps(builder: Builder, value: YamlNode | null, at: Span, via: Span | undefined): Node[] {
  const node = builder.build(value, at, via);
  const maps = node.kind === "list" ? node.items : [node];
  const wrong = maps.find((item) => item.kind !== "map" && item.kind !== "empty");
  if (wrong !== undefined) builder.findings.push(mergeNotSettings(wrong.via ?? wrong.at, {}));
  return maps.filter((item) => item.kind === "map");
}

function withMerged(own: Map<string, Entry>, merged: readonly Node[]): Entry[] {
  for (const map of merged) {
    if (map.kind !== "map") continue;
    for (const entry of map.entries) {
      const name = normaliseName(entry.key.text);
      if (!own.has(name)) own.set(name, entry);
    }
  }
  return [...own.values()];
}
