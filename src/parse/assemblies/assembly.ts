import type { Span } from "../../findings/span.ts";
import type { Axis, Face } from "../draft.ts";
import type { Settings as Made, Writer } from "../expand/make.ts";
import type { Where } from "../kinds/kind.ts";
import { type Fields, type Keys, type SettingsKind, settings } from "../kinds/settings.ts";
import type { Node, TextNode } from "../yaml/nodes.ts";
import { itsParts } from "./its-parts.ts";

/** What an assembly makes: parts, spaces and groups by name, and the joints between them, all in the language. */
export interface Expanded {
  readonly entries: Made;
  readonly joints: readonly Made[];
  /** Hardware fixed to its parts. */
  readonly fittings?: readonly Made[];
}

/** Where an assembly stands, and what it may use to say its parts. */
export interface Site {
  /** The name of the assembly, and the path of its group. */
  readonly name: string;
  readonly path: readonly string[];
  readonly at: Span;
  readonly where: Where;
  readonly units: "inch" | "mm";
  /** The step to which the plan rounds, as text. */
  readonly step: TextNode;
  /** The finer step for fits, where the plan says one; else the same. */
  readonly fit: TextNode;
  readonly write: Writer;
  /** An inch measure, or its neighbour in a metric plan. */
  readonly usual: (inch: string, mm: string) => string;
  /** Statements of place in a direction: what the maker said, and where that is too little, what follows from what stands round it. */
  readonly placed: (axis: Axis, beyond?: (face: Face, from: TextNode) => TextNode) => Made;
  /** Statements of place in a direction in which it is as thick as its stock: what the maker said, and else where this face lies. */
  readonly thin: (axis: Axis, face: Face) => Made;
  /** Statements of place that follow those of something named, but for what the maker said. */
  readonly like: (axis: Axis, of: TextNode) => Made;
  /** A piece of the plan's hardware by its name or kind, the usual of a kind where none is named. */
  readonly item: (name: TextNode | undefined, usual: string) => WrittenItem;
  /** A setting of another assembly by its name, as it is written. */
  readonly settingOf: (name: TextNode, key: string) => Node | undefined;
  /** The stock of what hangs behind the back of this case, if anything does. */
  readonly behindBack: TextNode | null;
  /** Whether a stock of the plan is glass. */
  readonly isGlass: (stock: TextNode) => boolean;
  /** Whether it is solid wood. */
  readonly isSolid: (stock: TextNode) => boolean;
  /** What this stands under or on, if anything: its path, and the kind of assembly that it is. */
  readonly under: Neighbour | null;
  readonly on: Neighbour | null;
  /** What says that it stands on this. */
  readonly carries: Neighbour | null;
}

/** Hardware as it is written, and as its kind has it where it is not: a measure, or lengths that are sold. */
export interface WrittenItem {
  readonly kind: string;
  readonly measure: (field: string) => TextNode | null;
  /** What the plan itself says of it, if anything. */
  readonly said: (field: string) => TextNode | null;
  /** The lower end of a range. */
  readonly least: (field: string) => TextNode | null;
  readonly lengths: (field: string) => readonly TextNode[];
}

export interface Neighbour {
  readonly path: string;
  readonly assembly: AnyAssembly | null;
  /** Paths of what of it carries a top; the whole, where it does not say. */
  readonly bearers: readonly string[];
}

/** A kind of assembly: its settings, and what they come to. One file each. */
export interface Assembly<K extends Keys> {
  readonly kind: string;
  /** Other words for it. */
  readonly also: readonly string[];
  /** One sentence. */
  readonly meaning: string;
  /** What its parts and spaces are called, in one sentence; nothing for one of the plan's own. */
  readonly makes?: string;
  readonly settings: SettingsKind<K>;
  readonly expand: (said: Fields<K>, site: Site) => Expanded;
  /** Names of the parts or groups in it that carry a top, from its settings as they are written. */
  readonly bearers?: (written: (key: string) => Node | undefined) => readonly string[];
  /** The stock of what it has behind the back of its `case`, from its settings as they are written. */
  readonly behindBack?: (written: (key: string) => Node | undefined) => TextNode | null;
  /** It has a space `footprint` for what stands under it. */
  readonly footprint?: boolean;
  /** The setting that names what it stands before, and whose place it has. */
  readonly before?: string;
  /** Held by another assembly it moves, and is not meant by the name of that. */
  readonly moves?: true;
  /** It takes its height from its stock. */
  readonly flat?: boolean;
}

// biome-ignore lint/suspicious/noExplicitAny: the settings of each assembly have their own type
export type AnyAssembly = Assembly<any>;
export const assembly = <const K extends Keys>(about: Assembly<K>): Assembly<K> => {
  const { what, keys, later } = about.settings;
  // What it makes does not know of that setting.
  return { ...about, settings: settings(what, { ...keys, ...itsParts }, later) as unknown as SettingsKind<K> };
};
