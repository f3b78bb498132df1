import type { Span } from "../../findings/span.ts";
import type { Axis } from "../draft.ts";
import type { Entry, MapNode, Node, TextNode, Words } from "../yaml/nodes.ts";

/** What an assembly writes: settings, lists and texts in the language, with pieces of the source among them as they stand. */
export type Value = string | number | boolean | Node | undefined | readonly Value[] | Settings;
export interface Settings {
  readonly [key: string]: Value;
  readonly [FROM]?: Span;
  readonly [CURE]?: Cures;
}

/** The setting of the maker's that settings were made from: what is told of them points there. A symbol, so that it is no setting itself. */
export const FROM = Symbol("from");

/** By direction, what the maker may write where a part is in the place of another: "{by}" stands for how far. */
export type Cures = Partial<Record<Axis, string>>;
/** What moves a part out of the way of another. A symbol, so that it is no setting itself. */
export const CURE = Symbol("cure");

/** The same settings, pointing to the setting that they were made from; where they do so already, that one is nearer. */
export const from = (at: Span | undefined, made: Settings): Settings =>
  at === undefined || made[FROM] ? made : { ...made, [FROM]: at };

export const isNode = (value: object): value is Node =>
  "at" in value && typeof value.at === "object" && ("entries" in value || "items" in value || "text" in value);

/** The value as a node of the source tree, pointing to `at` wherever it does not come from the source itself. */
export function toNode(value: Exclude<Value, undefined>, at: Span): Node {
  if (typeof value === "boolean") return written(value ? "yes" : "no", at);
  if (typeof value === "string" || typeof value === "number") return written(String(value), at);
  if (isNode(value)) return value;
  if (isList(value)) {
    const items = value.flatMap((item) => (item === undefined ? [] : [toNode(item, at)]));
    return { kind: "list", at, items, flow: true };
  }
  return settingsNode(value, at);
}

export const isList = (value: object): value is readonly Value[] => Array.isArray(value);

/** Settings without those that are undefined. A part and its name point to what the part was made from. */
export function settingsNode(value: Settings, around: Span): MapNode {
  const at = value[FROM] ?? around;
  const entries = Object.entries(value).flatMap(([key, each]): Entry[] =>
    each === undefined ? [] : [{ key: written(key, originOf(each) ?? at), value: toNode(each, at) }],
  );
  return { kind: "map", at, entries, flow: false, ...(value[CURE] && { cures: value[CURE] }) };
}

const originOf = (value: Value): Span | undefined =>
  typeof value === "object" && !isList(value) && !isNode(value) ? value[FROM] : undefined;

export const written = (text: string, at: Span): TextNode => ({
  ...{ kind: "text", text, quoted: false, at, made: true },
  place: () => at,
});

/** A single measure or name, which needs no brackets in a formula. */
const SINGLE = /^(?:[\d\s./]+(?:\s?(?:in|mm|cm|m|ft))?|[\p{L}\p{N}_.-]+)$/u;

export type Writer = (strings: TemplateStringsArray, ...values: readonly (string | number | Words)[]) => TextNode;

/** Writes formulas and phrases in which texts of the source keep their places; the rest points to `at`. */
export const writer =
  (at: Span): Writer =>
  (strings, ...values) =>
    joined(
      strings.flatMap((text, i) => {
        const value = values[i];
        return value === undefined ? [text] : [text, typeof value === "number" ? String(value) : value];
      }),
      at,
    );

/** Pieces of text in a row. A formula among others is put in brackets. */
export function joined(parts: readonly (string | Words)[], at: Span): TextNode {
  const others = parts.filter((part) => typeof part !== "string" || part !== "").length > 1;
  const pieces = parts.flatMap((part): { text: string; from?: Words }[] => {
    if (typeof part === "string") return [{ text: part }];
    const whole = { text: part.text, from: part };
    return others && !SINGLE.test(part.text) ? [{ text: "(" }, whole, { text: ")" }] : [whole];
  });
  const place = (start: number, end: number): Span => {
    let before = 0;
    for (const { text, from } of pieces) {
      if (from !== undefined && start >= before && end <= before + text.length)
        return from.place(start - before, end - before);
      before += text.length;
    }
    return at;
  };
  return { kind: "text", text: pieces.map((piece) => piece.text).join(""), quoted: false, at, place };
}
