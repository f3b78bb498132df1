import type { Finding } from "../../findings/finding.ts";
import { spaceAfterColon } from "../../findings/rules/space-after-colon.ts";
import { wrongValue } from "../../findings/rules/wrong-value.ts";
import type { Span } from "../../findings/span.ts";
import { COLON_WITHOUT_SPACE, gluedValue } from "../yaml/loose-word.ts";
import type { Node } from "../yaml/nodes.ts";

/** Part of a JSON Schema, as JSON. */
export type JsonSchema = { readonly [key: string]: Json };
export type Json = string | number | boolean | null | readonly Json[] | JsonSchema;

/** Where a value is being read: the setting it belongs to, and the list of findings. */
export interface Where {
  /** The setting or name, as the maker wrote it. */
  readonly key: string;
  readonly at: Span;
  /** The group in whose settings it stands; absent outside of groups. */
  readonly home?: readonly string[];
  /** The innermost group there that the maker has named; what an assembly makes has other names. */
  readonly named?: readonly string[];
  readonly findings: Finding[];
  /** Things that have a setting of this squashed name: where a misplaced one may belong. */
  readonly owners: (key: string) => readonly string[];
}

/** Settings of the language as data, for the reference and the JSON Schema. */
export interface Described {
  /** Their owner in a sentence: "a part". */
  readonly what: string;
  readonly keys: Readonly<Record<string, DescribedKey>>;
  /** Words that the language has here and this version does not read. */
  readonly later: readonly string[];
}
export interface DescribedKey {
  readonly kind: Pick<Kind<unknown>, "words" | "json" | "inside">;
  /** One sentence. */
  readonly meaning: string;
  /** Other words for it. */
  readonly also: readonly string[];
  readonly needed: boolean;
}

/**
 * What a setting may hold: how it is read, what it is called in a sentence ("a measure"), and its JSON Schema.
 * `read` gives undefined when it told a finding, or where an earlier one left nothing to read.
 */
export interface Kind<T> {
  readonly words: string;
  readonly json: JsonSchema;
  /** Settings that can stand in it. */
  readonly inside?: readonly Described[];
  readonly read: (node: Node, where: Where) => T | undefined;
}

/** Adds a finding about a node, and where its anchor was used if it was reached through one. */
export function tell(where: Where, node: Node, finding: Finding): undefined {
  const also = node.via === undefined ? finding.also : [...finding.also, { at: node.via, label: "used here" }];
  where.findings.push({ ...finding, also });
  return undefined;
}

/** Tells that the value is of another kind than the setting takes. */
export function tellWrong(where: Where, node: Node, wanted: string): undefined {
  if (node.kind === "empty") return undefined;
  const glued = node.kind === "text" && !node.quoted ? COLON_WITHOUT_SPACE.exec(node.text) : null;
  if (glued !== null && wanted.startsWith("settings"))
    return tell(where, node, spaceAfterColon(node.at, { key: glued[1] ?? "", value: gluedValue(glued[2] ?? "") }));
  const at = node.kind === "text" ? node.at : where.at;
  return tell(where, node, wrongValue(at, { key: where.key, wanted, found: foundWords(node) }));
}

const foundWords = (node: Node): string =>
  node.kind === "map" ? "settings of its own" : node.kind === "list" ? "a list" : "a text";
