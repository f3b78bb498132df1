/** What would be otherwise in another copy of the plan. Types only. */
import type { Length } from "../../../units/length.ts";
import type { Purchase } from "./purchase.ts";

/** An option that was not chosen, the other choices as they are: what it changes. */
export interface Otherwise {
  readonly choice: string;
  readonly option: string;
  /** More than in this copy, less where it is below zero. Money where all that differs has a price; absent where it is not known. */
  readonly cost?: number;
  /** kg */
  readonly mass: number;
  /** Minutes at the bench. */
  readonly bench: number;
  readonly parts: number;
  /** In the order of what to buy, then what only the other copy needs: how many, here and there. */
  readonly buys: readonly {
    readonly section: Purchase["section"];
    readonly item: string;
    readonly unit: string;
    readonly here: number;
    readonly there: number;
  }[];
}

/** A size that the reader may ask for, with the range that the maker promises. */
export interface FreeSize {
  readonly name: string;
  /** The question that the reader answers; empty: none. */
  readonly ask: string;
  readonly value: Length;
  readonly low: Length;
  readonly high: Length;
}
