import type { Pose } from "../../design.ts";

/** What opens, with everything that moves with it. */
export interface BuiltMotion {
  /** Of the group that moves, or of its part: "left-door". */
  readonly name: string;
  readonly kind: "swing" | "slide" | "lift";
  readonly joints: readonly string[];
  /** Ids of parts and hardware. */
  readonly moves: readonly string[];
  readonly range: number;
  readonly poses: readonly Pose[];
  /** What must be open first, and how far. */
  readonly needs: readonly { readonly motion: string; readonly open: number }[];
  /** What it strikes on its way, everything open that it needs. A swing that is free to 30° and more ends there instead. */
  readonly strikes?: Strike;
  /** What ends a swing before its hinges do. */
  readonly stoppedBy?: Strike;
}

export interface Strike {
  /** Ids of what moves and what it comes to lie in: parts or hardware. */
  readonly moving: string;
  readonly other: string;
  /** In the unit of the motion's range. */
  readonly at: number;
  /** How far they reach into each other there, units of length. */
  readonly by: number;
}
