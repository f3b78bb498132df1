/** What is bored with which bit, and what is driven. Types only. */
import type { Length } from "../../../units/length.ts";
import type { Bit } from "../../design/boring/bits.ts";
import type { FastenerKind } from "../../design.ts";

/** Holes, or stages of them, that are bored with one bit at one setting. */
export interface DrillRow {
  readonly bit: Bit;
  /** Of the bit; of a countersink, how wide it cuts. */
  readonly diameter: Length;
  /** Index `Build.holes`. */
  readonly holes: readonly number[];
  /** "pilot for wood screw #8, in hardwood" */
  readonly what: string;
  /** Where the stop is set, from the face that the bit goes in by: the outermost of the parts whose holes guide it, or of the jig. */
  readonly depth: Length | "through" | "flush" | "by the jig";
  /** That guides the bit; of scrap its thickness is not in `depth`. Null: none. */
  readonly jig: { readonly id: string; readonly scrap: boolean } | null;
  /** Length from end to end where the hole is drawn out to a slot. */
  readonly slot: Length | null;
  /** What has to lie where the bit comes out; null where it does not come out. */
  readonly backing: "scrap" | "the wall" | null;
  /** As the finished piece stands; `parts` how many of that mark. */
  readonly into: readonly { readonly mark: string; readonly parts: number; readonly side: string }[];
  readonly when: "before assembly" | "on the bench" | "in place";
  /** Numbers of steps. */
  readonly steps: readonly number[];
}

/** Fasteners that are bought by the same words. */
export interface FastenerRow {
  readonly kind: FastenerKind;
  readonly item: string;
  readonly with: readonly string[];
  readonly length: Length;
  readonly fasteners: readonly string[];
  /** What `count` of them are bored for first, or the wood splits; null where it takes all as it is. */
  readonly lead: { readonly diameter: Length; readonly depth: Length; readonly count: number } | null;
  /** Marks. */
  readonly ways: readonly {
    readonly through: readonly string[];
    /** Where nothing is passed through: what the button or clip sits at. */
    readonly at: readonly string[];
    readonly into: string;
    readonly count: number;
  }[];
  /** Numbers of steps. */
  readonly steps: readonly number[];
}
