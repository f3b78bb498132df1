import type { Severity } from "../finding.ts";

/** How parts of a printed finding are coloured. Colour marks only level, pointer and file name. */
export interface Palette {
  readonly level: (text: string, severity: Severity) => string;
  readonly pointer: (text: string, severity: Severity) => string;
  readonly file: (text: string) => string;
}

const same = (text: string): string => text;
/** Without colour: for files, pipes and `NO_COLOR`. */
export const PLAIN: Palette = { level: same, pointer: same, file: same };
