import type { Solid } from "../../../geometry/types.ts";
import type { Length } from "../../../units/length.ts";

/** A wooden button: a block with a tongue at one end, screwed up under what it holds, the tongue in the groove of a rail. Types only. */
export interface Button {
  /** From its top, which lies against what it holds, to its bottom. */
  readonly thick: Length;
  /** Along the rail. */
  readonly wide: Length;
  /** With the tongue. */
  readonly long: Length;
  /** As wide as the button; it begins so far below the top. */
  readonly tongue: { readonly thick: Length; readonly long: Length; readonly down: Length };
  /** From the shoulder to the middle of its hole. */
  readonly toScrew: Length;
  /** In its place. */
  readonly solid: Solid;
}
