import type { Span } from "../../findings/span.ts";
import { squash } from "../names.ts";

/** A piece of text that knows where each of its characters stands in the source. */
export interface Words {
  readonly text: string;
  /** The span of the characters from `start` up to `end`. */
  readonly place: (start: number, end: number) => Span;
}

interface Base {
  readonly at: Span;
  /** Where the anchor was used through which this node is reached. */
  readonly via?: Span;
}
export interface TextNode extends Base, Words {
  readonly kind: "text";
  readonly quoted: boolean;
  /** Written by an assembly, and not by the maker. */
  readonly made?: true;
}
export interface Entry {
  readonly key: TextNode;
  readonly value: Node;
}
export interface MapNode extends Base {
  readonly kind: "map";
  readonly entries: readonly Entry[];
  /** Written in braces. */
  readonly flow: boolean;
  /** The kind of assembly that was opened into it: a group, whatever its parts are called. */
  readonly opened?: string;
  /** By direction, what moves the part out of the way of another. */
  readonly cures?: Readonly<Partial<Record<"across" | "deep" | "up", string>>>;
  /** Not meant by the name of what holds it: a door, a drawer. */
  readonly apart?: true;
}
export interface ListNode extends Base {
  readonly kind: "list";
  readonly items: readonly Node[];
  readonly flow: boolean;
}
/** Nothing stands behind the colon or the dash. */
export interface EmptyNode extends Base {
  readonly kind: "empty";
}

/** The source as a tree: anchors followed, merges done, nothing of the YAML library left. */
export type Node = TextNode | MapNode | ListNode | EmptyNode;

/** A part of a text, without the blanks around it. */
export function slice(words: Words, from: number, to: number = words.text.length): Words {
  const raw = words.text.slice(from, to);
  const lead = raw.length - raw.trimStart().length;
  const start = from + lead;
  return { text: raw.trim(), place: (a, b) => words.place(start + a, start + b) };
}

/** The entry of a setting, by its squashed name. */
export const settingOf = ({ entries }: MapNode, name: string): Entry | undefined =>
  entries.find(({ key }) => squash(key.text) === name);

export const wholePlace = (words: Words): Span => words.place(0, words.text.length);
