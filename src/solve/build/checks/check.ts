import type { Finding } from "../../../findings/finding.ts";
import type { Length } from "../../../units/length.ts";
import type { BuiltMotion, Check, CutLine } from "../../build.ts";
import type { Design, Fastener, Hardware, Hole, Part } from "../../design.ts";

/** What the checks look at. */
export interface Checked {
  readonly design: Design;
  readonly cutList: readonly CutLine[];
  readonly fasteners: readonly Fastener[];
  readonly holes: readonly Hole[];
  readonly hardware: readonly Hardware[];
  readonly motions: readonly BuiltMotion[];
  /** kg */
  readonly mass: (part: Part) => number;
  /** For sentences. */
  readonly print: (length: Length) => string;
}

/** What a check says of one thing: that it holds, with its value and its limit, or a finding as well. */
export interface Verdict {
  readonly check: Check;
  readonly finding?: Finding;
}

/** A rule of the workshop: one file each, listed in `index.ts`. */
export type Rule = (checked: Checked) => readonly Verdict[];
