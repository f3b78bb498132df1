import type { Span } from "../../../findings/span.ts";
import type { Face } from "../../../parse/draft.ts";
import type { Hardware } from "./hardware.ts";
import type { Hole } from "./joint.ts";

/** Hardware that is fixed to a part without joining it to another. */
export interface Fitting {
  readonly id: string;
  readonly at: Span;
  readonly part: string;
  /** The face of the part that it is on. */
  readonly face: Face;
  /** Parts that its screws pass before they reach that one. */
  readonly through: readonly string[];
  readonly hardware: readonly Hardware[];
  readonly holes: readonly Hole[];
}
