import type { Span } from "../../findings/span.ts";
import type { Node } from "../yaml/nodes.ts";
import { type JsonSchema, type Kind, tellWrong, type Where } from "./kind.ts";

/** The same kind, its value made into something else. */
export const made = <A, B>(kind: Kind<A>, make: (value: A, node: Node, where: Where) => B | undefined): Kind<B> => ({
  ...kind,
  read(node, where) {
    const value = kind.read(node, where);
    return value === undefined ? undefined : make(value, node, where);
  },
});

/** What to point at in an entry of a list that has no name. */
export const firstWord = (node: Node): Span => (node.kind === "map" ? (node.entries[0]?.key.at ?? node.at) : node.at);

/** A list, each entry of one kind. An entry that cannot be read makes the whole unreadable, after all are looked at. */
export const list = <T>(kind: Kind<T>, words = `a list, each ${kind.words}`): Kind<readonly T[]> => ({
  words,
  json: { type: "array", items: kind.json },
  inside: kind.inside ?? [],
  read(node, where) {
    if (node.kind !== "list") return tellWrong(where, node, words);
    const items = node.items.map((item) => kind.read(item, { ...where, at: firstWord(item) }));
    return items.every((item) => item !== undefined) ? items : undefined;
  },
});

/** One, or a list of them. */
export function oneOrList<T>(kind: Kind<T>): Kind<readonly T[]> {
  const several = list(kind);
  return {
    words: `${kind.words}, or a list`,
    json: { anyOf: [kind.json, several.json] },
    inside: kind.inside ?? [],
    read(node, where) {
      if (node.kind === "list") return several.read(node, where);
      const one = kind.read(node, where);
      return one === undefined ? undefined : [one];
    },
  };
}

/** Read as one kind or another by whether it is text, a list or settings. */
export function byForm<A, B = never, C = never>(forms: {
  readonly text?: Kind<A>;
  readonly map?: Kind<B>;
  readonly list?: Kind<C>;
}): Kind<A | B | C> {
  const kinds: readonly Kind<A | B | C>[] = [forms.text, forms.map, forms.list].filter((kind) => kind !== undefined);
  const words = kinds.map((kind) => kind.words).join(", or ");
  return {
    words,
    json: { anyOf: kinds.map((kind): JsonSchema => kind.json) },
    inside: kinds.flatMap((kind) => kind.inside ?? []),
    read(node, where) {
      const kind = node.kind === "empty" ? undefined : forms[node.kind];
      return kind === undefined ? tellWrong(where, node, words) : kind.read(node, where);
    },
  };
}
