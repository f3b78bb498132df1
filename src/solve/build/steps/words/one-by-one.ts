/** What is done with one drawer after another, told of the first. */
import type { Part } from "../../../design.ts";
import type { Move } from "../moves.ts";
import { reworded, type Sentence, sentence, tells, wordsOf } from "../sentence.ts";
import { someAbove } from "./which.ts";

/** Told before all else, of fronts that are set one after another. */
export function oneByOneText(fronts: readonly Part[]): string {
  const above = someAbove(fronts.map(({ body }) => body)) ? ", of those one above another the lowest first" : "";
  return `Do all that follows with one drawer and its front, then with the next${above}: place, pull out, clamp, bore, screw on.`;
}

/** Told of one, and counted for all; of all together where they differ. */
export function toldOnce(
  moves: readonly Move[],
  told: (own: readonly Move[]) => readonly Sentence[],
): readonly Sentence[] {
  const count = ({ work }: Move): number => work.reduce((so, { drives }) => so + drives.length, 0);
  const [first] = moves as readonly [Move];
  if (!moves.every((move) => count(move) === count(first))) return told(moves);
  return told([first]).map((text, i) => {
    if (tells(text, "puts"))
      return sentence(wordsOf(text), { puts: { on: moves.flatMap((move) => putOn(told([move])[i])) } });
    return tells(text, "drives") === "fasteners"
      ? reworded(text, (words) => `${words.slice(0, -1)}: ${count(first) * moves.length} in all.`)
      : text;
  });
}

function putOn(told: Sentence | undefined): readonly string[] {
  const puts = told === undefined ? null : tells(told, "puts");
  return puts && "on" in puts ? puts.on : [];
}
