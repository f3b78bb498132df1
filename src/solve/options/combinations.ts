import type { ChoiceDraft } from "../../parse/draft.ts";

/** An option for each choice, by the choice's name. */
export type Combination = ReadonlyMap<string, string>;

/** All combinations are compiled up to this number. */
const MOST = 64;

export interface Combinations {
  readonly all: readonly Combination[];
  /** Whether there are no others. */
  readonly complete: boolean;
}

/** Every combination of options up to 64 of them; else so many that any two options of two choices meet in one. */
export function combinationsOf(choices: readonly ChoiceDraft[]): Combinations {
  const count = choices.reduce((product, { options }) => product * Math.max(options.length, 1), 1);
  if (count <= MOST || choices.length < 2) return { all: everyOne(choices), complete: true };
  return { all: everyPair(choices), complete: false };
}

function everyOne(choices: readonly ChoiceDraft[]): readonly Combination[] {
  return choices.reduce<readonly Combination[]>(
    (all, { name, options }) => all.flatMap((so) => options.map((option) => new Map([...so, [name, option.name]]))),
    [new Map()],
  );
}

/** Starts with a pair that has not met yet, and gives every other choice the option that meets most of those before for the first time. */
function everyPair(choices: readonly ChoiceDraft[]): readonly Combination[] {
  const open = new Set<string>();
  const pair = (a: number, i: number, b: number, j: number): string =>
    a < b ? `${a} ${i} ${b} ${j}` : `${b} ${j} ${a} ${i}`;
  for (const [a, first] of choices.entries())
    for (const [b, second] of choices.entries())
      if (a < b)
        for (const i of first.options.keys()) for (const j of second.options.keys()) open.add(pair(a, i, b, j));
  const all: Combination[] = [];
  for (const start of open) {
    const [a = 0, i = 0, b = 0, j = 0] = start.split(" ").map(Number);
    const taken = new Map([
      [a, i],
      [b, j],
    ]);
    for (const [c, { options }] of choices.entries()) {
      if (taken.has(c)) continue;
      const fresh = options.map(
        (_, k) => [...taken].filter(([other, option]) => open.has(pair(c, k, other, option))).length,
      );
      taken.set(c, fresh.indexOf(Math.max(...fresh)));
    }
    for (const [c, k] of taken) for (const [d, l] of taken) if (c < d) open.delete(pair(c, k, d, l));
    all.push(new Map(choices.map(({ name, options }, c) => [name, options[taken.get(c) ?? 0]?.name ?? ""])));
  }
  return all;
}
