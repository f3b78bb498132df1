/** How long it takes: what can be done in one go, and what dries or rests between. */
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, sectionHeading } from "./plan.ts";
import { duration } from "./steps.ts";

const COLUMNS: readonly Column[] = [
  { head: "Steps", style: TYPE.strong },
  { head: "At the bench", align: "right" },
  { head: "Then leave it", align: "right" },
  { head: "For", stretch: true },
];

export function timePage({ build, frame }: Plan): Section | null {
  const { bench, elapsed, spells } = build.timeline;
  if (spells.length === 0) return null;
  const rows = spells.map(({ first, last, bench: work, pause, for: what }) => [
    first === last ? `${first}` : `${first}–${last}`,
    about(work),
    pause > 0 ? waiting(pause) : "–",
    pause > 0 ? capital(what) : "",
  ]);
  return {
    name: "time",
    title: "How long it takes",
    kind: "time",
    start: "fits",
    atoms: [
      ...sectionHeading("time", "How long it takes", frame.width),
      ...body(
        `About ${about(bench)} at the bench for one person, and ${waiting(elapsed)} from the first cut to the end, what dries and rests included. Each wait is filled with work that does not depend on it. Times of work are estimates; take longer, and stop where a row of this table ends.`,
        frame.width,
        { keep: true },
      ),
      ...table({ columns: COLUMNS, rows, width: frame.width, above: 6 }),
    ],
  };
}

/** To the quarter of an hour. */
const about = (minutes: number): string => duration(Math.max(15, 15 * Math.round(minutes / 15)));

/** "45 min", "10 h", "3 days": nobody waits by the minute. */
export function waiting(minutes: number): string {
  if (minutes < 90) return duration(Math.max(5, 5 * Math.round(minutes / 5)));
  const hours = Math.round(minutes / 60);
  if (hours < 36) return `${hours}\u202fh`;
  return `${Math.round(minutes / (24 * 60))} days`;
}
