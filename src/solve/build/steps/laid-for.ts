/** What work is laid on is told where it is laid down, also where that is a step of cutting to fit. */
import { sameDirection } from "../../design/space.ts";
import type { Direction } from "../../design.ts";
import { type StepDraft, series } from "./draft.ts";
import { type Sentence, tells, wordsOf } from "./sentence.ts";

/** What the next step of joining would tell too late, where it finds the work laid down: a check of a side that lies on the bench then, and blocks. */
export interface LaidFor {
  readonly first: readonly string[];
  readonly on: readonly Sentence[];
}

export const NOTHING: LaidFor = { first: [], on: [] };

/** Of the steps that follow one that lays work down as the next joining of it needs it. */
export function laidFor(
  later: readonly StepDraft[],
  own: readonly string[],
  { kind }: StepDraft,
  up: Direction,
): LaidFor {
  if (kind === "join" || kind === "glue-up") return NOTHING;
  const next = later.find(
    (each) => (each.kind === "join" || each.kind === "glue-up") && each.shows.present.some((id) => own.includes(id)),
  );
  if (!next || !sameDirection(next.up, up)) return NOTHING;
  const { proof, laidOn = [] } = next;
  return { first: proof?.lying === null ? [proof.next] : [], on: laidOn };
}

/** What the work rested on before it was turned for other work is laid again. */
export const laying = (text: Sentence): Sentence => tells(text, "under")?.laid ?? text;

/** Blocks that were told when it was laid down are told no more. */
export function stillOn(on: readonly Sentence[], draft: StepDraft): StepDraft {
  const told = new Set(on.map(wordsOf));
  const at = draft.text.findIndex((each) => told.has(wordsOf(each)));
  if (at < 0) return draft;
  return {
    ...draft,
    text: draft.text.flatMap((each, i) => (i === at ? [stillText(on)] : told.has(wordsOf(each)) ? [] : [each])),
  };
}

const stillText = (on: readonly Sentence[]): string => {
  const what = on.flatMap((each) => tells(each, "under")?.what ?? []);
  return `The work lies on its ${series((["battens", "blocks"] as const).filter((each) => what.includes(each)))} still.`;
};
