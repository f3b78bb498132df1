/** Hardware, and how what hangs or runs on it moves. Types only. */

import type { Solid, Vec } from "../../../geometry/index.ts";
import type { Length } from "../../../units/length.ts";
import type { Point } from "./points.ts";

/** A piece of hardware as the plan describes it, its usual measures filled in; see `src/parse/hardware`. */
export interface Item {
  /** As the plan calls it in `hardware`; its kind where the plan does not name it. */
  readonly name: string;
  readonly kind: string;
  /** Printed: "cup hinge, overlay 12 mm". */
  readonly label: string;
  /** By the names of the kind's fields. */
  readonly measures: ReadonlyMap<string, Length>;
  readonly ranges: ReadonlyMap<string, { readonly low: Length; readonly high: Length }>;
  /** Lengths that are sold, shortest first. */
  readonly lists: ReadonlyMap<string, readonly Length[]>;
  /** Counts, degrees, kg. */
  readonly numbers: ReadonlyMap<string, number>;
  readonly words: ReadonlyMap<string, string>;
  /** Names of fields that the plan itself gives. */
  readonly said: ReadonlySet<string>;
  /** What the reader has to look at to find another that would do: "overlay" and "12 mm". */
  readonly decides: readonly { readonly name: string; readonly value: string }[];
  readonly price: number | null;
}

/** One piece of hardware in its place. */
export interface Hardware {
  readonly id: string;
  readonly item: Item;
  /** The joint that it makes; null for a fitting. */
  readonly joint: string | null;
  /** The part that it is screwed to, with which it moves. */
  readonly carriedBy: string;
  readonly at: Point;
  /** What of it stands outside of the wood, doors and drawers shut. What sits in a bored hole is told by the hole alone. */
  readonly solid: Solid;
  /** The other half of a hinge or slide: the id of the half that is counted. Absent: this is bought. */
  readonly halfOf?: string;
  /** What is bought with it, if that is sold apart, as printed: its screws. */
  readonly with?: readonly string[];
}

/** Where something is on its way: turned right-handed about the line through a point, then shifted. Doubles, as envelopes may be. */
export interface Pose {
  /** Degrees of a swing; units of length of a slide. */
  readonly at: number;
  readonly rotate: { readonly about: readonly [Vec, Vec]; readonly degrees: number };
  readonly shift: Vec;
}

/** How the joined part moves. Both slides of a drawer give the same. */
export interface Motion {
  readonly kind: "swing" | "slide" | "lift";
  /** Degrees, or units of length. */
  readonly range: number;
  /** From shut to open, dense enough that nothing slips through between two of them; the first is the place in the finished piece. */
  readonly poses: readonly Pose[];
}
