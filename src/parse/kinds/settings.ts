import { duplicateKey } from "../../findings/rules/duplicate-key.ts";
import { missingKey } from "../../findings/rules/missing-key.ts";
import { notInThisVersion } from "../../findings/rules/not-in-this-version.ts";
import { unknownKey } from "../../findings/rules/unknown-key.ts";
import type { Located, Span } from "../../findings/span.ts";
import { nearest } from "../../findings/suggest.ts";
import { squash } from "../names.ts";
import type { Entry, Node } from "../yaml/nodes.ts";
import { type Described, type JsonSchema, type Kind, tell, tellWrong, type Where } from "./kind.ts";

/** One setting of the language: what it may hold, what it means (one sentence), and other words for it. */
export interface Key<T, Needed extends boolean = boolean> {
  readonly kind: Kind<T>;
  readonly meaning: string;
  readonly also: readonly string[];
  readonly needed: Needed;
}
export const may = <T>(kind: Kind<T>, meaning: string, ...also: string[]): Key<T, false> => ({
  ...{ kind, meaning, also },
  needed: false,
});
export const need = <T>(kind: Kind<T>, meaning: string, ...also: string[]): Key<T, true> => ({
  ...{ kind, meaning, also },
  needed: true,
});

// biome-ignore lint/suspicious/noExplicitAny: a key of any kind; what it holds is inferred key by key below
export type Keys = Readonly<Record<string, Key<any>>>;
/** A value, its place, and the place of its key. */
export interface Field<T> extends Located<T> {
  readonly key: Span;
}
type Of<K> = K extends Key<infer T> ? Field<T> : never;
export type Fields<K extends Keys> = {
  readonly [N in keyof K as K[N] extends Key<unknown, true> ? N : never]: Of<K[N]>;
} & {
  readonly [N in keyof K as K[N] extends Key<unknown, true> ? never : N]?: Of<K[N]>;
};

/** Settings as read: their place, and each that was said. */
export interface Settings<K extends Keys> {
  readonly at: Span;
  readonly said: Fields<K>;
}
export interface SettingsKind<K extends Keys> extends Kind<Settings<K>>, Described {
  readonly keys: K;
}

/** Settings with known keys. `what` is their owner in a sentence: "a part"; `later` are words that the language has and this version does not read. */
export function settings<const K extends Keys>(what: string, keys: K, later: readonly string[] = []): SettingsKind<K> {
  const names = Object.keys(keys);
  const byWord = new Map(
    names.flatMap((name) => [name, ...(keys[name]?.also ?? [])].map((word) => [squash(word), name])),
  );
  const laterWords = new Set(later.map(squash));
  const words = `settings (${names.slice(0, 4).join(", ")}${names.length > 4 ? " …" : ""})`;

  function readEntry(entry: Entry, name: string, found: Map<string, Field<unknown>>, where: Where): void {
    const earlier = found.get(name);
    if (earlier !== undefined) {
      const also = [{ at: earlier.key, label: "said here first" }];
      tell(where, entry.key, duplicateKey(entry.key.at, { key: entry.key.text }, { also }));
      return;
    }
    const value = keys[name]?.kind.read(entry.value, { ...where, key: entry.key.text, at: entry.key.at });
    found.set(name, { value, key: entry.key.at, at: entry.value.kind === "text" ? entry.value.at : entry.key.at });
  }

  function read(node: Node, where: Where): Settings<K> | undefined {
    if (node.kind !== "map") return tellWrong(where, node, words);
    const found = new Map<string, Field<unknown>>();
    const guessed = new Set<string>();
    for (const entry of node.entries) {
      const name = byWord.get(squash(entry.key.text));
      if (name !== undefined) readEntry(entry, name, found, where);
      else if (laterWords.has(squash(entry.key.text)))
        tell(where, entry.key, notInThisVersion(entry.key.at, { what: `\`${entry.key.text}\`` }));
      else {
        const near = nearest(entry.key.text, names);
        for (const each of near) guessed.add(each);
        const args = { what, key: entry.key.text, near, known: names, belongs: where.owners(squash(entry.key.text)) };
        tell(where, entry.key, unknownKey(entry.key.at, args));
      }
    }
    let complete = true;
    for (const name of names) {
      if (keys[name]?.needed !== true || found.get(name)?.value !== undefined) continue;
      complete = false;
      if (!found.has(name) && !guessed.has(name)) tell(where, node, missingKey(where.at, { what, key: name }));
    }
    if (!complete) return undefined;
    const readable = [...found].filter(([, field]) => field.value !== undefined);
    return { at: node.at, said: Object.fromEntries(readable) as unknown as Fields<K> };
  }
  return { what, keys, later, words, json: jsonOf(keys, later), inside: [{ what, keys, later }], read };
}

/** Keys by their own spelling; other spellings and words by pattern, since all of them are read. */
function jsonOf(keys: Keys, later: readonly string[]): JsonSchema {
  const properties: [string, JsonSchema][] = [];
  const patterns: [string, JsonSchema][] = [];
  for (const [name, { kind, meaning, also }] of Object.entries(keys)) {
    properties.push([name, { ...kind.json, description: meaning }]);
    const others = [name, ...also].map((each) => each.replace(/[ -]/g, "[ _-]*"));
    if (others.length > 1 || name.includes(" ")) patterns.push([`^(?:${others.join("|")})$`, kind.json]);
  }
  for (const name of later) properties.push([name, { description: "not in this version" }]);
  return {
    type: "object",
    properties: Object.fromEntries(properties),
    ...(patterns.length === 0 ? {} : { patternProperties: Object.fromEntries(patterns) }),
    required: Object.keys(keys).filter((name) => keys[name]?.needed === true && keys[name]?.also.length === 0),
    additionalProperties: false,
  };
}
