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
}
