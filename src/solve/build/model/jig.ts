import type { Length } from "../../../units/length.ts";

/** A template, strip or spacer that is made from an offcut before it is used. Types only. */
export interface Jig {
  /** Printed, with a capital where it begins a sentence: "jig 1". */
  readonly id: string;
  /** "the pulls": what it sets out; of a spacer, what it holds apart. */
  readonly what: string;
  /** Where it is laid on the part: its fences against two edges, flush with its lower end, or with its near end; a spacer between parts. */
  readonly laid: "in the corner" | "on the end" | "between";
  /** Of a strip: which of its ends is flush with that of the part, "lower" or "front". */
  readonly end?: string;
  /** Of a spacer: how far it holds apart. */
  readonly width: Length;
  readonly length: Length;
  /** Of the wood that it is made of: a drill passes it before it reaches the part. Null: any scrap, and not known. */
  readonly thickness: Length | null;
  /** How many are made. */
  readonly count: number;
  /** Right through, from one corner: along its width and its length. A spacer has none. */
  readonly holes: readonly { readonly x: Length; readonly y: Length; readonly diameter: Length }[];
  /** Stock of the offcut that it is cut from; null: any scrap. */
  readonly from: string | null;
  /** Parts have their holes in other corners: it is turned over for some. Absent: for none. */
  readonly handed?: true;
  readonly uses: Uses;
}

/** What is made or placed with it: holes by their place in `Build.holes`, features as "part index", and ids of the parts that are placed. */
export interface Uses {
  readonly holes: readonly number[];
  readonly features: readonly string[];
  readonly parts: readonly string[];
}

/** Before it has its number and its wood. */
export type JigDraft = Omit<Jig, "id" | "from" | "thickness">;
