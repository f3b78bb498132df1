/** A sentence of a step, and what it tells, for what follows in the writing: nothing is recognised by its words. */

import type { Step, Use } from "../model/step.ts";

/** What a sentence tells besides its words. */
export interface Facts {
  /** It turns or lays the work as the step needs it. `so`: and nothing else, so that it is left out where the work lies so already. */
  readonly turns?: "so" | "and more";
  /** It turns the work over with what is put on: how it begins while that stands, and where it lies. */
  readonly over?: { readonly standing: string; readonly lying: string };
  /** What the work rests on; `laid`: what is said where that is laid under it in another step. */
  readonly under?: { readonly what: readonly ("battens" | "blocks")[]; readonly laid: string };
  /** What is done with the glue before anything closes, and with its dowels. */
  readonly glues?: true;
  /** It sets clamps; `later`: what is left of it where they come later; null: nothing. */
  readonly clamps?: { readonly later: string | null };
  /** Glue and the push that closes are one sentence: the two of them, where others come between. */
  readonly apart?: readonly [Sentence, Sentence];
  /** It drives, or gets ready for that. */
  readonly drives?: "lines" | "holes" | "fasteners";
  /** It brings parts together, or says where one goes. */
  readonly brings?: "together" | "in place";
  /** It cuts by what is left standing, whatever the stock measures. */
  readonly leaves?: true;
  /** Ids of hardware that is put on before its time, or is taken off again. */
  readonly puts?: { readonly on: readonly string[] } | { readonly off: readonly string[] };
  readonly uses?: readonly Use[];
  /** It is told in every step, also in one that refers to a step before: before all else there, or after it. */
  readonly everyTime?: "first" | "last";
  /** It counts what is at hand for it, or tells what is marked from where: that is told anew where the rest is as before. */
  readonly counts?: true;
  /** It says that something is the mirror image of something else: what refers to that says so by itself. */
  readonly mirrored?: true;
  /** A hole that keeps wood from splitting: what for, its size, how deep it is in all, and whether the bit is too short for that. */
  readonly lead?: { readonly kind: string; readonly size: string; readonly whole: string; readonly short: boolean };
}

interface Told {
  readonly words: string;
  readonly facts: Facts;
}

/** Most of them tell nothing that is asked for later. */
export type Sentence = string | Told;

export const sentence = (words: string, facts: Facts): Sentence => ({ words, facts });

/** What work is laid on, said where it is. */
export const onceLaid = (what: NonNullable<Facts["under"]>["what"], words: string): Sentence =>
  sentence(words, { under: { what, laid: words } });

export const wordsOf = (told: Sentence): string => (typeof told === "string" ? told : told.words);

/** Null where it tells nothing of that. */
export const tells = <K extends keyof Facts>(told: Sentence, what: K): NonNullable<Facts[K]> | null =>
  typeof told === "string" ? null : (told.facts[what] ?? null);

/** In other words it tells the same. */
export const reworded = (told: Sentence, change: (words: string) => string): Sentence =>
  typeof told === "string" ? change(told) : { ...told, words: change(told.words) };

/** In words that tell one thing less. */
export const without = (told: Sentence, what: keyof Facts, words: string): Sentence =>
  typeof told === "string" ? words : { words, facts: { ...told.facts, [what]: undefined } };

/** What all of them tell of the step. */
export function toldBy(
  all: readonly Sentence[],
  named: (words: string) => string,
): Pick<Step, "uses" | "brings" | "leaves" | "forNow"> {
  const uses = all.flatMap((each) => tells(each, "uses") ?? []);
  const brings = all.filter((each) => tells(each, "brings") === "together").map((each) => named(wordsOf(each)));
  const puts = all.flatMap((each) => tells(each, "puts") ?? []);
  const [on, off] = [
    puts.flatMap((each) => ("on" in each ? each.on : [])),
    puts.flatMap((each) => ("off" in each ? each.off : [])),
  ];
  return {
    ...(puts.length > 0 && { forNow: { on, off } }),
    ...(uses.length > 0 && { uses }),
    ...(brings.length > 0 && { brings }),
    ...(all.some((each) => tells(each, "leaves")) && { leaves: true }),
  };
}
