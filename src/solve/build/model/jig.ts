import type { Length } from "../../../units/length.ts";
import type { Hole } from "../../design.ts";

/** A template that is made from an offcut before it is used. Types only. */
export interface Jig {
  readonly id: string;
  /** "the pulls": what it sets out. */
  readonly what: string;
  /** The parts that are bored by it, and their holes for it. */
  readonly parts: readonly string[];
  readonly bores: Hole["kind"];
  /** Where it is laid on the part: its fences against two edges, or flush with its lower end. */
  readonly laid: "in the corner" | "on the end";
  readonly width: Length;
  readonly length: Length;
  /** Right through, from one corner: along its width and its length. */
  readonly holes: readonly { readonly x: Length; readonly y: Length; readonly diameter: Length }[];
  /** Stock of the offcut that it is cut from; null: any scrap. */
  readonly from: string | null;
}
