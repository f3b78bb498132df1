/** How long it takes: day by day, with what dries or rests meanwhile. */
import type { Timeline } from "../../solve/build.ts";
import { TYPE } from "../style.ts";
import type { Column } from "../typeset/cell.ts";
import type { Section } from "../typeset/flow.ts";
import { table } from "../typeset/table.ts";
import { body, capital, type Plan, sectionHeading } from "./plan.ts";
import { duration } from "./step-title.ts";

const COLUMNS: readonly Column[] = [
  { head: "Day", style: TYPE.strong },
  { head: "Steps" },
  { head: "At the bench", align: "right" },
  { head: "Dries or rests when the day is over", stretch: true },
];

export function timePage({ build, frame }: Plan): Section | null {
  const { bench, hoursADay, days } = build.timeline;
  if (days.length === 0) return null;
  const range = (first: number, last: number): string => (first === last ? `${first}` : `${first}–${last}`);
  const rows = days.map(({ first, last, steps, again, bench: minutes, dries }) => [
    range(first, last),
    [...(steps ? [range(...steps)] : []), ...coats(again)].join("; ") || "–",
    steps || again.length > 0 ? duration(minutes) : "–",
    capital(dries.join(", ")),
  ]);
  const finish =
    (build.finishing ?? []).length > 0
      ? ""
      : " This plan says nothing of finish: whatever you put on, its own days come on top.";
  return {
    name: "time",
    title: "How long it takes",
    kind: "time",
    start: "fits",
    atoms: [
      ...sectionHeading("time", "How long it takes", frame.width),
      ...body(
        `About ${duration(bench)} at the bench for one person: ${inDays(days)} at ${hoursADay}\u202fhours a day, what dries and rests included. A wait is filled with work that does not depend on it, as far as there is any. Times of work are estimates; take longer, and stop between two steps, never in the middle of gluing.${finish}`,
        frame.width,
        { keep: true },
      ),
      ...table({ columns: COLUMNS, rows, width: frame.width, above: 6 }),
    ],
  };
}

/** "next coat of 70, 71": steps that were begun on a day before. */
const coats = (again: readonly number[]): readonly string[] =>
  again.length === 0 ? [] : [`next coat of ${again.join(", ")}`];

/** "6 days", from the first cut until all is dry. */
export const inDays = (days: Timeline["days"]): string => {
  const n = days.at(-1)?.last ?? 0;
  return n === 1 ? "a day" : `${n}\u202fdays`;
};
