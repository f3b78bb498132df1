/** What is cut when the piece tells its size: whether its wood waits in the sheet or board, and in which step it is cut. */
import type { Blank } from "../../build.ts";
import { isCutLater } from "../../design/making/plain.ts";
import { stepToken, type Work } from "./draft.ts";
import { partsIn } from "./wishes/own-key.ts";

/** The unit of the step in which a line of the cut list is cut to fit. */
export const unitOf = (mark: string): string => `cut ${mark}`;
/** Stands for the step in which a line of the cut list is cut to fit. */
export const laterToken = (mark: string): string => stepToken(unitOf(mark));

/** Whether a piece is sawn from its sheet or board only then. What is planed or glued up first is sawn with the rest. */
export const waits = (work: Work, { why, part }: Blank): boolean => why === "cut later" && isCutLater(work.part(part));

export const waitsInWood = (work: Work, id: string): boolean =>
  work.blanks.some((blank) => waits(work, blank) && partsIn(blank).includes(id));
