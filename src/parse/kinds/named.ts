import { textTooLong } from "../../findings/rules/text-too-long.ts";
import { unusableName } from "../../findings/rules/unusable-name.ts";
import type { Span } from "../../findings/span.ts";
import { LIMITS } from "../limits.ts";
import { isUsableName, normaliseName } from "../names.ts";
import type { TextNode } from "../yaml/nodes.ts";
import { type Kind, tell, tellWrong, type Where } from "./kind.ts";

export interface Named<T> {
  readonly name: string;
  readonly at: Span;
  readonly value: T;
}

/** A name as formulas know it; undefined, and told, where it cannot be one. */
export function readName(
  key: TextNode,
  where: Where,
  check: (name: string) => boolean = isUsableName,
): string | undefined {
  const name = normaliseName(key.text);
  const { limit } = LIMITS.nameLength;
  if (name.length > limit) return tell(where, key, textTooLong(key.at, { count: name.length, limit }));
  return check(name) ? name : tell(where, key, unusableName(key.at, { name: key.text }));
}

/** Entries under names that the maker gave, in the order of the source. */
export const named = <T>(
  kind: Kind<T>,
  what: string,
  check?: (name: string) => boolean,
): Kind<readonly Named<T>[]> => ({
  words: `settings, one for each ${what}`,
  json: { type: "object", additionalProperties: kind.json },
  inside: kind.inside ?? [],
  read(node, where) {
    if (node.kind !== "map") return tellWrong(where, node, this.words);
    const entries: Named<T>[] = [];
    for (const { key, value } of node.entries) {
      const name = readName(key, where, check);
      const read = kind.read(value, { ...where, key: key.text, at: key.at });
      if (name !== undefined && read !== undefined) entries.push({ name, at: key.at, value: read });
    }
    return entries;
  },
});
