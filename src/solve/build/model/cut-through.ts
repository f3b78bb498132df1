/** A place where parts are joined, cut through, with the sizes that nothing but a section shows. Types only. */
import type { Length } from "../../../units/length.ts";
import type { Direction, Hole, Point } from "../../design.ts";

export interface CutThrough {
  /** What it is cut through: "a butt hinge". */
  readonly what: string;
  /** The plane: square to this axis, so far along it. */
  readonly axis: 0 | 1 | 2;
  readonly at: Length;
  /** Ids of the parts that are joined, first the one in another tint. */
  readonly parts: readonly [string, string, ...string[]];
  /** Ids of hardware that the plane meets. */
  readonly hardware: readonly string[];
  /** Bores that lie in the plane. */
  readonly bores: readonly Hole[];
  /** What is round and lies along the plane: screws, bolts, barrels. */
  readonly rods: readonly Rod[];
  /** What is round and stands square to it: the knuckle of a hinge. */
  readonly rounds: readonly { readonly at: Point; readonly diameter: Length }[];
  readonly sizes: readonly Sized[];
}

export interface Rod {
  readonly from: Point;
  readonly to: Point;
  readonly diameter: Length;
  /** Absent: it has none; `sunk`: it tapers into the wood, flush with it. */
  readonly head?: { readonly diameter: Length; readonly height: Length; readonly sunk?: boolean };
  /** Written beside it. */
  readonly name?: string;
}

/** A size that is told by a letter; measured in several places where it is the same in all. */
export interface Sized {
  readonly says: string;
  readonly size: Length;
  /** It is set out with a rule, as the places of holes are. Absent: it is told to the plan's precision. */
  readonly isPlace?: true;
  readonly spans: readonly Measured[];
}

/** From one point to another along an axis; its line stands off them that way. */
export interface Measured {
  readonly from: Point;
  readonly to: Point;
  readonly off: Direction;
}
