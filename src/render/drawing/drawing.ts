import type { Length } from "../../units/length.ts";
import type { Font, Item } from "../document.ts";

/** What every drawing returns: items inside the frame it was given, what they show in words, and the scale as it is printed. */
export interface Drawing {
  readonly items: readonly Item[];
  /** For a reader who cannot see the page; from the model, not from the picture. */
  readonly alt: string;
  /** "1:8", or "not to scale". */
  readonly scale: string;
}

/** What a drawing needs to know of letters and numbers. */
export interface Pen {
  /** Advance width of a text, in points. */
  readonly measure: (text: string, font: Font, size: number) => number;
  /** A length as the plan prints it. */
  readonly print: (length: Length) => string;
  /** The length that is printed for one, and the nearest that a rule has a mark for. */
  readonly printed?: (length: Length) => Length;
  readonly marked?: (length: Length) => Length;
}

/** A place on the page in points, y down. */
export type Spot = readonly [number, number];

export const NOT_TO_SCALE = "not to scale";
