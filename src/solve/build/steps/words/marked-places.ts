/** Parts that were marked from each other go where that is written on them: which of their mark a step takes. */
import type { Joint } from "../../../design.ts";
import { markedFrom, matingsOf } from "../dowelled.ts";
import { listed, series, type Work } from "../draft.ts";
import { type Sentence, sentence } from "../sentence.ts";
import { calledAmong, listedAmong } from "./by-place.ts";

/**
 * `fresh`: ids of what comes in a step that makes `joints`. Of a mark of which some stay for later it is told which come; where all of one come, that
 * each has its own place.
 */
export function markedTexts(work: Work, fresh: readonly string[], joints: readonly Joint[]): readonly Sentence[] {
  const some = someOf(work, fresh);
  const names = some.map((id) => `the ${calledAmong(work, id, work.line(id).parts)}`);
  const rest = asWritten(work, fresh, joints);
  return [
    ...(some.length > 0
      ? [told(`By what is written on ${some.length === 1 ? "it" : "them"} take ${series(names)}.`)]
      : []),
    ...(rest.length > 0
      ? [
          told(
            `By what is written on them bring each of ${listedAmong(work, rest)} to its own place, and each end to its own: none is exchanged or turned round.`,
          ),
        ]
      : []),
  ];
}

/** In other words it would be the same. */
const told = (words: string): Sentence => sentence(words, { everyTime: "first" });

/** Of a mark of which some stay for later. */
function someOf(work: Work, fresh: readonly string[]): readonly string[] {
  const own = new Set(fresh);
  const marked = markedIn(work, fresh);
  return fresh.filter((id) => marked.has(id) && work.line(id).parts.some((other) => !own.has(other)));
}

/** What is brought to its place, and each end to its own, by what is written on it. */
export function asWritten(work: Work, fresh: readonly string[], joints: readonly Joint[]): readonly string[] {
  const some = someOf(work, fresh);
  const met = new Set(markedFrom(work).flatMap((each) => (joints.includes(each.joint) ? each.joint.parts : [])));
  const rest = fresh.filter((id) => met.has(id) && !some.includes(id));
  return rest.some((id) => work.line(id).parts.length > 1) ? rest : [];
}

/** What stands together: each by its place where that is written on one of them, since there may be another such body. */
export const listedAsWritten = (work: Work, ids: readonly string[]): string =>
  markedIn(work, ids).size > 0 ? listedAmong(work, ids) : listed(work, ids);

/** Those of some parts that were marked from each other. */
function markedIn(work: Work, ids: readonly string[]): ReadonlySet<string> {
  const own = new Set(ids);
  return new Set(
    matingsOf(work)
      .filter(({ measured, met }) => own.has(measured) && own.has(met))
      .flatMap(({ measured, met }) => [measured, met]),
  );
}
