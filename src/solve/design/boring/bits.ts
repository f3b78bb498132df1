/** What is put into the chuck for each stage of a hole. */
import { inches } from "../../../units/length.ts";
import { less } from "../../../units/rational.ts";
import type { Hole } from "../../design.ts";

export type Bit = "drill" | "Forstner bit" | "pocket bit" | "countersink";

/** Drills have shanks for chucks up to here (common practice, no source). */
const WIDEST_DRILL = inches(1, 2);

/** Cups, and what takes a head or a washer, have a flat bottom. The stepped bit of a jig bores all of a pocket at once. */
export function bitFor({ kind, stages }: Pick<Hole, "kind" | "stages">, i: number): Bit {
  const stage = stages[i];
  if (stage?.cone) return "countersink";
  if (kind === "pocket") return "pocket bit";
  const seat = kind === "cup" || (i < stages.length - 1 && kind !== "pilot");
  return seat || (stage && less(WIDEST_DRILL, stage.diameter)) ? "Forstner bit" : "drill";
}
