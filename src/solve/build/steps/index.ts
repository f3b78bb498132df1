import type { Step, Timeline } from "../../build.ts";
import { isCutLater } from "../../design/making/plain.ts";
import type { Fitting } from "../../design.ts";
import { loadedOnPins } from "../order/links.ts";
import { afterOpenings } from "./after-openings.ts";
import { bandingSteps } from "./banding.ts";
import { buttonSteps } from "./buttons.ts";
import { type CutAfter, cutAfter } from "./cut-after.ts";
import { daysOf } from "./days.ts";
import { inOneList, type StepDraft, series, stepToken, type Work } from "./draft.ts";
import { withCautionsOpen } from "./falls-open.ts";
import { boredFirst } from "./finishing/bored-first.ts";
import { lastCoats, sandingSteps } from "./finishing/coats.ts";
import { earlySteps } from "./finishing/early.ts";
import { glazedLast, glazedLastOf, without } from "./finishing/glazed-last.ts";
import { goesInLast } from "./finishing/in-its-room.ts";
import { againSteps, takingOffSteps } from "./finishing/taking-off.ts";
import { fittedLater } from "./fitted-later.ts";
import { fittingSteps, flushSteps, type Made } from "./fitting.ts";
import { withGlassOrdered } from "./glass-ordered.ts";
import { boardSteps, flatteningSteps, gluingUpSteps } from "./gluing-up.ts";
import { hardwareSteps, isForEmpty, isInTheRoom } from "./hardware.ts";
import { inHandStep } from "./in-hand.ts";
import { inOrder, type Timed } from "./in-order.ts";
import { interlocked } from "./interlocked.ts";
import { jigSteps } from "./jigs.ts";
import { joiningSteps } from "./joining.ts";
import { keyingSteps } from "./keying.ts";
import { unitOf } from "./later.ts";
import { likeBefore } from "./like-before.ts";
import { machiningSteps } from "./machining.ts";
import { millingSteps } from "./milling.ts";
import { pluggingSteps } from "./plugging.ts";
import { precedence } from "./precedence.ts";
import { ONCE, sawingSteps } from "./sawing.ts";
import { toldBy, wordsOf } from "./sentence.ts";
import { withClampsTold } from "./shared-clamps.ts";
import { shownMirrored } from "./shown-mirrored.ts";
import { titlesApart } from "./titles-apart.ts";
import { toolsFor } from "./tools.ts";
import { touchedBy } from "./touched.ts";
import { withTurns } from "./turns.ts";
import { inOneStep } from "./wishes/one-step.ts";
import { groupedBy } from "./wishes/own-key.ts";
import { notApart } from "./wishes/own-step.ts";
import { withWishes } from "./wishes/sequence.ts";
import { withTitles, withWords } from "./wishes/told.ts";
import { withJigs } from "./with-jigs.ts";
import { leadsToldOnce } from "./words/lead-holes.ts";
import { liftCaution } from "./words/lifting.ts";
import { inOneUnit } from "./words/one-unit.ts";

export type { Work } from "./draft.ts";

export interface Steps extends CutAfter {
  readonly steps: readonly Step[];
  readonly timeline: Timeline;
  readonly tools: ReturnType<typeof toolsFor>;
}

/** The steps in the order of work, numbered, each knowing what must be done before it; and the tools that they use. */
export function stepsOf(work: Work): Steps {
  const finished = new Set<string>();
  const { joined, glazing } = glazedLast(work, withGlassOrdered(work, puttingTogether(work, finished)));
  const written = [
    ...inHandStep(work),
    ...makingSteps(work),
    ...joined.filter(({ inTheRoom }) => !inTheRoom),
    ...pluggingSteps(work),
    ...finishingSteps(work, finished, glazing),
    // It is hung when it is finished.
    ...joined.filter(({ inTheRoom }) => inTheRoom),
  ];
  const told = withWords(work, written);
  const apart = notApart(work, told.drafts);
  const touched = touchedBy(work, told.drafts);
  const wished = withWishes(work, told.drafts, precedence(work, told.drafts, touched), touched);
  const merged = inOneStep(work, told.drafts, wished.before, touched);
  const ordered = inOrder(withTitles(work, merged.drafts), merged.before);
  if (!ordered) throw new Error("steps wait for each other");
  const turned = withTurns(
    interlocked(work, fittedLater(work, withoutRepeats(ordered.steps.map(({ draft }) => draft)))),
    loadedOnPins(work.design),
    (ids) => liftCaution(work, ids),
  );
  const likened = likeBefore(withCautionsOpen(work, turned), work.cutList, (before, now, pairs) =>
    shownMirrored(work, before, now, pairs),
  );
  // What is like a step before is known by its title.
  const drafts = titlesApart(work, withJigs(work, leadsToldOnce(withClampsTold(likened))));
  const units = drafts.flatMap(({ unit, also = [] }, i) => [unit, ...also].map((each) => [each, i + 1] as const));
  const lastOf = new Map(units.map(([unit, number]) => [stepToken(unit), `step ${number}`]));
  // What is cut to fit one by one is cut in several.
  for (const own of groupedBy(
    units.filter(([unit]) => unit.startsWith(unitOf(""))),
    ([unit]) => unit,
  ))
    if (own.length > 1)
      lastOf.set(stepToken(own[0]?.[0] ?? ""), `steps ${series(own.map(([, number]) => `${number}`))}`);
  const named = (text: string): string =>
    inOneUnit(
      text.replace(/\{step of [^}]*\}/g, (token) => lastOf.get(token) ?? token),
      work.design.units,
    );
  const numbers = (places: readonly number[]): readonly number[] => places.map((place) => place + 1);
  const steps = drafts.map((draft, i): Step => {
    const { after, afterWait, start, end } = ordered.steps[i] as Timed;
    return {
      ...{
        number: i + 1,
        ...draft,
        title: named(draft.title),
        text: inOneList(draft.text.map(wordsOf)).map(named),
        ...toldBy(draft.text, named),
        cautions: draft.cautions.map(named),
      },
      ...{ after: numbers(after), afterWait: numbers(afterWait), start, end },
    };
  });
  const { findings, ...later } = cutAfter(work, steps, units);
  return {
    ...{
      steps,
      timeline: { ...ordered.timeline, days: daysOf(steps, ordered.calendar) },
      tools: toolsFor(work, steps),
    },
    ...{ ...later, findings: [...told.findings, ...wished.findings, ...merged.findings, ...apart, ...findings] },
  };
}

/** From boards and sheets to finished parts, but for those that are cut to the piece. */
function makingSteps(work: Work): readonly StepDraft[] {
  const now = work.cutList.filter((line) => !isCutLater(work.part(line.parts[0] as string)));
  return [
    ...sawingSteps(work),
    ...boardSteps(work),
    ...gluingUpSteps(work),
    ...millingSteps(work),
    ...flatteningSteps(work),
    ...bandingSteps(work, now),
    ...jigSteps(work),
    ...machiningSteps(work, now),
    ...buttonSteps(work),
  ];
}

/**
 * What moves comes off, everything is finished apart, glass goes in, and all goes on again; grips are on before it does. What is put on under the piece
 * and what ties it to the wall come before.
 */
function finishingSteps(
  work: Work,
  finished: ReadonlySet<string>,
  glazing: readonly StepDraft[],
): readonly StepDraft[] {
  const off = new Set(work.plan.removable.flatMap(({ parts }) => parts));
  const isOff = (fitting: Fitting): boolean =>
    !isInTheRoom(fitting) && fitting.hardware.every(({ carriedBy }) => off.has(carriedBy));
  // Turned over or pulled from the wall a piece is empty.
  const empty = goesInLast(work).size > 0 ? isForEmpty : () => false;
  const again = againSteps(work);
  return boredFirst([
    ...[...takingOffSteps(work), ...lastCoats(work, finished), ...sandingSteps(work, finished)].map((draft) =>
      without(glazedLastOf(work), draft),
    ),
    ...glazing,
    ...hardwareSteps(work, isOff),
    ...again.fast,
    ...hardwareSteps(work, (fitting) => !isOff(fitting) && empty(fitting)),
    ...again.rest,
    ...hardwareSteps(work, (fitting) => !isOff(fitting) && !empty(fitting)),
  ]);
}

/** Each step of joining, after what is cut for it and what is finished before it is built in, and before what is trimmed. `finished` grows. */
function puttingTogether(work: Work, finished: Set<string>): readonly StepDraft[] {
  const made: Made = { parts: new Set(), blanks: new Set() };
  const ordered = afterOpenings(work, joiningSteps(work));
  return ordered.drafts.flatMap((step) => [
    ...fittingSteps(work, step, made, ordered),
    ...earlySteps(work, step, finished, ordered.drafts),
    step,
    ...keyingSteps(work, step),
    ...flushSteps(work, step),
  ]);
}

/** A caution stands where a kind of work begins, not again in the steps right after; nor does what holds for all sawing. */
const withoutRepeats = (drafts: readonly StepDraft[]): readonly StepDraft[] => {
  const told = new Map<string, number>();
  const isNew = (sentence: string, i: number): boolean => {
    if (i - (told.get(sentence) ?? Number.NEGATIVE_INFINITY) < AGAIN) return false;
    told.set(sentence, i);
    return true;
  };
  // Where other work came between, it begins anew.
  const goesOn = (caution: string, i: number): boolean => drafts[i - 1]?.cautions.includes(caution) === true;
  return drafts.map((draft, i) => ({
    ...draft,
    cautions: draft.cautions.filter((caution) => {
      if (!goesOn(caution, i)) told.delete(caution);
      return isNew(caution, i);
    }),
    text: draft.text.filter((each) => !ONCE.has(wordsOf(each)) || isNew(wordsOf(each), i)),
  }));
};

/** Steps after which a reader has turned the page. */
const AGAIN = 5;
