import type { CutLine } from "../../../build.ts";
import { called, plural, type Work } from "../draft.ts";

/** What to cut from one stock. */
export function cuttingText(work: Work, lines: readonly CutLine[]): readonly string[] {
  const cuts = lines.map((line) => {
    const first = line.parts[0] as string;
    const what = line.parts.length === 1 ? called(work, first) : plural(work, first);
    return `${line.parts.length} ${what}: ${work.print(line.width)} wide, ${work.print(line.length)} long.`;
  });
  return [...cuts, "Write its mark on each part as soon as it is cut. Cut parts of one length against one stop."];
}
