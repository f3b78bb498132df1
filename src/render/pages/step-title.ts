/** The title of a step, with its number and how long it takes. */
import type { Step } from "../../solve/build.ts";
import { decoration, line } from "../shapes.ts";
import { BLACK, onGrid, TYPE } from "../style.ts";
import { type Atom, baseline } from "../typeset/atom.ts";
import { breakLines, label, paintLine } from "../typeset/lines.ts";
import { measure } from "../typeset/measure.ts";

/** From the line above a step to its title, and from the title to the picture. */
export const TITLE_SPACE = 10;

/** `first`: not where the step goes on. */
export function stepTitle(step: Step, first: boolean, width: number): Pick<Atom, "height" | "paint"> {
  const number = String(step.number);
  const after = measure(number, TYPE.stepNumber.font, TYPE.stepNumber.size) + 10;
  const told = [step.copies > 1 ? `make ${step.copies}` : "", duration(step.bench)].filter((t) => t !== "");
  // The time is that of the whole step: told again it would seem to be needed twice.
  const aside = first ? told.join(" · ") : "";
  const text = first ? step.title : `${step.title} (continued)`;
  const lines = breakLines(text, TYPE.stepTitle, width - after);
  const [only] = lines;
  const room = width - after - measure(text, TYPE.stepTitle.font, TYPE.stepTitle.size) - 12;
  // Beside a short title, else below it.
  const beside =
    lines.length === 1 && only !== undefined && measure(aside, TYPE.caption.font, TYPE.caption.size) <= room;
  const bookmark = { title: `${number}. ${step.title}`, level: 2 } as const;
  const below = lines.length * TYPE.stepTitle.leading;
  return {
    height: onGrid(TITLE_SPACE + below + (aside === "" || beside ? 0 : TYPE.caption.leading)),
    paint: (x, y) => {
      const base = y + 4 + baseline(TYPE.stepTitle);
      const title = lines.flatMap((l, i) => paintLine(l, TYPE.stepTitle, x + after, base + i * TYPE.stepTitle.leading));
      const note = beside
        ? label(aside, TYPE.caption, x + width, base, "right")
        : label(aside, TYPE.caption, x + after, y + 4 + below + baseline(TYPE.caption));
      return [
        ...(first ? [{ kind: "anchor", name: `step-${number}`, y: Math.max(0, y - 8), bookmark } as const] : []),
        decoration(line(x, y, x + width, y, { width: 1, ink: BLACK })),
        { kind: "group", role: "heading 2", items: [label(number, TYPE.stepNumber, x, base), ...title] },
        ...(aside === "" ? [] : [{ kind: "group", role: "paragraph", items: [note] } as const]),
      ];
    },
  };
}

/** "20 min", "1 h 30 min". */
export function duration(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  const parts = [hours > 0 ? `${hours}\u202fh` : "", rest > 0 ? `${rest}\u202fmin` : ""];
  return parts.filter((part) => part !== "").join(" ");
}
