import { less } from "../../../units/rational.ts";
import type { Work } from "./draft.ts";

/** The foremost of some parts. */
export const inFront = (work: Work, ids: readonly string[]): string =>
  ids.reduce((so, id) => (less(work.part(id).body.low[1], work.part(so).body.low[1]) ? id : so), ids[0] ?? "");
