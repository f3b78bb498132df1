import type { Span } from "../../../findings/span.ts";
import type { PartDraft } from "../../../parse/draft.ts";
import type { AxisIndex } from "../space.ts";

/** One part to be: copies counted out, `like` filled in, mirrored groups opened. Still without a number. */
export interface Entry {
  /** "left-end.top-rail", "slat.2" */
  readonly id: string;
  readonly path: readonly string[];
  /** The part's name in the source. */
  readonly at: Span;
  readonly draft: PartDraft;
  /** Which of how many copies, from 1. */
  readonly copy: { readonly number: number; readonly of: number } | null;
  /** The entry of which this is the reflection. */
  readonly mirror: { readonly of: string; readonly axis: AxisIndex; readonly at: Span } | null;
}
