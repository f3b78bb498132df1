/** The work in spells: what is done in one go, and what dries or rests before the next. */
import type { Spell, Step } from "../../build.ts";

/** Shorter waits are spent sweeping up. Minutes. */
const PAUSE = 60;

export function spellsOf(steps: readonly Step[]): readonly Spell[] {
  const spells: Spell[] = [];
  let first = 0;
  for (const [i, step] of steps.entries()) {
    const next = steps[i + 1];
    const gap = next ? next.start - step.end : 0;
    if (next && gap < PAUSE) continue;
    const own = steps.slice(first, i + 1);
    spells.push({
      ...{ first: steps[first]?.number ?? 0, last: step.number },
      bench: own.reduce((so, { bench }) => so + bench, 0),
      pause: next
        ? gap
        : Math.max(0, ...own.flatMap(({ end, waits }) => waits.map((wait) => end + wait.minutes))) -
          (next ? 0 : step.end),
      for: next ? reasonOf(steps, next) : (longest(own)?.for ?? ""),
    });
    first = i + 1;
  }
  return spells.map((spell) => ({ ...spell, pause: Math.max(0, spell.pause) }));
}

/** What the next step waits for. */
function reasonOf(steps: readonly Step[], next: Step): string {
  const before = steps.filter(({ number }) => next.afterWait.includes(number));
  const over = before.flatMap(({ end, waits }) => waits.map((wait) => ({ ...wait, at: end + wait.minutes })));
  return over.filter(({ at }) => at <= next.start).toSorted((a, b) => b.at - a.at)[0]?.for ?? "";
}

const longest = (steps: readonly Step[]) =>
  steps
    .flatMap(({ end, waits }) => waits.map((wait) => ({ ...wait, at: end + wait.minutes })))
    .toSorted((a, b) => b.at - a.at)[0];
